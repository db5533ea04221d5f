export const words = {
  file: 'a balance',
  title: '02 · Reading a nitrogen balance',
  question: 'Nobody can see nitrogen leave as gas. How can you tell how much did?',
  intro: `<p>A balance has three parts: what came in, what went out, and what the system holds more than before. In less out less
    held is zero, always. If it is not, something was not counted. Here a small invented system is fed 60 g a day for 90 days;
    the table holds what a keeper could measure.</p>`,
  ask: 'How many grams of nitrogen left as gas?',
  guess: { label: 'My guess', unit: 'g N' },
  shown: `<p>The model says {gas} g: exactly what is wanting in the table. Bacteria in the settled solids made it, below the depth
    that oxygen reaches: they breathe nitrate.</p>`,
  sliders: {
    feed: { label: 'Feed', unit: 'g/d' },
    exchange: { label: 'Water let through', unit: 'L/d' },
    error: { label: 'Error of the feed label', unit: '%' },
  },
  changed: `<p>The balance closes each time: what is left over is rounding in the last digits of the computer. Gas: {gas-now} g,
    {times} times as much as with 60 g of feed a day and no water let through. The layer of solids is thicker where more is fed,
    and less of it has oxygen. Nitrate in the sump ends at {end} mg/L. If the label on the feed bag is off by {error} %, the gas
    reckoned by difference would read {read} g.</p>`,
  wrong: [
    'What is found by difference collects every error of the other lines. A small error of a large line is a large error of a small one.',
    'Forgotten lines: dead fish, spilled feed, roots in the compost, water splashed out.',
    'Nitrate “as NO3” counted as nitrogen: the number is more than four times too large.',
  ],
  caution:
    'Water that is let through goes somewhere: local law says where, and how much nitrate it may hold.',
  exercise:
    'Feed is 60 g a day, and the label on the bag is off by 10 %. By how many percent is the gas misread?',
  answer: '<p>By {misread} %. The error of the feed is passed on whole to the smaller number.</p>',
  readings: ['feed, g/d', 'water let through, L/d', 'in, g N', 'out, g N', 'gas, g N'],
  labels: {
    measured: 'What a keeper could measure, 90 days, 60 g of feed a day',
    nitrogen: 'nitrogen',
    in: 'came in: feed, water, seedlings; and what the system holds less',
    gone: 'gone as nitrogen gas',
    balance: 'whole system, 90 days',
    cameIn: 'in',
    wentOut: 'out',
    held: 'held more than before',
    residual: 'in − out − held',
  },
} as const;

export const words = {
  file: 'the feed',
  title: '03 · Where the feed goes',
  question: 'Of every 100 g of nitrogen that you feed to the fish, how many grams do you eat as lettuce?',
  intro: `<p>A small invented system: 30 tilapia of 150 g, 60 g of feed a day, a filter, and 4 m² of lettuce on rafts, cut in four
    batches. Nobody takes out what settles.</p>`,
  ask: 'How much of 100 g of nitrogen is in cut lettuce after 90 days?',
  guess: { label: 'My guess', unit: 'g of 100 g' },
  shown: `<p>Cut lettuce holds {crop} g of 100, fish {fish}, and {gas} left as gas: bacteria in the settled solids, where oxygen does
    not reach, breathe nitrate.</p>`,
  sliders: { feed: { label: 'Feed', unit: 'g/d' }, planted: { label: 'Planted', unit: 'm²' } },
  changed: `<p>Cut lettuce: {crop-now} %. That is {area} g of feed a day for each square metre. Nitrate goes from 20 to {end}
    mg/L.</p>`,
  wrong: [
    'Nitrate that stands still does not mean that nothing is lost: gas and sludge may carry off as much as the crop.',
    'More feed on the same bed does not make more lettuce when the crop already has enough: it makes sludge.',
    'Falling nitrate does not mean that too little is fed: it may be sludge that burns it.',
    'How much leaves as gas is the least known of these shares: the model may be off either way (lesson 12).',
  ],
  caution: 'Wash hands and produce; keep tank water off what is eaten raw. Local food safety codes decide.',
  exercise:
    'All 4 m² are planted. You feed 20, 40, 80 or 120 g/d. With which of them does most nitrate remain after 90 days?',
  answer: `<p>With {most} g/d, that is {area} g/d for each m². Up to there more feed brings more nitrate; beyond, the sludge lies so
    thick that it burns more than comes. Handbooks name {rule} g/(m² d) and up for leafy crops: for systems whose solids are taken
    out. Here nobody drains them.</p>`,
  readings: ['feed, g/d', 'planted, m²', 'lettuce, %', 'gas, %', 'nitrate at the end, mg N/L'],
  labels: {
    bars: 'Where nitrogen went in 90 days',
    barsNow: 'Where nitrogen went',
    chart: 'Nitrate in the sump',
    unit: 'nitrate, mg N/L',
    nitrate: 'nitrate',
    nitrateBy: 'Nitrate after 90 days',
    fed: 'feed, g/d',
  },
} as const;

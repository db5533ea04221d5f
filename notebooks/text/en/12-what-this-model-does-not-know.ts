export const words = {
  file: 'not known',
  title: '12 · What this model does not know',
  question: 'Where is this model wrong, and how would you find out?',
  intro: `<p>A model that names its errors is of more use than one that has none to show. One number shows it well: how dense the
    sludge lies. Nobody measured it in your tank. Loose sludge lies thick, oxygen reaches little of it, and where oxygen does not
    reach, nitrate becomes gas.</p>`,
  given: `<p>The tables say {value} g of dry matter in a litre of sludge, from memory, and anything from {low} to {high} can be. In
    the densest, nitrate ends at {dense} mg N/L.</p>`,
  ask: 'With the loosest sludge of the range, and all else the same, where does nitrate end?',
  guess: { label: 'My guess', unit: 'mg N/L' },
  shown: `<p>From this one number alone nitrate ends at {loose} mg N/L: of all nitrogen {gas-loose} % leaves as gas, not
    {gas-dense} %.</p>`,
  sliders: {
    density: { label: 'Dry matter in settled sludge', unit: 'g/L' },
    feed: { label: 'Feed', unit: 'g/d' },
  },
  changed: `<p>Gas: {gas-now} %. Nitrate ends at {end} mg N/L. A jar tells you this number: fill it with sludge, let it settle, pour
    off the water, dry what is left, weigh it.</p>`,
  leftOut: `<h2>What is left out</h2>
    <ul>
    <li><strong>Phosphorus, iron, organic acids.</strong> No deficiency: crops take potassium, calcium and magnesium with their
    nitrogen, and never find too little.</li>
    <li><strong>Lime.</strong> It dissolves and falls here, how fast is weakly known.</li>
    <li><strong>Corners.</strong> Every vessel is stirred. Dead water and short cuts are not seen.</li>
    <li><strong>Sludge.</strong> What lies is stirred up by nobody but who drains or cleans; worms do not eat it.</li>
    <li><strong>Night.</strong> Light is that of a day. Fish do not feel it, nor crowding, acid water and disease.</li>
    <li><strong>Nitrous oxide</strong> and what stress and the keeper's day off do.</li>
    <li><strong>Two populations on one surface.</strong> Those that nitrify have each a room of its own here; in a real film they
    crowd each other.</li>
    <li><strong>Films in acid water.</strong> They get used to it here, in weeks. How far and how fast is not agreed: films at pH
    4.3 and 5 worked as well as any, and a filter with plants at pH 6 a quarter as fast as at 8.</li>
    </ul>`,
  misses: `<h2>What it gets wrong, as far as known</h2>
    <p>The model is held against published values and whole systems; nothing is tuned to them. These are the misses, read from the
    document that the tests make (<code>npm run validate</code>): {missed} quantities of whole systems lie outside the model's own
    band, and {single} single values outside theirs. Not in this list: quantities whose band is wider than fourfold, and those of a
    system that breaks down in more than one draw of twenty. They count for nothing either.</p>`,
  wrong: [
    'Believing a picture because it is smooth.',
    'Turning one number until the model fits, and calling that an explanation.',
    'Asking it what it leaves out: it will answer all the same.',
  ],
  caution:
    'No model frees you from measuring. Fish, food, water discharge and electricity follow your law and licensed practice.',
  exercise:
    'Pick one miss of the list. Which measurement in your greenhouse would tell whether the model or the publication is nearer to you?',
  answer: `<p>For gas: weigh the feed, the fish, the cut crop and the dried sludge for a month, and test nitrate at both ends. What is
    wanting is gas. Between {dense} and {loose} % of all nitrogen are open here, so one month decides much.</p>`,
  readings: ['dry matter, g/L', 'feed, g/d', 'gas, %', 'nitrate at the end, mg N/L'],
  labels: {
    bars: 'Nitrate after 90 days',
    dense: 'dense sludge',
    loose: 'loose sludge',
    denseShort: 'dense',
    looseShort: 'loose',
    yours: 'yours',
    chart: 'Nitrate by how dense the sludge lies',
    unit: 'nitrate, mg N/L',
    systems: 'Misses in whole systems',
    single: 'Single values that are missed, with the reason as far as known',
    quantity: 'quantity',
    value: 'value',
    published: 'published',
    modelSays: 'model',
    median: 'model, median',
    band: 'nine of ten',
    reason: 'reason',
  },
} as const;

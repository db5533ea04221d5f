export const words = {
  file: 'a farm',
  title: '16 · Design a farm',
  question: 'You have 40 litres of water a day. How large a farm is that?',
  intro: `<p>In a dry place water comes first, and the rest follows from it: water gives the area of the beds, the beds the feed, the
    feed the fish and the filter. The invented farm has raft beds of lettuce under cover, a tank, a filter, a sump; outdoors 5 mm a
    day would evaporate, under the cover 70 % of that.</p>`,
  ask: 'How many square metres of lettuce can 40 L a day keep in water, tank and sump along with it?',
  guess: { label: 'My guess', unit: 'm²' },
  shown: `<p><strong>Water to beds.</strong> With 2 m² the farm loses {few} L a day, with 8 m² {many}: {each} L for each square metre, with the tank
    that grows along, and a rest that is lost whatever grows. So {water} L serve {beds} m².</p>
    <p><strong>Beds to feed.</strong> Handbooks name {rule} g of feed for each square metre and day for leafy crops, for systems whose
    solids are taken out. Here they stay, and half of it, {half} g, is a careful beginning (chosen, not measured).
    <strong>Feed to fish.</strong> A fish of 150 g eats some {per-fish} g a day. <strong>Feed to filter.</strong> By the handbook's sum of lesson
    09.</p>`,
  sliders: {
    water: { label: 'Water that there is', unit: 'L/d' },
    perArea: { label: 'Feed for each m² of bed', unit: 'g/d' },
    et0: { label: 'Evaporation outdoors (ET₀)', unit: 'mm/d' },
  },
  changed: `<p>Four sums make a farm; the run says whether it lives. Where it says that water is short, take fewer square
    metres. Highest ammonia {tan} mg N/L, nitrate at the end {nitrate}
    mg N/L, highest loss {loss} L a day.</p>`,
  plan: `<h2>Let the library plan it</h2><p>The search tries beds and fish together (tank and filter in proportion), and keeps what
    gives the largest harvest while nothing harms fish, water or crops. It takes a minute; it uses the water of the slider above,
    at 5 mm a day.</p>`,
  progress: '{runs} runs',
  planned: `<p>After {runs} runs: {harvest} kg of lettuce in 60 days from {water} L a day. The plan may be larger than your sum: the sump
    lends water for a while, and 60 days are short. A dry year asks for the sum, not for the loan.</p>`,
  noPlan:
    '<p>After {runs} runs nothing was found that harms nothing: there is too little water for the smallest farm tried.</p>',
  wrong: [
    'Designing for the mean day. The driest week decides: move ET₀.',
    'Filling the beds to the last square metre. A pump that sucks air takes everything with it (lesson 07).',
    'Buying fish first. They grow, and so does the feed; the filter is bought for the day before harvest.',
    'Forgetting the power cut (lesson 14): more fish in a cubic metre have fewer hours.',
  ],
  caution:
    'This is a sum with published averages, not a design that somebody vouches for. Stocking, species that are not native, building, electricity and discharge follow your law and licensed practice.',
  exercise: 'In the driest month 7.5 mm a day evaporate. How many square metres do the same 40 L serve then?',
  answer: `<p>{dry} m² in place of {beds}. Whoever builds for {beds} m² and has {water} L must leave beds fallow in that month
    (lesson 15), or store water before it.</p>`,
  readings: ['water, L/d', 'feed, g/(m² d)', 'beds, m²', 'fish', 'filter, L', 'verdict'],
  labels: {
    sums: 'The farm in numbers',
    what: 'what',
    howMuch: 'how much',
    unit: 'unit',
    water: 'water',
    beds: 'beds',
    feed: 'feed',
    fish: 'fish of 150 g',
    number: 'number',
    filter: 'carriers in the filter',
    planIt: 'Plan it',
    plannedFile: 'a planned farm',
    poisonChart: 'Ammonia and nitrite in the tank',
    ammonia: 'ammonia',
    nitrite: 'nitrite',
    nitrateChart: 'Nitrate in the sump',
    nitrateUnit: 'nitrate, mg N/L',
    nitrate: 'nitrate',
  },
} as const;

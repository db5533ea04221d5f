export const words = {
  file: 'a log',
  title: '11 · Your own log',
  question:
    'You have a notebook of water tests. Which story of your system fits them, and which can they not tell apart?',
  intro: `<p>The log below is invented: a run with settings that are not told here, read off once every five days with the errors
    and steps of a drop kit. Put your own in its place if you have one; it stays in this page.</p>`,
  read: '{readings} readings read, {odd} odd.',
  ask: 'With 30 g of feed a day, 1 % of the biofilm and water of 26 °C the model lets nitrite peak earlier and lower than this log. What alone could be set wrong?',
  choices: [
    'Only the temperature',
    'Only the bacteria at the start',
    'Either of them: the log alone may not tell',
    'Only the feed',
  ],
  replies: [
    'Fewer bacteria at the start would do as well.',
    'Colder water would do as well.',
    'Colder water and fewer bacteria both move the peaks back.',
    'Feed lifts the peaks; it hardly moves them in time.',
  ],
  shown: `<p>Points are the log, lines the model as it was set. Now make the water colder, or start with fewer bacteria, and see that
    either brings the lines to the points.</p>`,
  sliders: {
    feed: { label: 'Feed really given', unit: 'g/d' },
    seeded: { label: 'Biofilm at the start', unit: '% of a full filter' },
    temperature: { label: 'Water', unit: '°C' },
  },
  changed: `<p>Misfit: ammonia {ammonia}, nitrite {nitrite}, nitrate {nitrate} mg N/L; only what lies outside the step of the kit
    counts. The model's nitrite peaks on day {day} at {high} mg N/L.</p>`,
  fit: `<h2>Let the library fit it</h2><p>It searches the three settings for those that make the readings likeliest, tells how well
    the log knows each, and which two it cannot tell apart. Then once more for a keeper who has a thermometer and knows the
    temperature.</p>`,
  apart: '<p>It tells all three apart.</p>',
  entangled: `<p>It cannot tell {a} from {b}: their errors go together (correlation {correlation}). Many pairs of the two fit about
    as well. The band is that about one of them, and does not show how far the others lie.</p>`,
  spoilt: `<p>Of {readings} readings the fit takes {blind} for spoilt without the thermometer, {measured} with it.</p>`,
  wrong: [
    'A good fit by wrong settings. Two sliders that do the same to what you measured cannot be told apart; measure one of them (a thermometer is cheap).',
    'Units: a kit may show ammonia as NH₃ or nitrate as NO₃. Write the unit in the header.',
    'Kits have steps and expire. “0” means less than half a step.',
    'Fitting the days you have, and trusting it for next year.',
  ],
  caution: 'Kit reagents are poisonous and caustic; they do not go into the tank or the garden.',
  exercise: 'Find the settings of the invented log. Which two can you trade against each other?',
  answer: `<p>It was made with {feed} g/d, {seeded} % and {temperature} °C. Temperature and the bacteria at the start trade: both
    move the peaks in time. Feed shows in nitrate at the end.</p>`,
  readings: ['feed, g/d', 'biofilm, %', 'water, °C', 'misfit ammonia', 'misfit nitrite', 'misfit nitrate'],
  labels: {
    log: 'The log',
    model: 'model',
    ammoniaChart: 'Ammonia, log and model',
    ammoniaUnit: 'ammonia, mg N/L',
    nitriteChart: 'Nitrite, log and model',
    nitriteUnit: 'nitrite, mg N/L',
    nitrateChart: 'Nitrate, log and model',
    nitrateUnit: 'nitrate, mg N/L',
    fitIt: 'Fit it',
    blind: 'Without a thermometer',
    measured: 'With the water measured',
    fitted: 'fitted',
    best: 'best',
    band: 'nine of ten',
    says: 'the log says',
    stays: 'next to nothing',
    narrowed: 'it lies in this band',
    moved: 'it is not the middle of the range',
    feed: 'feed',
    biofilm: 'biofilm at the start',
    waterTemperature: 'water temperature',
  },
} as const;

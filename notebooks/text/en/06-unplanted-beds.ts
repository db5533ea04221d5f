export const words = {
  file: 'beds',
  title: '06 · Unplanted beds',
  question: 'Seedlings are late and the beds stay bare. What tells first: nitrate, ammonia or alkalinity?',
  intro: `<p>The invented system has 4 m² of raft bed on soft water and is fed 80 g a day; the beds are either planted or bare for
    the whole 90 days. Nobody takes out what settles.</p>`,
  ask: 'All beds are bare for 90 days, and no crop takes up nitrate. How does it go?',
  choices: [
    'It rises by the same amount each week, to the end',
    'It rises, turns, and falls again',
    'It hardly moves: the filter keeps it down',
  ],
  replies: [
    'The more settles, the more of it has no oxygen, and there bacteria breathe nitrate.',
    'The more settles, the more of it has no oxygen, and there bacteria breathe nitrate.',
    'A filter makes nitrate: it takes none away.',
  ],
  shown: `<p>Nitrate is highest on day {nitrate-day}, at {nitrate-high} mg/L, and ends at {end}: by then bacteria in the settled
    solids breathe more of it than the filter makes. That is why nitrate that stands still says nothing of crops.</p>
    <p>With a kit in steps of 5 mg/L bare and planted can be told apart by nitrate from day {nitrate-told} on, by a kit for
    alkalinity in drops of 0.36 meq/L from day {alkalinity-told}. At the end, against the planted beds, ammonia differs
    by {tan-change} %, nitrate by {nitrate-change} %, alkalinity by {alkalinity-change} %. Crops themselves give hardly any base back: they drink, and the mains
    that make good what they drank bring base.</p>`,
  sliders: {
    planted: { label: 'Planted', unit: 'm²' },
    feed: { label: 'Feed', unit: 'g/d' },
    base: { label: 'Potassium bicarbonate', unit: 'g/week' },
  },
  changed: `<p>After 90 days: nitrate {nitrate} mg/L, alkalinity {alkalinity} meq/L, pH {pH}, ammonia {tan} mg N/L.</p>`,
  wrong: [
    'Reading nitrate alone. When alkalinity runs out, ammonia is no longer turned into nitrate, and nitrate looks better than it is. And where sludge lies thick, nitrate is low however much is fed.',
    'Taking that sludge for a filter: nobody knows how long it goes on, and what it does to oxygen is in the model only in part.',
    'Planting everything on one day: young plants take little, and old ones all at once.',
  ],
  caution: 'Cutting feed is a matter of fish welfare: do it in steps and watch the fish.',
  exercise: 'The beds are bare, so you halve the feed, to 40 g/d, to spare nitrate and alkalinity. Does it?',
  answer: `<p>Compare the lines. With less feed the sludge lies thinner, oxygen reaches more of it, and less nitrate becomes gas,
    which would give base back. To have the alkalinity of the planted system, keep the feed and dose: the third line has 20 g a
    week.</p>`,
  readings: ['planted, m²', 'feed, g/d', 'base, g/week', 'nitrate, mg N/L', 'alkalinity, meq/L'],
  labels: {
    planted: 'planted',
    bare: 'bare',
    yours: 'your beds',
    never: '(never)',
    nitrateUnit: 'nitrate, mg N/L',
    alkalinityUnit: 'alkalinity, meq/L',
    ends: 'After 90 days',
    bare80: 'bare, 80 g/d',
    bare40: 'bare, 40 g/d',
    bareDosed: 'bare, 80 g/d, dosed',
    planted80: 'planted, 80 g/d',
  },
} as const;

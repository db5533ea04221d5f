export const words = {
  file: 'drought',
  title: '07 · Drought',
  question: 'The council rations water. What happens in a system that loses more than it may refill?',
  intro: `<p>What evaporates leaves its salt behind. The level falls in one place only: the sump. The invented sump, of 500 L,
    holds 400 L at its float; its pump sucks air when 100 L are left. The system loses some 20 L a day; from the first day on, top-up is held to 15 L a
    day.</p>`,
  ask: 'Which comes first?',
  choices: [
    'Salt reaches what lettuce cannot stand',
    'Nitrate rises to a danger for fish',
    'The pump sucks air, and no water goes to the filter',
    'None of these within 90 days',
  ],
  replies: [
    'Salt rises only as fast as the water shrinks, and the standpipes hold most of the water.',
    'Nitrate harms tilapia only far above what a small system reaches.',
    'Only the sump gives way, and it is small.',
    'Each day some litres are wanting, and the sump is small.',
  ],
  shown: `<p>The pump sucks air on day {trip}. Every few days enough water has gathered to start it, and it sucks air again at once.
    So the tank has no filter, and ammonia climbs to {tan} mg N/L. Chloride reaches no more than {chloride} mg/L; lettuce stands
    {limit}.</p>`,
  sliders: {
    cap: { label: 'Top-up allowed', unit: 'L/d' },
    sump: { label: 'Water in the sump at the float', unit: 'L' },
    et0: { label: 'Evaporation outdoors (ET₀)', unit: 'mm/d' },
  },
  runs: '<p>The pump runs all 90 days.</p>',
  trips: '<p>The pump sucks air on day {trip-now}.</p>',
  changed: `<p>Highest ammonia {tan} mg N/L; chloride ends at {chloride} mg/L. On the last day the system loses {loss} L.</p>`,
  wrong: [
    'A full tank deceives: standpipes hold the tank and beds full while the sump runs dry.',
    'Topping up with salty well water: chloride then rises without an end.',
    'A change of water “because nitrate is high” in the middle of a drought.',
  ],
  caution:
    'Electricity near water: a licensed electrician and residual-current protection. A pump that runs dry burns out: fit a float switch, and air in the tank that does not hang on that pump.',
  exercise: 'How much water must the sump hold at the float so that the pump lasts 90 days on 15 L a day?',
  answer: `<p>The loss is up to {loss} L a day, {cap} come back, so {short} L are short in 90 days, and {inlet} L must be left: {sum}
    L. Try it with the sliders, a little above and a little below.</p>`,
  readings: ['top-up, L/d', 'sump, L', 'ET₀, mm/d', 'pump sucks air, day', 'highest ammonia, mg N/L'],
  labels: {
    air: 'pump sucks air',
    water: 'water',
    inlet: 'pump inlet',
    sumpChart: 'Water in the sump',
    sumpUnit: 'sump, L',
    ammoniaChart: 'Ammonia in the fish tank',
    ammoniaUnit: 'ammonia, mg N/L',
    ammonia: 'ammonia',
    chlorideChart: 'Chloride in the fish tank',
    chlorideUnit: 'chloride, mg/L',
    chloride: 'chloride',
  },
} as const;

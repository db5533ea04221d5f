export const words = {
  file: 'a drought summer',
  title: '15 · A drought summer',
  question: 'The ration will not cover what the system loses until autumn. What do you give up?',
  intro: `<p>It is the first of 120 dry days. The council allows 20 L a day. The system with 4 m² of lettuce loses nearly 30, and
    stores 1000 L in its sump, over a pump that sucks air at 100 L. You watch the level fall for a month. On day 30 you may do one
    thing, for the rest of the summer.</p>`,
  ask: 'Which one thing makes the water last longest?',
  choices: [
    'Halve the feed',
    'Take out half of the fish, and feed the rest as before',
    'Cut the lettuce and leave the beds fallow',
    'None of them: the water is gone on the same day',
  ],
  replies: [
    'Fish drink no water worth counting: feed makes ammonia, not loss.',
    'Fish drink no water worth counting.',
    'Leaves are what the water leaves by.',
    'One of them does: ask which way the water leaves.',
  ],
  shown: `<p>The planted system loses up to {before} L a day, with bare beds {after}: less than the {ration} that come, so the sump
    fills again. Halving the feed saves no water. It is not useless: where the pump stops all the same, ammonia goes to
    {tan-halved} mg N/L in place of {tan-none}. So: fallow for the water, less feed for the risk, and both before the sump is low,
    not after.</p>`,
  sliders: {
    ration: { label: 'Water allowed', unit: 'L/d' },
    fallow: { label: 'Beds fallow from day (120: never)', unit: 'd' },
    feed: { label: 'Feed from day 30 on', unit: '% of before' },
    et0: { label: 'Evaporation outdoors (ET₀)', unit: 'mm/d' },
  },
  runs: '<p>The pump runs all summer.</p>',
  trips: '<p>The pump sucks air on day {trip}.</p>',
  changed: `<p>Highest ammonia {tan} mg N/L, nitrate at the end {nitrate} mg N/L. On the last day {loss} L are lost.</p>`,
  wrong: [
    'Waiting. Each day of waiting costs what you will want in August.',
    'Filling up with water from a well that nobody tested: salt stays when water goes.',
    'Leaving bare beds open to the sun: they go on losing water. Cover them; the model does not cover them for you.',
    'Fallow beds take up no nitrate. Watch nitrate and alkalinity (lesson 06), and plant in steps in autumn.',
  ],
  caution:
    'Feed cuts and early harvest are matters of fish welfare: in steps, watching the animals, by your law. Keep air in the tank that does not hang on the pump. Water that is let out goes where local law says.',
  exercise:
    'What is the latest day, in steps of five, on which you may leave the beds fallow so that the pump never sucks air?',
  answer: `<p>Day {latest}: the sump then falls to {lowest} L at the lowest. That is too near for comfort: one hot week more, and it is
    dry. Move ET₀ by 0.5 and see.</p>`,
  readings: ['ration, L/d', 'fallow from day', 'feed, %', 'pump sucks air, day', 'highest ammonia, mg N/L'],
  labels: {
    inlet: 'pump inlet',
    sumpChart: 'Water in the sump over the summer',
    sumpNow: 'Water in the sump with your choices',
    sumpUnit: 'sump, L',
    nothing: 'nothing done',
    halved: 'half the feed',
    fewer: 'half the fish',
    fallow: 'beds fallow',
    acted: 'you act',
    yours: 'yours',
    never: '(never)',
    compared: 'One thing done on day 30',
    trip: 'pump sucks air, day',
    loss: 'lost at the end, L/d',
    tan: 'highest ammonia, mg N/L',
    nitrate: 'nitrate at the end, mg N/L',
  },
} as const;

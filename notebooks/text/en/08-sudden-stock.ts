export const words = {
  file: 'sudden stock',
  title: '08 · Sudden stock',
  question:
    'You triple your stock on one day. What does the filter do, and does it help to bring the fish in steps?',
  intro: `<p>A filter grows to its load, as far as oxygen and ammonia come to its films. The invented system has 30 fish fed 40 g a
    day on a small, grown filter of 10 L of carriers. On day 20 sixty more arrive and the feed is tripled.</p>`,
  ask: 'The load is tripled on day 20. How high does ammonia in the tank go?',
  guess: { label: 'My guess', unit: 'mg N/L' },
  shown: `<p>It stood at {before} and went to {peak} mg N/L on day {peak-day}. Three weeks after stocking it stands at {after}, and at the end
    at {end}: it does not come back to where it was. The hump is bacteria that were wanting, and they grew. The level is their food on its way: three
    times as much ammonia passes the still water over a film only where more of it is in the water outside.</p>`,
  sliders: {
    added: { label: 'Fish added', unit: 'fish' },
    steps: { label: 'Steps, a week apart', unit: 'number' },
    media: { label: 'Carriers in the filter', unit: 'L' },
  },
  changed: `<p>Highest ammonia {tan}, highest nitrite {nitrite} mg N/L; lowest oxygen {oxygen} mg/L.</p>`,
  wrong: [
    'Feeding the newcomers fully on the first day. Feed makes the ammonia, not the number of fish.',
    "More fish breathe more oxygen at once; the filter's bacteria do so too.",
    'Waiting for ammonia to come back to where it was. A filter at a higher load stands at a higher level; only more surface lowers it.',
    'Trusting the reserve that a grown filter keeps here: how large it is in yours, the model does not know.',
  ],
  caution:
    'Stocking density, transport and quarantine are matters of law and licensed practice. Newcomers bring disease.',
  exercise: 'Is it better to bring 60 fish in three steps, or to double the carriers on the day they come?',
  answer: `<p>Steps take the hump away and leave the level; carriers lower the level. Here they were in the water and grown over from
    day 0; clean carriers put in on the day hold no bacteria yet. Day 48 is two weeks after the last fish have come.</p>`,
  readings: ['fish added', 'steps', 'carriers, L', 'highest ammonia, mg N/L', 'lowest oxygen, mg/L'],
  labels: {
    chart: 'Ammonia and nitrite around the day of stocking',
    chartNow: 'Ammonia and nitrite with your choices',
    ammonia: 'ammonia',
    nitrite: 'nitrite',
    guide: 'guide',
    stocked: 'stocked',
    firstStocked: 'first stocked',
    compared: 'Ammonia in the tank, mg N/L',
    highest: 'highest',
    day48: 'on day 48',
    oneStep: 'one step, 10 L',
    threeSteps: 'three steps, 10 L',
    twenty: 'one step, 20 L',
  },
} as const;

export const words = {
  file: 'a new filter',
  title: '04 · Starting a biofilter',
  question: 'A new filter is clean. Which poison peaks first, how high, and when is it over?',
  intro: `<p>Two kinds of bacteria must grow: one turns ammonia into nitrite, the other nitrite into nitrate. The second lives on
    what the first makes. The invented system has no plants yet and is fed 30 g a day.</p>`,
  ask: 'What will the test kit show over 90 days?',
  choices: [
    'Ammonia and nitrite peak together',
    'Ammonia peaks first, nitrite later',
    'Nitrite peaks first, ammonia later',
    'Ammonia rises and stays',
  ],
  replies: [
    'The second kind of bacteria finds food only when the first has made it, so the second peak lags.',
    'The second kind of bacteria finds food only when the first has made it.',
    'There is no nitrite before there are bacteria that make it of ammonia.',
    'Bacteria grow as long as they find food: in the end they eat all that comes.',
  ],
  shown: `<p>Ammonia peaks on day {tan-day} at {tan-high}, nitrite on day {nitrite-day} at {nitrite-high} mg N/L.</p>`,
  sliders: {
    temperature: { label: 'Water', unit: '°C' },
    seeded: { label: 'Grown biofilm brought along', unit: '% of a full filter' },
    feed: { label: 'Feed', unit: 'g/d' },
  },
  changed: `<p>Highest ammonia {tan} on day {tan-day}; highest nitrite {nitrite} mg N/L on day {nitrite-day}.</p>`,
  wrong: [
    '“Ammonia is gone, so the filter is ready”: the second peak is still to come.',
    'Cold water, no alkalinity, chlorine or a scrubbed filter set the growth back to the start.',
    'How many bacteria a new filter holds on day 0 is not known; the tables say a hundred-thousandth of a full film, and a hundred times less or more can be (<code>biofilm.seed-aob</code>). The days are a guide, not a date.',
  ],
  caution:
    'Both peaks harm fish. Grow a filter without fish, on an ammonium salt, and stock when a dose is gone within a day (the what-if <code>fishless</code>). Law and licensed practice decide on fish.',
  exercise: 'How much does it help to bring 5 % of a full filter from a healthy system?',
  answer: `<p>At 24 °C and 30 g/d nitrite then peaks at {seeded} mg N/L instead of {unseeded}. It may bring disease along as
    well.</p>`,
  readings: ['water, °C', 'biofilm brought, %', 'feed, g/d', 'ammonia: day, mg N/L', 'nitrite: day, mg N/L'],
  labels: {
    chart: 'Ammonia and nitrite while a filter grows',
    chartNow: 'Ammonia and nitrite with your choices',
    ammonia: 'ammonia',
    nitrite: 'nitrite',
    guide: 'guide for both',
  },
} as const;

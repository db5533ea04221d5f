export const words = {
  file: 'a filter',
  title: '09 · Sizing a filter before you buy it',
  question: 'You will feed 150 g a day. How many litres of plastic carriers must you buy?',
  intro: `<p>The handbook reckons: ammonia from feed, over what a square metre removes, over the square metres in a litre. The model
    runs 90 days and looks at the water. Both know things that the other does not.</p>`,
  ask: 'How many litres of carriers keep ammonia at 0.5 mg N/L or less on day 90, at 24 °C?',
  guess: { label: 'My guess', unit: 'L' },
  shown: `<p>The search in the model ends at {search} L after {trials} runs; the handbook's sum is {handbook} L. The handbook's rate is
    that of one level of ammonia: the lower the level you want, the less each square metre does. The model knows that, it knows
    that walls and rafts carry biofilm too, and that what grows on organic matter covers part of it. Read the verdict as
    well: a goal in TAN says nothing of how much of it is free (lesson 13).</p>`,
  sliders: {
    feed: { label: 'Feed', unit: 'g/d' },
    media: { label: 'Carriers', unit: 'L' },
    temperature: { label: 'Water', unit: '°C' },
  },
  changed: `<p>On day 90 ammonia is {tan} and nitrite {nitrite} mg N/L. The handbook would buy {handbook-now} L.</p>`,
  wrong: [
    'Sizing for the feed of today. The fish grow, and so does the feed.',
    'Sizing for summer. Cold biofilm works slower; move the temperature.',
    'Buying just what the model says: pumps stop and beds get cleaned. Take the larger answer and a reserve.',
  ],
  caution:
    'A number from a model is no promise to a fish. Measure ammonia and nitrite while you raise the feed.',
  exercise: 'The winter is 20 °C, or 18 °C. What does the search say then?',
  answer: `<p>{warm} L at 24 °C, {winter} L at 20 °C and {cold} L at 18 °C, for the same feed and the same goal. Near 17 °C these fish
    stop eating: what they leave rots, and what grows on it covers the film. Feed what they eat, no more.</p>`,
  rates:
    '<p>Published rates for a square metre go from {low} to {high} g a day: one more reason for a reserve.</p>',
  readings: ['feed, g/d', 'carriers, L', 'water, °C', 'ammonia on day 90, mg N/L', 'handbook, L'],
  labels: {
    none: 'no size up to 150',
    goal: 'goal',
    chart: 'Ammonia after 90 days by size of the filter',
    unit: 'ammonia on day 90, mg N/L',
    litres: 'litres of carriers',
    model: 'the model',
    you: 'you',
    chartNow: 'Ammonia and nitrite with your filter',
    ammonia: 'ammonia',
    nitrite: 'nitrite',
  },
} as const;

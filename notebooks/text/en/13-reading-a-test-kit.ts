export const words = {
  file: 'a test kit',
  title: '13 · Reading a test kit',
  question: 'Two tanks show the same colour on the same test. Is the water the same?',
  intro: `<p>A kit for ammonia measures ammonia and ammonium together: total ammonia nitrogen, TAN. Only the free part, NH₃, passes
    the gills and poisons; the charged part, NH₄⁺, hardly does. How much is free hangs on pH and temperature. Another trap is what
    is counted: the nitrogen, or the whole ion.</p>`,
  ask: 'Two tanks of 26 °C show 1 mg/L of TAN each. One has pH 7.0, the other pH 8.5. How many times as much free ammonia is in the second?',
  guess: { label: 'My guess', unit: 'times' },
  shown: `<p>At pH 7.0 {low} µg/L are free, at pH 8.5 {high} µg/L: {times} times as much, in water that shows the same colour. Tilapia
    should not live above {limit} µg/L (as nitrogen) for long. A reading of TAN without pH and temperature says little.</p>`,
  steps: `<p>A colour is a step, not a number: what lies nearer to it than to its neighbours looks like it. And nitrate “as NO₃” is
    {factor} times the nitrogen in it: the table says both. (Steps of a common card; yours may differ.)</p>`,
  sliders: {
    tan: { label: 'The kit shows TAN', unit: 'mg N/L' },
    pH: { label: 'pH', unit: '' },
    temperature: { label: 'Water', unit: '°C' },
    nitrate: { label: 'The kit shows nitrate', unit: 'mg/L as NO₃' },
  },
  changed: `<p>Free ammonia: {free} µg N/L, {times} times what tilapia should live in for long. That nitrate is {nitrate} mg N/L.</p>`,
  inSystem: `<p>The invented system, after 30 days at {temperature} °C, would show TAN {tan} mg N/L at pH {pH}, of which {free} are
    free.</p>`,
  wrong: [
    'Dosing base because pH is low, while TAN is high: pH goes up, and harmless ammonium becomes ammonia.',
    'Testing in the morning only: pH and temperature are highest in the afternoon, and so is free ammonia.',
    'Old reagents, a dirty tube, a look by lamp light. Test the tap and a bottle of known strength now and then.',
    'Comparing your “40” with a book that counts nitrogen.',
  ],
  caution:
    'Kit reagents are poisonous and caustic: gloves, goggles, a bottle for the waste, not the tank, not the garden. Where fish gasp, do not wait for a test: aerate, stop feeding, change some water slowly.',
  exercise:
    'A kit shows 50 mg/L of nitrate “as NO₃”. A book says crops grow well at 50 mg N/L. Is that the same?',
  answer: `<p>No. 50 mg/L as NO₃ are {nitrogen} mg N/L; 50 mg N/L would read {wrong} on that kit. The factor is {factor}.</p>`,
  readings: ['TAN shown, mg N/L', 'pH', 'water, °C', 'free ammonia, µg N/L', 'nitrate, mg N/L'],
  labels: {
    chart: 'Free part of the ammonia by pH',
    chartNow: 'Free part of the ammonia by pH, with your temperature',
    share: 'free, % of TAN',
    warm: '26 °C',
    yours: '{temperature} °C',
    one: 'one tank',
    other: 'the other',
    yourPH: 'your pH',
    card: 'What a colour of the nitrate card says',
    shows: 'shows, as NO₃',
    asN: 'mg N/L',
    from: 'from',
    to: 'to',
  },
} as const;

export const words = {
  file: 'one tank',
  title: '01 · One tank and a tap',
  question:
    'A tap runs into a full tank and the tank overflows. When one whole tankful has run in, is all the old water gone?',
  intro: `<p>The tank holds 1000 L, is stirred, and starts with 80 mg/L of nitrate nitrogen. The tap brings water with 2 mg/L.
    What runs in pushes the same volume out, at the strength the tank has at that moment.</p>`,
  ask: 'The tap gives 100 L a day, so on day 10 one tankful has run in. How much nitrate is left then?',
  guess: { label: 'My guess for day 10', unit: 'mg N/L' },
  shown: `<p>On day 10 it is {day-10} mg/L: of what was there above the tap, {left} % is left. New water mixes with old, so part
    of what overflows is new water.</p>`,
  sliders: {
    tap: { label: 'The tap gives', unit: 'L/d' },
    nitrate: { label: 'Nitrate in tap water', unit: 'mg N/L' },
  },
  changed: '<p>On day 90 the tank is at {end} mg/L. A tankful takes {tankful} days.</p>',
  wrong: [
    'A real tank has corners the water passes by. Then some old water stays longer than this, and some new water leaves at once.',
    'The tank never gets below what the tap brings. Test the tap as well.',
    'Tap water may hold chlorine, which harms fish and biofilm, and may be colder than the tank.',
  ],
  caution: 'Change water slowly and watch the fish. Where the overflow may go is a matter of local law.',
  exercise: 'How many tankfuls must run in until a twentieth of the old water is left?',
  answer: `<p>The share left is e to the power of minus the number of tankfuls, so it takes ln 20 = {twentieth} tankfuls. At 100 L
    a day the tank is at {check} mg/L after nine of them. Changing the water at once would take {once} of one: a batch change
    saves water, and shocks fish.</p>`,
  sources:
    '<p>A stirred tank is a balance: what changes is what comes in less what goes out. It needs no measured number. The run read these:</p>',
  readings: ['tap, L/d', 'nitrate of the tap, mg N/L', 'nitrate on day 90, mg N/L'],
  labels: {
    chart: 'Nitrate in the tank over 90 days',
    chartNow: 'Nitrate in the tank with your tap',
    unit: 'nitrate, mg N/L',
    nitrate: 'nitrate',
    tankful: 'one tankful',
    before: 'before',
    now: 'your tap',
  },
} as const;

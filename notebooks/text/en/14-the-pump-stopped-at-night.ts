export const words = {
  file: 'a night without power',
  title: '14 · The pump stopped at night',
  question: 'At nine in the evening the power fails, and everybody sleeps. How long have the fish?',
  intro: `<p>60 tilapia of 150 g live in 1 m³, fed 120 g a day. Pump and air blower hang on the same plug. The power is back at five
    in the morning, eight hours later. No water goes to the filter, and no air into the tank. These fish should not be below 3 mg/L
    of oxygen; before the cut they have close to 8.</p>`,
  ask: 'After how many hours does oxygen in the tank pass below 3 mg/L?',
  guess: { label: 'My guess', unit: 'h' },
  shown: `<p>After {hours} h it is below {limit} mg/L, and at the lowest {lowest}: {dead} % of the fish die before morning. Fish breathe on,
    and nothing brings oxygen but the still surface. Had only the pump stopped and the air gone on, oxygen would not pass below
    {pump} mg/L; ammonia would reach {pump-tan} mg N/L, and {pump-dead} % would die. Want of oxygen kills in hours, ammonia takes
    days: the air is what must not stop.</p>`,
  sliders: {
    hours: { label: 'The power is gone for', unit: 'h' },
    fish: { label: 'Fish in the tank', unit: 'number' },
    battery: { label: 'A battery keeps the air going for', unit: 'h' },
  },
  never: '<p>Oxygen never passes below 3 mg/L.</p>',
  passes: '<p>Oxygen passes below 3 mg/L {passed} h after the cut.</p>',
  changed: `<p>Lowest oxygen {lowest} mg/L, highest ammonia {tan} mg N/L; {left} of {fish} fish are alive at the end.</p>`,
  wrong: [
    'One plug for pump and air. Two circuits, a battery for the air, an alarm that rings a telephone.',
    'Feeding late in the day: a fed fish breathes more for hours. The model breathes by the day and does not show it.',
    'The pump is back and pushes what rotted in filter and pipes into the tank at once. Where it stood for many hours, let the first water go elsewhere.',
    'A full standpipe that drains the tank when the pump stops: look where each pipe siphons to before the night does.',
  ],
  caution:
    'Never reach into water near a plug: pull the breaker first. Wiring near water is for licensed electricians, with residual-current protection. Dead and dying fish: your law on welfare and on carcasses decides.',
  exercise:
    'How many hours must a battery keep the air going, so that 60 fish get through the eight hours above 3 mg/L? And how long would 30 fish have without one?',
  answer: `<p>{battery} h of air do: after that the air that is left in the water lasts until morning. 30 fish without a battery pass below
    3 mg/L after: {half} h.</p>`,
  readings: ['hours without power', 'fish', 'battery, h', 'lowest oxygen, mg/L', 'fish alive'],
  labels: {
    oxygenChart: 'Oxygen in the tank around the cut',
    oxygenNow: 'Oxygen in the tank with your choices',
    oxygenUnit: 'oxygen, mg/L',
    ammoniaChart: 'Ammonia in the tank around the cut',
    ammoniaUnit: 'ammonia, mg N/L',
    hours: 'hours since the power failed',
    both: 'no pump, no air',
    pump: 'pump only off',
    danger: 'danger',
    before: 'as above',
    yours: 'yours',
    notAtAll: '(not within the night)',
  },
} as const;

export const words = {
  file: 'how sure',
  title: '10 · How sure are we?',
  question:
    'The model says one number. How far off may it be, when its own numbers are known only between bounds?',
  intro: `<p>Every number of the model has a range in the tables. Draw all of them anew, run, and do that many times: the runs
    spread. The invented system is a new filter, started with fish on 30 g of feed a day.</p>`,
  given: '<p>With every number at its best value, nitrite peaks at {best} mg N/L.</p>',
  status: '{done} of {all} runs',
  ask: 'In 40 runs with drawn numbers, how high is the highest peak of nitrite?',
  guess: { label: 'My guess', unit: 'mg N/L' },
  shown: `<p>The peaks of {count} runs lie between {lowest} and {highest} mg N/L. The shaded band holds nine runs of ten on each day.
    Where its top still rises at the end, some runs have not got rid of nitrite in 90 days.</p>`,
  sliders: {
    level: { label: 'Nitrite should stay below', unit: 'mg N/L' },
    feed: { label: 'Feed', unit: 'g/d' },
    seeded: { label: 'Grown biofilm brought along', unit: '% of a full filter' },
  },
  below: '<p>{below} of the {count} drawn runs of the system above stay below {level} mg N/L.</p>',
  changed: '<p>The one best run of your system peaks at {peak} mg N/L on day {day}.</p>',
  wrong: [
    'Taking the band for the truth. It holds what the ranges of the tables say; what the model leaves out is in no band (lesson 12).',
    'Drawing each number on its own. In nature some go together, and the band is then too wide or too narrow.',
    'Forty runs tell the middle well and the edges badly.',
  ],
  caution:
    'With fish in the tank plan for the bad edge of the band, not for its middle. Fish welfare law knows no median.',
  exercise: 'How high must the level be until 36 of the 40 runs stay below it? What share is that?',
  answer: `<p>36 of 40 is {share} %. Above {level} mg N/L on the slider the count is 36. That level, not the {best} of the best run,
    is what to plan for.</p>`,
  sources: '<p>Each number that is drawn has its range beside its source. This run read these:</p>',
  readings: [
    'level, mg N/L',
    'runs below it, of 40',
    'feed, g/d',
    'biofilm brought, %',
    'peak of the best run, mg N/L',
  ],
  labels: {
    chart: 'Nitrite: middle of the runs and the band that holds nine of ten',
    chartNow: 'Nitrite with your choices, best values',
    unit: 'nitrite, mg N/L',
    best: 'best values',
    median: 'median',
    yours: 'your system',
    above: 'as above',
    level: 'your level',
  },
} as const;

/** Words of the pages around the lessons. */
export const site = {
  name: 'English',
  title: 'Lessons',
  all: 'All lessons',
  intro: `<p>Each lesson asks, lets you predict, shows what the model says, and gives you sliders. The model runs in this page, on your
    machine; nothing is sent anywhere. Every system in them is invented.</p>`,
  groups: {
    begin: 'To begin',
    nitrogen: 'Nitrogen',
    filter: 'The filter',
    water: 'Water',
    design: 'Design',
    trust: 'How far to trust it',
  },
  teacher: 'For the teacher: a class of 90 minutes',
  worksheets: 'Worksheets to print',
  answers: 'Answers for the teacher',
  answersNote:
    'For the teacher only: every answer as the model gives it today, worked out in this page. That takes a minute.',
  sheetsNote:
    'One sheet a lesson, and a log for the greenhouse. They hold no answer. Print this page; each sheet begins on paper of its own.',
  print: 'Print',
  log: 'Log of water tests',
  logNote: `<p>One line each time you test. Write what the kit shows, with its steps (<code>0.25</code>, <code>&lt;0.25</code>,
    <code>10-20</code>); an empty cell means “not tested”; a feed of 0 means “not fed”. Typed into the file of the same columns it is
    read by <code>leat log</code>, with the map that says what they hold, and by the page of Leat.</p>`,
  logFile: 'log.csv',
  mapFile: 'log.map',
  single: 'As one file to keep',
  singleNote: 'The whole lesson in one file: it opens from a disk or a stick, without a network.',
  singleAll: 'All lessons in one file',
  footer: `Every system here is invented. Leat is a model of well-mixed vessels with published averages: a teaching aid, not a
    guarantee. Fish welfare, food safety, discharge and electricity follow your law and licensed practice.`,
  noScript: 'The lesson needs JavaScript: the model runs in this page.',
  language: 'Language',
} as const;

/** Columns of the blank log: the header of the file, in words that `leat log` can be told of by a map. */
export const logColumns = {
  date: 'date',
  ammonia: 'TAN (mg N/L)',
  nitrite: 'nitrite (mg N/L)',
  nitrate: 'nitrate (mg N/L)',
  pH: 'pH',
  alkalinity: 'alkalinity (mg/L as CaCO3)',
  temperature: 'temperature (degC)',
  feed: 'feed (g)',
  notes: 'notes',
} as const;

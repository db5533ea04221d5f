/** What stands around every lesson, in one language. A place in braces is filled with what was worked out. */
export interface LessonFrame {
  /** Tag of the language, such as `en` or `es`: numbers are written as it does. */
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly predictFirst: string;
  readonly show: string;
  /** What stands in the place of everything that comes after the prediction. */
  readonly veil: string;
  /** Replies to a guessed number: `{guess}`, `{right}` and `{unit}`. */
  readonly near: string;
  readonly tooHigh: string;
  readonly tooLow: string;
  /** Replies to a pick: `{guess}` and `{right}`. */
  readonly rightPick: string;
  readonly wrongPick: string;
  readonly yourGuess: string;
  readonly system: string;
  /** The drawn system for those who do not see it: `{vessels}` and `{flows}`. */
  readonly systemText: string;
  readonly outside: string;
  /** What is drawn in vessels. */
  readonly kinds: Readonly<Record<string, string>>;
  readonly days: string;
  /** A line of a picture for those who do not see it: `{name}`, `{first}`, `{last}`, `{highest}` and `{unit}`. */
  readonly lineText: string;
  readonly change: string;
  readonly wrong: string;
  readonly caution: string;
  readonly exercise: string;
  readonly answer: string;
  readonly sources: string;
  /** `{count}`. */
  readonly allSources: string;
  readonly moreNumbers: string;
  readonly marks: string;
  /** `{name}`. */
  readonly file: string;
  readonly fileText: string;
  readonly save: string;
  readonly sliderHint: string;
  readonly atWork: string;
  readonly worksheet: string;
  readonly pupil: string;
  readonly date: string;
  readonly because: string;
  readonly readings: string;
}

/** The frame in English. */
export const englishFrame: LessonFrame = {
  language: 'en',
  direction: 'ltr',
  predictFirst: 'Predict first.',
  show: 'Show what the model says',
  veil: 'The rest of this lesson comes when you have predicted.',
  near: 'Right, or near enough: you said {guess} {unit}, the model says {right} {unit}.',
  tooHigh: 'Too high: you said {guess} {unit}, the model says {right} {unit}.',
  tooLow: 'Too low: you said {guess} {unit}, the model says {right} {unit}.',
  rightPick: 'Right: “{guess}”.',
  wrongPick: 'Not so. You said “{guess}”; the model says “{right}”.',
  yourGuess: 'your guess',
  system: 'The system',
  systemText: 'Vessels: {vessels}. Water goes {flows}.',
  outside: 'outside',
  kinds: {
    vessel: 'tank',
    'fish-tank': 'fish tank',
    biofilter: 'biofilter',
    'raft-bed': 'raft bed',
    'media-bed': 'media bed',
    clarifier: 'clarifier',
    sump: 'sump',
  },
  days: 'days',
  lineText: '{name}: from {first} to {last} {unit}, highest {highest}',
  change: 'Change something',
  wrong: 'What can go wrong',
  caution: 'Caution.',
  exercise: 'Exercise',
  answer: 'Answer',
  sources: 'Sources',
  allSources: 'Every source of this run ({count})',
  moreNumbers: 'and {count} more',
  marks:
    'Marks: R read in the source, S quoted second-hand, C computed, M from memory, W weak memory, P common practice.',
  file: 'The file behind “{name}”',
  fileText: 'Invented. Save it, change it, and open it in the page of Leat.',
  save: 'Save',
  sliderHint: 'slider',
  atWork: 'At work …',
  worksheet: 'Worksheet',
  pupil: 'Name',
  date: 'Date',
  because: 'because',
  readings: 'What I set and what I read',
};

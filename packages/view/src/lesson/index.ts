// A lesson in a page: a question, a prediction, what the model says, sliders, an exercise; and its worksheet on paper.
export type { Ask, AskedNumber, AskedPick, AskWords, Guess } from './ask.js';
export type { Bar, BarsOptions } from './bars.js';
export type { ChartOptions, Colour, Level, Line } from './chart.js';
export { figure, fill, type Filling, numberText, placesOf, plainly } from './fill.js';
export { type Kit, type Later, openKit } from './kit.js';
export {
  foldedAnswer,
  type Lesson,
  lessonElement,
  type LessonWords,
  type OpenLesson,
  type Stage,
} from './lesson.js';
export { numberOf, type Statistic } from './number-of.js';
export { runText } from './run-text.js';
export { saveButton } from './save.js';
export type { SliderRange, SliderWords } from './slider.js';
export { englishFrame, type LessonFrame } from './words.js';
export { teachersAnswer, worksheet } from './worksheet.js';

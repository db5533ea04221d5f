// About ten questions, and the system file that is written from their answers.
export type { Answers, ClimateKind, Feeding, FilterKind, QuestionId } from './answers.js';
export { answerFaults, answerProblem, faultsAt, type AnswerFault } from './check.js';
export type { Limits } from './limits.js';
export {
  defaultAnswers,
  groups,
  isAsked,
  questions,
  type Applies,
  type ChoiceQuestion,
  type MonthsQuestion,
  type NumberQuestion,
  type Question,
  type QuestionGroup,
  type SeveralQuestion,
} from './questions.js';
export { optionName, questionWords, type QuestionWords } from './words/index.js';
export { writeSystem, type WriteOptions } from './write-system.js';

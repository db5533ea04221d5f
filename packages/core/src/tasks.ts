// What a command or a page asks for, from plain data to plain data: a system as texts, and searches on workers.
export { openTexts, openWith, settingsOf, type ReferencedFiles, type TextOptions } from './tasks/texts.js';
export { changedText, openChanged } from './tasks/changed.js';
export {
  openAt,
  openFactor,
  openVaried,
  readAll,
  timesFactor,
  type Varied,
  type VariedValue,
} from './tasks/vary.js';
export {
  changesThere,
  openAdviceTrials,
  searchAdvice,
  type AdviceRunner,
  type AdviseInput,
  type AdviseShared,
  type FoundAdvice,
} from './tasks/advise.js';
export { openSize, type OpenSize, type SizeFound, type SizeShared } from './tasks/size.js';
export {
  openPlan,
  openPlanTrials,
  planOf,
  type OpenPlan,
  type Plan,
  type PlanInput,
  type PlanOutput,
  type PlanShared,
} from './tasks/plan.js';

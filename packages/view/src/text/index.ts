// Numbers, names and what is said of a run, in words for a person.
export { changePhrase, changeWord, yieldPhrase } from './advice.js';
export { actionPhrase } from './actions.js';
export { baseLines } from './base-lines.js';
export { costLines, moneyText } from './costs.js';
export { afterLines, afterTexts, type AfterText } from './after-events.js';
export { meaningWords } from './changes.js';
export { cautions, cautionsIn } from './cautions.js';
export { boundLabel, boundLine, boundPhrase, boundSign, boundUnit, type Bound } from './limits.js';
export {
  andMore,
  fatePhrase,
  flowPhrase,
  listed,
  placeOf,
  placeText,
  plain,
  quantityOf,
  quantityPhrase,
  seriesPhrase,
  short,
} from './names.js';
export { day, decadeOf, extreme, longSpan, percent, shown, valueText, volumeText } from './numbers.js';
export { betterLine } from './better.js';
export { harvestLines, type Yield, yieldsByMonth } from './harvest.js';
export {
  dateNames,
  dayNames,
  eventText,
  spanPhrase,
  verdictLines,
  verdictTold,
  type DayName,
  type VerdictLine,
} from './verdict.js';
export {
  differencePhrase,
  differenceTold,
  shownDifference,
  signedParts,
  type DifferenceTold,
  type ShownDifference,
  type ToldMoment,
} from './why.js';
export { oneLine, visible } from './visible.js';
export { planTold, type PlanTold, type ToldQuantity, type ToldTable } from './plan.js';
export { questionOf } from './question.js';
export { askedTold, type AskedTold } from './asked.js';
export { askedInSweep, type AskedInSweep, type Sweep, type SweptQuantity } from './sweep.js';
export { displayOf, plainDisplay, type Display, type DisplayChoice } from '../display/display.js';
export type { Words } from '../words/en.js';

// Numbers, names and what is said of a run, in words for a person.
export { changePhrase, changeWord, yieldPhrase } from './advice.js';
export { actionPhrase } from './actions.js';
export { costLines, moneyText } from './costs.js';
export { afterLines, afterTexts, type AfterText } from './after-events.js';
export { changeWords } from './changes.js';
export { cautions } from './cautions.js';
export { boundLabel, boundLine, boundPhrase, boundSign, boundUnit, type Bound } from './limits.js';
export { andMore, listed, placeOf, plain, quantityOf, quantityPhrase, seriesPhrase, short } from './names.js';
export { day, decadeOf, longSpan, percent, shown, valueText, volumeText } from './numbers.js';
export { betterLine, dayNames, harvestLines, spanPhrase, verdictLines, type DayName } from './verdict.js';
export { askedInSweep, type AskedInSweep, type Sweep, type SweptQuantity } from './sweep.js';

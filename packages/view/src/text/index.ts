// Numbers, names and what is said of a run, in words for a person.
export { actionPhrase } from './actions.js';
export { cautions } from './cautions.js';
export { boundLabel, boundLine, boundPhrase, boundSign, boundUnit, type Bound } from './limits.js';
export { andMore, listed, placeOf, plain, quantityOf, quantityPhrase, seriesPhrase, short } from './names.js';
export { day, percent, shown, valueText, volumeText, decadeOf } from './numbers.js';
export { betterLine, dayNames, harvestLines, spanPhrase, verdictLines, type DayName } from './verdict.js';
export { askedInSweep, type AskedInSweep, type Sweep, type SweptQuantity } from './sweep.js';

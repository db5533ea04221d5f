// Numbers, names and what is said of a run, in words for a person.
export { actionPhrase } from './actions.js';
export { cautions } from './cautions.js';
export { listed, placeOf, plain, quantityOf, quantityPhrase, seriesPhrase } from './names.js';
export { day, percent, shown, valueText } from './numbers.js';
export { askedInSweep, type AskedInSweep, type Sweep, type SweptQuantity } from './sweep.js';

// Quantities with their units, as the system file reads and writes them.
export { convert, formatQuantity, internalUnit, parseQuantity, type Dimension } from './base/units.js';
export type { QuantityAnswer } from './base/units.js';
export type { QuantityFault } from './base/units.js';
// Units that results are shown in.
export {
  metric,
  readUnitChoice,
  unitShown,
  valueShown,
  type Choosable,
  type UnitChoice,
  type UnitFault,
  type UnitSystem,
} from './base/unit-choice.js';
export { languages, type Language } from './base/languages.js';

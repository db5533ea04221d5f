// Quantities with their units, as the system file reads and writes them.
export { convert, formatQuantity, internalUnit, parseQuantity, type Dimension } from './base/units.js';
export type { QuantityAnswer } from './base/units.js';
export type { QuantityFault } from './base/units.js';

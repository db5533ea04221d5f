// Quantities with their units, as the system file reads and writes them.
export { convert, formatQuantity, internalUnit, parseQuantity } from './base/units.js';
//# sourceMappingURL=units.js.map
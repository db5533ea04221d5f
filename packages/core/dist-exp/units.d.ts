export { convert, formatQuantity, internalUnit, parseQuantity, type Dimension } from './base/units.js';
export type { QuantityAnswer } from './base/units.js';
export type { QuantityFault } from './base/units.js';
//# sourceMappingURL=units.d.ts.map
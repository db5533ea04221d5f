import type { Values } from '../../library/values.js';
/** Oxygen demand of the lean body of a fish, g COD per g wet: that of its protein. */
export declare function leanDemand(values: Values): number;
//# sourceMappingURL=lean-body.d.ts.map
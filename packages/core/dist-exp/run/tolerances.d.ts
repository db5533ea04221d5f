import type { Model } from '../model/model.js';
/** Absolute tolerance of each state at a relative tolerance. */
export declare function absoluteTolerances(model: Model, relative: number): Float64Array;
//# sourceMappingURL=tolerances.d.ts.map
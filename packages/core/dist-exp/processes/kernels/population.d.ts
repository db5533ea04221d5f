import { type Kernel } from './kernel.js';
/** Ammonia oxidisers: nitrite is the last of their variables. */
export declare const aobKernel: Kernel;
/** Nitrite oxidisers: nitrite is their substrate. */
export declare const nobKernel: Kernel;
//# sourceMappingURL=population.d.ts.map
import type { Process } from './process.js';
/**
 * Dissolved matter taken up by bacteria of the water with oxygen, per g COD: a share becomes cells (suspended solids,
 * with nitrogen from TAN), the rest is burnt. First order in what is there. Henze et al. 1987.
 */
export declare const dissolvedOxidation: Process;
/** The same with nitrate where oxygen is short, per g COD: 2.86 g COD per g N of what is burnt. */
export declare const dissolvedDenitrification: Process;
/** Organic nitrogen to TAN, per g N: urea and the like, first order. */
export declare const ammonification: Process;
//# sourceMappingURL=dissolved.d.ts.map
import type { Process } from './process.js';
/** Fish that die and are taken out, per g of body. */
export declare const mortality: Process;
/** The fat of fish that die and are taken out, per g COD. */
export declare const mortalityFat: Process;
/** Fish that die, per fish. */
export declare const mortalityCount: Process;
/** Fish that die and are left in the water, per g of body. */
export declare const mortalityLeft: Process;
/** The fat of fish that die and are left in the water, per g COD. */
export declare const mortalityLeftFat: Process;
/** Dead fish that rot, per g: dissolved organic matter and dissolved organic nitrogen (Boros et al. 2015). */
export declare const rot: Process;
/** The fat of dead fish that rot, per g COD. */
export declare const rotFat: Process;
//# sourceMappingURL=deaths.d.ts.map
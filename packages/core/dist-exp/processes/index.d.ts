import type { Process } from './process.js';
/** Every process, in the order of the printed table: fish, biofilm, solids, crops, air, dosers. Nobody can change it. */
export declare const processes: readonly Process[];
//# sourceMappingURL=index.d.ts.map
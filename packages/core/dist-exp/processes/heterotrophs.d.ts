import type { Process } from './process.js';
/**
 * Growth of heterotrophs on a surface, per g COD of cells: 1/Y g COD of dissolved matter, (1 - Y)/Y g O2, cell nitrogen
 * from TAN. Henze et al. 1987 (ASM1), limited by what comes through the still water over the film.
 */
export declare const heterotrophGrowth: Process;
/**
 * Decay and detachment of heterotrophs, per g COD, first order: they become suspended solids of the same oxygen demand,
 * what nitrogen these do not hold goes to TAN. Henze et al. 1987 (death and regeneration).
 */
export declare const heterotrophLoss: Process;
//# sourceMappingURL=heterotrophs.d.ts.map
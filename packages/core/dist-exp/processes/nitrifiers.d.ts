import type { Process } from './process.js';
/**
 * Growth of ammonia oxidisers on ammonia, per g COD of cells: 1/Y g N to nitrite, cell nitrogen
 * from TAN; oxygen, alkalinity and inorganic carbon by closure (3.43 - Y g O2 per g N, 2 eq per mol N).
 * Henze et al. 1987 (Monod growth); inorganic carbon as a substrate (Guisasola et al. 2007), free ammonia and nitrous
 * acid as inhibitors (Park & Bae 2009); rate per surface limited by the room of this population.
 */
export declare const ammoniaOxidation: Process;
/**
 * Ammonia oxidised without growth where their room is full, per g N: TAN to nitrite,
 * NH4+ + 3/2 O2 -> NO2- + H2O + 2 H+ (3.43 g O2 and 2 eq of alkalinity per mol N).
 */
export declare const ammoniaOxidationIdle: Process;
/** Decay of ammonia oxidisers, per g COD: what heterotrophs leave bare dies and becomes solids. Henze et al. 1987. */
export declare const aobDecay: Process;
/**
 * Growth of nitrite oxidisers, per g COD of cells: 1/Y g N of nitrite to nitrate (1.14 - Y g O2 per
 * g N), cell nitrogen from nitrite too, by assimilatory reduction, so that growth ends with its own
 * substrate; inhibited by free ammonia and nitrous acid (Park & Bae 2009).
 */
export declare const nitriteOxidation: Process;
/** Nitrite oxidised without growth where their room is full, per g N: NO2- + 1/2 O2 -> NO3- (1.14 g O2). */
export declare const nitriteOxidationIdle: Process;
/** Decay of nitrite oxidisers, per g COD: what heterotrophs leave bare dies and becomes solids. Henze et al. 1987. */
export declare const nobDecay: Process;
/**
 * The film gets used to the pH of its water, per pH: the lower flank of the bell of both populations moves to `distance`
 * below it, within its ends, in a time constant. Films that grew in acid water nitrified at pH 4.3 and 5 as well as
 * others at 7 (Tarre & Green 2004), within 60 d of the change (Water Sci. Technol. 55(8-9):363); one that was new to it
 * did at pH 6 a quarter of what it did at 8 (Tyson et al. 2008).
 */
export declare const acclimating: Process;
/**
 * Cells awake again, as a share of all nitrifiers of a surface: those that a bath, a dry spell or lack of air has stunned
 * keep their room and what they are made of, and come back faster than others would grow in their place.
 */
export declare const wakening: Process;
//# sourceMappingURL=nitrifiers.d.ts.map
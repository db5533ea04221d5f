import type { Process } from './process.js';
/** Growth of a plant without its fruit, per g dry: carbon from air, oxygen to air, by closure. */
export declare const cropGrowing: Process;
/** Growth of fruit, per g dry: its nitrogen comes out of the plant. */
export declare const fruitGrowing: Process;
/**
 * Nitrate taken up by a crop, per g N: demand x M(nitrate) x the share not met by ammonium.
 * Strong cations go with it (`crop.cations`, e eq per mol N), so that it gives 1 - e eq of alkalinity per mol N
 * back, about 0.1; the oxygen freed in its reduction goes to air by the leaves.
 */
export declare const nitrateUptake: Process;
/**
 * Ammonium taken up by a crop, per g N: demand x M(TAN) x its largest share. With the strong cations that go with it
 * (`crop.cations`, e eq per mol N) it takes 1 + e eq of alkalinity per mol N.
 */
export declare const tanUptake: Process;
/**
 * Calcium taken up by a crop, per mol: so much per mol of nitrogen that it takes up x M(calcium). It stands for part of
 * the strong cations that go with the nitrogen, so alkalinity is the same with it and without.
 */
export declare const calciumUptake: Process;
//# sourceMappingURL=crops.d.ts.map
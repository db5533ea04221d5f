import type { Values } from '../library/values.js';
/** What follows from the composition of the water of one vessel. */
export interface WaterChemistry {
    readonly pH: number;
    /** Un-ionised ammonia, mg N/L. */
    readonly ammonia: number;
    /** Dissolved carbon dioxide, mol m-3. */
    readonly carbonDioxide: number;
    /** Saturation index of calcite, log10 of calcium x carbonate over its solubility; NaN without either. */
    readonly saturationIndex: number;
}
/** Amounts, volumes (m3), temperatures (degC) and ionic strengths (mol L-1) of the vessels of a system at one moment. */
export interface Waters {
    readonly y: Float64Array;
    readonly volume: ArrayLike<number>;
    readonly temperature: ArrayLike<number>;
    readonly ionic: ArrayLike<number>;
}
/**
 * pH, un-ionised ammonia, carbon dioxide and saturation index of a vessel, NaN where its water has no pH in 0-14.
 * Formulas: chemistry/acid-base.ts.
 */
export declare function waterChemistry(values: Values, waters: Waters, vessel: number): WaterChemistry;
/** As `waterChemistry`, for many moments: the last constants of each vessel are kept. */
export declare function openWaterChemistry(values: Values): (waters: Waters, vessel: number) => WaterChemistry;
/** Opens the ionic strength of the water of a vessel, mol L-1, by the amounts in y and its volume, m3. */
export declare function openVesselIons(values: Values): (y: Float64Array, volume: number, vessel: number) => number;
//# sourceMappingURL=water-chemistry.d.ts.map
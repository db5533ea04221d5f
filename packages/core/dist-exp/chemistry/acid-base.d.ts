import type { Values } from '../library/values.js';
/**
 * Equilibrium constants at one temperature and ionic strength, in mol m-3: `k1` and `k2` of carbonic acid, `ammonium`;
 * ion product of `water` and solubility product of `calcite`, mol2 m-6. They hold for the activity of the hydrogen ion,
 * which is what pH is, and for concentrations of all else; `proton` is the concentration of hydrogen ions over their
 * activity.
 */
export interface AcidBaseConstants {
    readonly k1: number;
    readonly k2: number;
    readonly ammonium: number;
    readonly water: number;
    readonly proton: number;
    readonly calcite: number;
}
/** Activity of the hydrogen ion, mol m-3, at a pH. */
export declare function hydrogenAt(pH: number): number;
/** pKa of ammonium, Emerson et al. 1975. */
export declare function ammoniumPk(values: Values, temperature: number): number;
/**
 * Constants of carbonic acid, ammonium, water and calcite at degC.
 * @param ionic ionic strength, mol L-1; 0: the constants themselves, without activities
 */
export declare function acidBaseConstants(values: Values, temperature: number, ionic?: number): AcidBaseConstants;
/**
 * Dissolved CO2 in equilibrium with air, mol m-3, at degC. Plummer & Busenberg 1982 (Henry).
 * @param share CO2 in the air, mol per mol; absent: that of open air (`gas.carbon-dioxide-air`)
 * @param pressure of the air, atm
 */
export declare function carbonDioxideSaturation(values: Values, temperature: number, share?: number, pressure?: number): number;
/** CO2 in air over dissolved CO2 in water at rest with it, both by volume (Henry's constant without a unit), at degC. */
export declare function carbonDioxideInAir(values: Values, temperature: number): number;
/**
 * Activity of the hydrogen ion, mol m-3, of water of given alkalinity (eq m-3), inorganic carbon and TAN (mol m-3).
 * Alkalinity falls as h rises, so the root is unique; Newton in ln h inside a shrinking bracket.
 * @param guess where to start, such as the last root
 * @returns NaN when an input is not finite or no root lies in pH 0-14.
 */
export declare function hydrogenIon(alkalinity: number, carbon: number, ammonia: number, k: AcidBaseConstants, guess: number): number;
/** Number of values that `speciate` writes. */
export declare const SPECIATION = 16;
/**
 * pH, un-ionised ammonia (g N m-3), carbon dioxide (mol m-3) and saturation of water (carbonate over the solubility of
 * calcite, m3 mol-1), and their partials by TAN (g N m-3), alkalinity and carbon, by the implicit function theorem.
 * Fills out[o ..]: the four, then four rows in their order of partials by (TAN, alkalinity, carbon).
 * @param h the hydrogen ion of this water, from `hydrogenIon`
 */
export declare function speciate(tan: number, carbon: number, h: number, k: AcidBaseConstants, molarNitrogen: number, out: Float64Array, o: number): void;
/**
 * Inorganic carbon, mol m-3, of water with a measured alkalinity (eq m-3), pH, TAN (g N m-3) at degC.
 * @param ionic ionic strength, mol L-1
 * @returns a negative number when no carbon content gives that pH (the alkalinity is too low for it).
 */
export declare function carbonFromPh(values: Values, alkalinity: number, pH: number, tan: number, temperature: number, ionic?: number): number;
/**
 * As `hydrogenIon`, from a guess that is near the root: plain Newton with one division for each fraction. Where
 * it does not close within a few passes, `hydrogenIon` answers. The root is unique, so both find the same.
 */
export declare function hydrogenNear(alkalinity: number, carbon: number, ammonia: number, k: AcidBaseConstants, guess: number): number;
//# sourceMappingURL=acid-base.d.ts.map
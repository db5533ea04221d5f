import type { Values } from '../library/values.js';
/**
 * Concentrations that say how strong the ions of a water are: g m-3 of nitrogen and chloride, alkalinity eq m-3,
 * calcium mol m-3.
 */
export interface IonContent {
    readonly tan: number;
    readonly nitrite: number;
    readonly nitrate: number;
    readonly chloride: number;
    readonly alkalinity: number;
    readonly calcium: number;
}
/**
 * Opens the ionic strength of a water, mol L-1, by what is known of it: ammonium, nitrite, nitrate, chloride and
 * alkalinity with one charge, calcium with two, and the strong cations less strong anions that are not known, whose
 * charge is that of the others: potassium, sodium and the like as ions of one charge, and so magnesium and sulphate
 * too, which makes it 5-15 % low where there is much of them.
 */
export declare function openIonicStrength(values: Values): (water: IonContent) => number;
/** Activity coefficients of ions of `one` and of `two` charges. */
export interface Activities {
    readonly one: number;
    readonly two: number;
}
/**
 * Activity coefficients by the equation of Davies (1962): log g = -A z^2 (sqrt I / (1 + sqrt I) - 0.3 I), with A by the
 * permittivity of water at its temperature.
 * @param temperature degC
 * @param ionic ionic strength, mol L-1
 */
export declare function davies(values: Values, temperature: number, ionic: number): Activities;
//# sourceMappingURL=ions.d.ts.map
import type { Values } from '../library/values.js';
/**
 * Oxygen in fresh water at saturation, g m-3, at degC under a pressure of the air, atm. Benson & Krause 1980/84; APHA
 * 4500-O; valid 0-40 degC, 0.5-1.1 atm. Air over water is moist, so at half the pressure is a little less than half.
 */
export declare function oxygenSaturation(values: Values, temperature: number, pressure?: number): number;
/**
 * Share of the transfer of an open surface that rising air still gives, which fills up as it rises (plug flow):
 * (1 - e^-n)/n, 1 where n is 0.
 * @param n transfer over what the air can carry away: units of transfer
 */
export declare function carriedShare(n: number): number;
//# sourceMappingURL=gases.d.ts.map
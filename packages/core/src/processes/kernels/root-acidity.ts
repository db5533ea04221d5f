import type { i32 } from '../../base/whole.js';
import { hydrogenAt } from '../../chemistry/acid-base.js';
import type { Values } from '../../library/values.js';
import { above, aboveSlope } from './rate-terms.js';

/**
 * What pH does to roots. Above a pH growth falls, by 1 / (1 + s (pH - p)), as less iron and phosphorus is to be had
 * (Anderson et al. 2017); in acid water by hydrogen ions, h, themselves: 1 / (1 + s (pH - p) + h/H) in all (Gillespie and
 * others 2020, 2021). Ammonium is taken up less in acid water, as 1 / (1 + h/H'), and nitrate in its place (tomato at
 * pH 4.5 and 5.5).
 */

/** [pH up to which growth is full, what each further pH takes, 1 / H], H in mol m-3. */
export function acidityCoefficients(values: Values): readonly number[] {
  return [
    values.value('crop.ph-high'),
    values.value('crop.ph-slope'),
    1 / hydrogenAt(values.value('crop.ph-half')),
  ];
}

/** 1 / H' of ammonium, m3 mol-1. */
export function ammoniumAcidity(values: Values): number {
  return 1 / hydrogenAt(values.value('crop.tan-ph-half'));
}

/** Share of growth that water of a pH, with h mol m-3 of hydrogen ions, leaves; its three coefficients begin at k[o]. */
export function leftByAcidity(pH: number, h: number, k: ArrayLike<number>, o: i32): number {
  return 1 / (1 + k[o + 1] * above(pH - k[o]) + k[o + 2] * h);
}

/** d(leftByAcidity)/d(pH), where `left` is leftByAcidity: h falls by ln 10 h. */
export function leftByAciditySlope(
  pH: number,
  h: number,
  k: ArrayLike<number>,
  o: i32,
  left: number,
): number {
  return (Math.LN10 * k[o + 2] * h - k[o + 1] * aboveSlope(pH - k[o])) * left * left;
}

/** Share of its ammonium uptake that water with h mol m-3 of hydrogen ions leaves a crop, `acidity` being 1 / H'. */
export function ammoniumLeft(h: number, acidity: number): number {
  return 1 / (1 + acidity * h);
}

/** d(ammoniumLeft)/d(pH), where `left` is ammoniumLeft: x = (1 - left) / left falls by ln 10 x. */
export function ammoniumLeftSlope(left: number): number {
  return Math.LN10 * (1 - left) * left;
}

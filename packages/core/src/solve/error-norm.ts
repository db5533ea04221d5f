import type { Tolerance } from './contract.js';

/** Throws RangeError unless every tolerance is a finite number above 0 and there is one for each state. */
export function checkTolerance(tolerance: Tolerance, states: number): void {
  if (!(tolerance.relative > 0 && tolerance.relative < Infinity)) {
    throw new RangeError(`relative tolerance must be above 0, got ${String(tolerance.relative)}`);
  }
  if (tolerance.absolute.length !== states) {
    throw new RangeError(
      `${String(states)} absolute tolerances expected, got ${String(tolerance.absolute.length)}`,
    );
  }
  tolerance.absolute.forEach((value, i) => {
    if (!(value > 0 && value < Infinity)) {
      throw new RangeError(`absolute tolerance ${String(i)} must be above 0, got ${String(value)}`);
    }
  });
}

/**
 * Root mean square of v weighted by absolute + relative · max(|y|, |other|) of each state: 1 is exactly at
 * the tolerance. Source [R]: Hairer, Norsett & Wanner, Solving ODEs I, section II.4.
 */
export function errorNorm(
  v: Float64Array,
  y: Float64Array,
  other: Float64Array,
  tolerance: Tolerance,
): number {
  const { relative, absolute } = tolerance;
  const size = v.length;
  let sum = 0;
  for (let i = 0; i < size; i++) {
    const weighted = v[i] / (absolute[i] + relative * Math.max(Math.abs(y[i]), Math.abs(other[i])));
    sum += weighted * weighted;
  }
  return size === 0 ? 0 : Math.sqrt(sum / size);
}

/** Index of the state with the largest weighted entry of v, the first not a number before all; -1 if none. */
export function worstState(v: Float64Array, y: Float64Array, tolerance: Tolerance): number {
  let worst = -1;
  let largest = -1;
  for (let i = 0; i < v.length; i++) {
    const weighted = Math.abs(v[i]) / (tolerance.absolute[i] + tolerance.relative * Math.abs(y[i]));
    if (!Number.isFinite(weighted)) return i;
    if (weighted > largest) {
      largest = weighted;
      worst = i;
    }
  }
  return worst;
}

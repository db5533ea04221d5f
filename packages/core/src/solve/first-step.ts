import type { Tolerance } from './contract.js';
import { errorNorm } from './error-norm.js';

/** Weighted error at which the first step aims; small, because it is a guess. */
const AIM = 0.01;

/**
 * First step from y, y' and y'': with the time scale τ = |y'|/|y''| the error of an order-4 estimate is
 * taken as |y'| τ (h/τ)⁴ in the weighted norm and set to 0.01; a step may not change y by more than its own
 * size unless y is within tolerance of 0. After the starting rule of Hairer, Norsett & Wanner, Solving
 * ODEs I, section II.4 [R], with τ in place of a unit of time.
 */
export function firstStep(
  y: Float64Array,
  slope: Float64Array,
  bend: Float64Array,
  tolerance: Tolerance,
  span: number,
): number {
  const size = errorNorm(y, y, y, tolerance);
  const speed = errorNorm(slope, y, y, tolerance);
  const turn = errorNorm(bend, y, y, tolerance);
  let step = span;
  if (turn > 0) {
    const scale = speed / turn;
    step = speed > 0 ? scale * Math.pow(AIM / (speed * scale), 0.25) : Math.sqrt((2 * AIM) / turn);
  }
  if (size > 1 && speed > 0) step = Math.min(step, size / speed);
  return Math.min(step, span);
}

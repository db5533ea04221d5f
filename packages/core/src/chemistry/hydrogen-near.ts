import { hydrogenIon, type AcidBaseConstants } from './acid-base.js';

/** Passes from a guess before the bracketed search takes over. */
const PASSES = 5;
/** Newton is quadratic: after a relative step below this the next root is exact to rounding. */
const CLOSE = 1e-8;
/** A step above this share of h is not near. */
const FAR = 0.5;

/**
 * As `hydrogenIon`, from a guess that is near the root: plain Newton with one division for each fraction. Where
 * it does not close within a few passes, `hydrogenIon` answers. The root is unique, so both find the same.
 */
export function hydrogenNear(
  alkalinity: number,
  carbon: number,
  ammonia: number,
  k: AcidBaseConstants,
  guess: number,
): number {
  const { k1, k2, ammonium, water } = k;
  const carbonate = k1 * k2;
  const bound = ammonia * ammonium;
  let h = guess;
  for (let pass = 0; pass < PASSES; pass++) {
    const perSum = 1 / (h * h + k1 * h + carbonate);
    const perBase = 1 / (ammonium + h);
    const perH = 1 / h;
    const excess =
      carbon * (k1 * h + 2 * carbonate) * perSum + bound * perBase + water * perH - h - alkalinity;
    const fall =
      carbon * k1 * (h * h + 4 * k2 * h + carbonate) * perSum * perSum +
      bound * perBase * perBase +
      water * perH * perH +
      1;
    const step = excess / fall;
    const share = Math.abs(step * perH);
    if (!(share < FAR)) break;
    h += step;
    if (share < CLOSE) return h;
  }
  return hydrogenIon(alkalinity, carbon, ammonia, k, guess);
}

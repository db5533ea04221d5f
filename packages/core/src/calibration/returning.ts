import { exp, log } from '../base/elementary.js';
import { normalCdf } from '../base/normal.js';

/** A reading on the scale of its kit's error: between `low` and `high`, either of which may be open. */
export interface ScaledReading {
  /** d. */
  readonly time: number;
  readonly low: number;
  readonly high: number;
}

/** A level that wanders and slowly returns to its middle: G. E. Uhlenbeck and L. S. Ornstein, Phys. Rev. 36, 1930. */
export interface Returning {
  /** Where it returns to. */
  readonly middle: number;
  /** d in which a distance falls to 1/e. */
  readonly memory: number;
  /** Standard deviation about the middle, far apart. */
  readonly spread: number;
}

/** What is known of such a level. */
export interface Known {
  readonly level: number;
  readonly variance: number;
}

/** What readings tell of a level. */
export interface Followed {
  /** After the last of them. */
  readonly known: Known;
  readonly time: number;
  readonly likelihood: number;
  /** For each reading the share of belief that it is sound, 0..1. */
  readonly sound: readonly number[];
  /** What was known after each reading. */
  readonly after: readonly Known[];
}

const root2pi = Math.sqrt(2 * Math.PI);
const density = (z: number): number => (Number.isFinite(z) ? exp((-z * z) / 2) / root2pi : 0);

/** Share of readings that are spoilt and how much wider they spread: as `log.outlier-share` and `log.outlier-spread`. */
export interface Spoiling {
  readonly share: number;
  readonly spread: number;
}

/** The middle and variance of a normal that is cut to an interval, and how much of it lies there. */
function cut(low: number, high: number, mean: number, deviation: number) {
  const a = (low - mean) / deviation;
  const b = (high - mean) / deviation;
  // Mirrored into the lower tail, where small shares are exact.
  const mass = a + b > 0 ? normalCdf(-a) - normalCdf(-b) : normalCdf(b) - normalCdf(a);
  if (!(mass > 1e-12)) {
    const near = Number.isFinite(a) && (a > 0 || !Number.isFinite(b)) ? low : high;
    return { mass: Math.max(mass, 1e-300), mean: near, variance: 0 };
  }
  const [fa, fb] = [density(a), density(b)];
  const shift = (fa - fb) / mass;
  const ends = (Number.isFinite(a) ? a * fa : 0) - (Number.isFinite(b) ? b * fb : 0);
  const variance = Math.max(0, 1 + ends / mass - shift * shift);
  return { mass, mean: mean + shift * deviation, variance: variance * deviation * deviation };
}

/** How a level is expected some days on. */
export function goneOn(
  { level, variance }: Known,
  days: number,
  { middle, memory, spread }: Returning,
): Known {
  const kept = exp(-Math.max(0, days) / memory);
  return {
    level: middle + (level - middle) * kept,
    variance: variance * kept * kept + spread * spread * (1 - kept * kept),
  };
}

/**
 * Follows a level through readings in their order: a Kalman filter whose readings are intervals (moments of the normal
 * that is cut to them), with error 1, and of which a share is spoilt.
 */
export function follow(readings: readonly ScaledReading[], by: Returning, spoiling: Spoiling): Followed {
  let known: Known = { level: by.middle, variance: by.spread * by.spread };
  let time = readings[0]?.time ?? 0;
  let likelihood = 0;
  const sound: number[] = [];
  const after: Known[] = [];
  for (const { time: at, low, high } of readings) {
    known = goneOn(known, at - time, by);
    time = at;
    const whole = known.variance + 1;
    const deviation = Math.sqrt(whole);
    const half = Number.isFinite(high - low) ? Math.max(0, 0.005 - (high - low) / 2) : 0;
    const seen = cut(low - half, high + half, known.level, deviation);
    const wide = Math.sqrt(known.variance + spoiling.spread * spoiling.spread);
    const loose = cut(low - half, high + half, known.level, wide);
    const all = (1 - spoiling.share) * seen.mass + spoiling.share * loose.mass;
    likelihood += log(all);
    const belief = ((1 - spoiling.share) * seen.mass) / all;
    sound.push(belief);
    const gain = known.variance / whole;
    const level = known.level + gain * (seen.mean - known.level);
    const variance = known.variance - gain * gain * (whole - seen.variance);
    // Moments of the mixture: the reading is sound, or tells next to nothing.
    const mean = belief * level + (1 - belief) * known.level;
    const apart = belief * (1 - belief) * (level - known.level) * (level - known.level);
    known = { level: mean, variance: belief * variance + (1 - belief) * known.variance + apart };
    after.push(known);
  }
  return { known, time, likelihood, sound, after };
}

/** Memories, d, and spreads, in errors of the kit, among which the likeliest is taken: coarse, as few readings tell more. */
const returningMemories = [5, 20, 80, 400] as const;
const spreads = [0.5, 1, 2, 4, 8, 16] as const;

/** The memory of a level that hardly returns, d. */
export const longMemory = [400] as const;

/** Readings that tell how a level wanders: the latest. */
const latest = 100;

/** The likeliest memory and spread for readings about a middle; the shorter and smaller where they are alike. */
export function likeliest(
  readings: readonly ScaledReading[],
  middle: number,
  spoiling: Spoiling,
  memories: readonly number[] = returningMemories,
): Returning {
  const late = readings.slice(-latest);
  let best: Returning = { middle, memory: memories[0], spread: 1 };
  let most = -Infinity;
  for (const memory of memories) {
    for (const spread of spreads) {
      const by = { middle, memory, spread };
      const { likelihood } = follow(late, by, spoiling);
      if (likelihood > most + 1e-9) [best, most] = [by, likelihood];
    }
  }
  return best;
}

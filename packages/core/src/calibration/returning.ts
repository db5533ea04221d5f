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
}

/** Sudden changes of a level, such as a water change that nobody wrote down, or a filter that begins to work. */
export interface Jumps {
  /** How often, 1/d. */
  readonly rate: number;
  /** The largest chance of one between two readings, however far apart. */
  readonly most: number;
  /** Standard deviation of its size. */
  readonly size: number;
}

/** What a level may do beside wandering about one middle. */
export interface Liberties {
  /** What it returns to after each reading; absent: its one middle. */
  readonly middles?: readonly number[];
  /** Standard deviation of the first level about its middle, beside its spread; absent: none. */
  readonly begin?: number;
  readonly jumps?: Jumps;
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

/** The interval of a reading: one of no width is told from its neighbours by a hundredth of an error. */
function boundsOf({ low, high }: ScaledReading): readonly [number, number] {
  const half = Number.isFinite(high - low) ? Math.max(0, 0.005 - (high - low) / 2) : 0;
  return [low - half, high + half];
}

/** What a sound reading makes of what was known, and how likely it was. */
function sensed(known: Known, low: number, high: number): { readonly mass: number; readonly known: Known } {
  const whole = known.variance + 1;
  const seen = cut(low, high, known.level, Math.sqrt(whole));
  const gain = known.variance / whole;
  return {
    mass: seen.mass,
    known: {
      level: known.level + gain * (seen.mean - known.level),
      variance: known.variance - gain * gain * (whole - seen.variance),
    },
  };
}

/** Moments of a mixture of two beliefs, the first with a share. */
function mixed(first: Known, second: Known, share: number): Known {
  const level = share * first.level + (1 - share) * second.level;
  const apart = share * (1 - share) * (first.level - second.level) * (first.level - second.level);
  return { level, variance: share * first.variance + (1 - share) * second.variance + apart };
}

/**
 * Follows a level through readings in their order: a Kalman filter whose readings are intervals (moments of the normal
 * that is cut to them), with error 1, and of which a share is spoilt. Where the level may jump, a reading far off is one
 * or the other, and the next one tells: without that, a filter takes every reading after a jump for spoilt.
 */
export function follow(
  readings: readonly ScaledReading[],
  by: Returning,
  spoiling: Spoiling,
  { middles, begin = 0, jumps }: Liberties = {},
): Followed {
  let known: Known = { level: middles?.[0] ?? by.middle, variance: by.spread * by.spread + begin * begin };
  let time = readings[0]?.time ?? 0;
  let likelihood = 0;
  const sound: number[] = [];
  for (const [i, reading] of readings.entries()) {
    const days = reading.time - time;
    const middle = middles?.[Math.max(0, i - 1)] ?? by.middle;
    known = goneOn(known, days, { ...by, middle });
    time = reading.time;
    const [low, high] = boundsOf(reading);
    const seen = sensed(known, low, high);
    const wide = Math.sqrt(known.variance + spoiling.spread * spoiling.spread);
    const loose = cut(low, high, known.level, wide);
    const calm = (1 - spoiling.share) * seen.mass + spoiling.share * loose.mass;
    const belief = ((1 - spoiling.share) * seen.mass) / calm;
    // The reading is sound, or tells next to nothing.
    const stayed = mixed(seen.known, known, belief);
    if (jumps === undefined) {
      likelihood += log(calm);
      sound.push(belief);
      known = stayed;
      continue;
    }
    const chance = Math.min(jumps.most, 1 - exp(-jumps.rate * Math.max(0, days)));
    const fresh = sensed({ ...known, variance: known.variance + jumps.size * jumps.size }, low, high);
    const all = (1 - chance) * calm + chance * fresh.mass;
    const jumped = (chance * fresh.mass) / all;
    likelihood += log(all);
    sound.push(jumped + (1 - jumped) * belief);
    known = mixed(fresh.known, stayed, jumped);
  }
  return { known, time, likelihood, sound };
}

/** Memories, d, and spreads, in errors of the kit, among which the likeliest is taken: coarse, as few readings tell more. */
const returningMemories = [5, 20, 80, 400] as const;
const spreads = [0.5, 1, 2, 4, 8, 16] as const;

/** Readings that tell how a level wanders: the latest. */
const latest = 100;

/** The likeliest memory and spread for readings about a middle; the shorter and smaller where they are alike. */
export function likeliest(readings: readonly ScaledReading[], middle: number, spoiling: Spoiling): Returning {
  const late = readings.slice(-latest);
  let best: Returning = { middle, memory: returningMemories[0], spread: 1 };
  let most = -Infinity;
  for (const memory of returningMemories) {
    for (const spread of spreads) {
      const by = { middle, memory, spread };
      const { likelihood } = follow(late, by, spoiling);
      if (likelihood > most + 1e-9) [best, most] = [by, likelihood];
    }
  }
  return best;
}

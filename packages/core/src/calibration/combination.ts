import { normalCdf, normalQuantile } from '../base/normal.js';
import { pow } from '../base/elementary.js';
import {
  type Guesses,
  guessNames,
  habitNames,
  type HabitName,
  type Habits,
  type HabitTried,
} from './guesses.js';

/** Days ahead up to which forecasts are judged together; what lies further is judged by the last. */
export const horizons = [7, 14, 28] as const;

/** Which of `horizons` some days ahead belong to. */
export function horizonOf(ahead: number): number {
  const place = horizons.findIndex((horizon) => ahead < horizon);
  return place < 0 ? horizons.length - 1 : place;
}

/** A forecast of the past and what came of it, on the scale of the kit. */
export interface Rehearsed {
  /** When the reading was taken, d. */
  readonly time: number;
  /** Which of `horizons`. */
  readonly horizon: number;
  /** By how far what the kit would have shown by each way lay off what it showed. */
  readonly errors: Guesses;
  /** By how far the reading lay off the combination of then. */
  readonly combined: number;
}

/** What is known of how good forecasts of one quantity in one place are. */
export interface TrackRecord {
  /** Forecasts of the past, each with the model of then. */
  readonly rehearsed: readonly Rehearsed[];
  /** What habit was worth, from many more days. */
  readonly tried: readonly HabitTried[];
}

/** What each way of foretelling counts for, 0..1; in all 1. */
export type Weights = Guesses;

/**
 * Error of the model and of the model that returns over that of the last reading, believed before any is known, and the
 * rehearsed readings that this is worth: a model must first show that it can. Judgment [P].
 */
const before = { model: 2, returning: 1.3, worth: 6 } as const;

/** Readings that the common mean error of the habits is worth beside that of each. Judgment [P]. */
const common = 2;

/** How sharply the better way is preferred: the power of its mean error. Judgment [P]. */
const sharpness = 5;

/** d in which the weight of a past forecast falls to half. Judgment [P]. */
const forgotten = 90;

/** Weight of the forecasts of a neighbouring horizon, and of one beyond it. Judgment [P]. */
const neighbour = [1, 0.25, 0.05] as const;

/** Least mean error that is believed, in errors of the kit. Judgment [P]. */
const floor = 0.15;

const weigh = (time: number, apart: number, now: number): number =>
  pow(0.5, Math.max(0, now - time) / forgotten) * neighbour[Math.abs(apart)];

const adding = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0);

/** Weights of the ways at one horizon, by the skill they have shown up to now. */
export function weightsBy({ rehearsed, tried }: TrackRecord, horizon: number, now: number): Weights {
  const dense = tried.map(({ time, ahead }) => weigh(time, horizonOf(ahead) - horizon, now));
  const sparse = rehearsed.map((each) => weigh(each.time, each.horizon - horizon, now));
  const total = adding(dense);
  const habit = (name: HabitName): number =>
    adding(tried.map(({ errors }, i) => dense[i] * Math.abs(errors[name])));
  const sums = habitNames.map(habit);
  const usual = total > 0 ? adding(sums) / (habitNames.length * total) : 1;
  const habits = sums.map((sum) => (sum + common * usual) / (total + common) + floor);
  const ofLast = adding(rehearsed.map(({ errors }, i) => sparse[i] * (Math.abs(errors.last) + floor)));
  const model = (name: 'model' | 'returning'): number => {
    const own = adding(rehearsed.map(({ errors }, i) => sparse[i] * (Math.abs(errors[name]) + floor)));
    const last = habits[habitNames.indexOf('last')];
    return (last * (own + before.worth * before[name] * last)) / (ofLast + before.worth * last);
  };
  const errors = [model('model'), model('returning'), ...habits];
  const raw = errors.map((error) => pow(error, -sharpness));
  const sum = adding(raw);
  return Object.fromEntries(guessNames.map((name, k) => [name, raw[k] / sum])) as Weights;
}

/** Halvings of the interval that a middle lies in: to a thousandth of a kit's error. */
const halvings = 24;

/**
 * The combination of guesses: the median of the mixture of normals about them in their weights. Beside their mean it
 * follows the ways that agree, and an outlying one of little weight hardly moves it.
 * @param deviation of each about its guess, on the scale of the kit
 */
export function combined(guesses: Guesses, weights: Weights, deviation: number): number {
  const values = guessNames.map((name) => guesses[name]);
  let [low, high] = [Math.min(...values), Math.max(...values)];
  for (let i = 0; i < halvings; i++) {
    const middle = (low + high) / 2;
    const below = adding(
      guessNames.map((name) => weights[name] * normalCdf((middle - guesses[name]) / deviation)),
    );
    if (below < 0.5) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Deviation of the guesses in a mixture, by the half width of the 50 % band: at least a fifth of a kit's error. */
export const mixtureDeviation = ({ of50 }: HalfWidths): number => Math.max(0.2, of50 / normalQuantile(0.75));

/** Half widths of the bands of 50 % and 90 % of what a kit shows, on its scale. */
export interface HalfWidths {
  readonly of50: number;
  readonly of90: number;
}

/** How many forecasts the width that is expected is worth beside those that were made. Judgment [P]. */
const pseudo = 6;

/** What a try by habit counts beside a rehearsed forecast in bands: tries from neighbouring days are nearly the same. Judgment [P]. */
const tryWorth = 0.1;

/** The weighted median of the errors of habits: the error of their combination, nearly. */
function middleError(errors: Habits, weights: Weights): number {
  const sorted = habitNames
    .map((name) => ({ error: errors[name], weight: weights[name] }))
    .sort((a, b) => a.error - b.error);
  const half = adding(sorted.map(({ weight }) => weight)) / 2;
  let sum = 0;
  for (const { error, weight } of sorted) {
    sum += weight;
    if (sum >= half) return error;
  }
  return sorted[sorted.length - 1].error;
}

/**
 * Half widths of the bands by the errors that the combination has shown (split conformal prediction: V. Vovk, A. Gammerman,
 * G. Shafer, Algorithmic Learning in a Random World, 2005; their weights from skill's), and its habits in their shares,
 * beside those that the wandering of the level lets expect while few are known.
 */
export function halfWidths(
  { rehearsed, tried }: TrackRecord,
  weights: Weights,
  horizon: number,
  now: number,
  expected: number,
): HalfWidths {
  const habit = adding(habitNames.map((name) => weights[name]));
  const known = [
    ...rehearsed.map((each) => ({
      error: Math.abs(each.combined),
      weight: weigh(each.time, each.horizon - horizon, now),
    })),
    ...tried.map(({ time, ahead, plain }) => ({
      error: Math.abs(middleError(plain, weights)),
      weight: tryWorth * habit * weigh(time, horizonOf(ahead) - horizon, now),
    })),
  ];
  const assumed = Array.from({ length: pseudo }, (_, i) => ({
    error: expected * normalQuantile(0.5 + (i + 0.5) / (2 * pseudo)),
    weight: 1,
  }));
  const all = [...known, ...assumed].sort((a, b) => a.error - b.error);
  const total = adding(all.map(({ weight }) => weight));
  const at = (share: number): number => {
    // One more than there are: the next error may be larger than all.
    const sought = Math.min(share * (total + 1), total);
    let sum = 0;
    for (const { error, weight } of all) {
      sum += weight;
      if (sum >= sought - 1e-12) return error;
    }
    return all[all.length - 1].error;
  };
  return { of50: at(0.5), of90: at(0.9) };
}

/**
 * How much of a reading lies in a band: of the forecast's mass between the bounds of the reading, the share that lies
 * between those of the band, 0..1. Where forecasts are right this is the band's share in the mean, however coarse the
 * steps of the kit are (a reading that merely meets a band does so more often).
 */
export function shareWithin(
  low: number,
  high: number,
  middle: number,
  halfWidth: number,
  turns: number,
): number {
  const deviation = Math.max(halfWidth / turns, 1e-9);
  const between = (from: number, to: number): number => {
    const a = (from - middle) / deviation;
    const b = (to - middle) / deviation;
    if (!(b > a)) return 0;
    return a + b > 0 ? normalCdf(-a) - normalCdf(-b) : normalCdf(b) - normalCdf(a);
  };
  // A reading of no width is told from its neighbours by a hundredth of an error.
  const half = Number.isFinite(high - low) ? Math.max(0, 0.005 - (high - low) / 2) : 0;
  const [from, to] = [low - half, high + half];
  const whole = between(from, to);
  if (!(whole > 1e-12)) return 0;
  return between(Math.max(from, middle - halfWidth), Math.min(to, middle + halfWidth)) / whole;
}

import { normalCdf, normalQuantile } from '../base/normal.js';
import { pow } from '../base/elementary.js';
import { type Guesses, type GuessName, guessNames } from './guesses.js';

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
  /** By how far the reading lay off each way. */
  readonly errors: Guesses;
  /** By how far it lay off the combination of then. */
  readonly combined: number;
}

export type Weights = Guesses;

/**
 * Weights before anything is known, and the readings that they are worth: the model alone must first show that it can.
 * Judgment [P].
 */
const before: Weights = { model: 0.04, returning: 0.24, level: 0.24, last: 0.24, month: 0.24 };
const worth = 3;

/** How sharply the better way is preferred: the power of its mean error. Judgment [P]. */
const sharpness = 4;

/** d in which the weight of a past forecast falls to half. Judgment [P]. */
const forgotten = 150;

/** Weight of the forecasts of a neighbouring horizon. Judgment [P]. */
const neighbour = 0.3;

const weigh = (past: Rehearsed, horizon: number, now: number): number =>
  pow(0.5, Math.max(0, now - past.time) / forgotten) * (past.horizon === horizon ? 1 : neighbour);

const adding = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0);

/** Weights of the ways at one horizon, by the skill they have shown up to now. */
export function weightsBy(history: readonly Rehearsed[], horizon: number, now: number): Weights {
  const weights = history.map((each) => weigh(each, horizon, now));
  const total = adding(weights);
  const errors = guessNames.map((name) =>
    adding(history.map((each, i) => weights[i] * Math.abs(each.errors[name]))),
  );
  const usual = total > 0 ? Math.min(...errors) / total : 1;
  const raw = guessNames.map((name, k) => {
    // A reading never lies on a forecast for long: half an error of the kit is the least that is believed.
    const mean = (errors[k] + worth * usual) / (total + worth) + 0.25;
    return before[name] * pow(mean, -sharpness * (total / (total + worth)));
  });
  const sum = adding(raw);
  return Object.fromEntries(guessNames.map((name, k) => [name, raw[k] / sum])) as Record<GuessName, number>;
}

/** The combination of guesses. */
export function combined(guesses: Guesses, weights: Weights): number {
  return adding(guessNames.map((name) => weights[name] * guesses[name]));
}

/** Half widths of the bands of 50 % and 90 % of what a kit shows, on its scale. */
export interface HalfWidths {
  readonly of50: number;
  readonly of90: number;
}

/** How many forecasts the width that is expected is worth beside those that were made. Judgment [P]. */
const pseudo = 12;

/**
 * Half widths of the bands by the errors that the combination has shown (split conformal prediction: V. Vovk, A. Gammerman,
 * G. Shafer, Algorithmic Learning in a Random World, 2005; their weights from skill's), beside those that the wandering of
 * the level lets expect while few are known.
 */
export function halfWidths(
  history: readonly Rehearsed[],
  horizon: number,
  now: number,
  expected: number,
): HalfWidths {
  const known = history.map((each) => ({
    error: Math.abs(each.combined),
    weight: weigh(each, horizon, now),
  }));
  const told = adding(known.map(({ weight }) => weight));
  // The more was shown, the less what was expected counts.
  const each = pseudo / (1 + told / pseudo) / pseudo;
  const assumed = Array.from({ length: pseudo }, (_, i) => ({
    error: expected * normalQuantile(0.5 + (i + 0.5) / (2 * pseudo)),
    weight: each,
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

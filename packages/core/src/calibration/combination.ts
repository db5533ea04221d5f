import { normalCdf, normalQuantile } from '../base/normal.js';
import { exp, log, pow } from '../base/elementary.js';
import { eachWay, type Guessed, type Guesses, guessNames, medianOf, type SeriesGuess } from './guesses.js';

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
  /** Days ahead that it was, from the first morning of its forecast. */
  readonly ahead: number;
  /** By how far what the kit would have shown by each way lay off what it showed. */
  readonly errors: Guesses;
  /** By how far the reading lay off the combination of then. */
  readonly combined: number;
  /** Standard deviation that was expected of it then. */
  readonly deviation: number;
}

/** What each way of foretelling counts for, 0..1; in all 1. */
export type Weights = Guesses;

/** d in which the weight of a past forecast falls to half. Judgment [P]. */
const forgotten = 120;

/** Weight of the forecasts of a neighbouring horizon, and of one beyond it. Judgment [P]. */
const neighbour = [1, 0.5, 0.2] as const;

const kept = ({ time }: Rehearsed, now: number): number => pow(0.5, Math.max(0, now - time) / forgotten);

const weigh = (each: Rehearsed, of: number, now: number): number =>
  kept(each, now) * neighbour[Math.abs(each.horizon - of)];

const adding = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0);

/**
 * How rehearsed errors count: by the likelihood of errors that are Laplace's, as of half as many independent readings, since
 * forecasts of one day err alike; beside `worth` readings by which all ways erred by 1; `floor` is the least error that is
 * believed, in errors of the kit. Judgment [P].
 */
const record = { counts: 0.5, worth: 6, floor: 0.15 } as const;

/**
 * Logarithms of likelihood that the model's change is given for nothing, since the model was fitted to these very readings,
 * and the most that how ways went from one reading to the next may count against each other: it tells of a few days ahead
 * only. Judgment [P]; chosen in view of the unkind twins of odd seeds and of logs by the model itself, among others that came
 * to the same within 2 %.
 */
const evidenceOf = { given: { habit: 0, half: 0.5, model: 1 }, most: 3 } as const;

/**
 * Weights of the ways at one horizon: by how well each went from reading to reading (`evidence`), and by how it did in
 * forecasts that were rehearsed.
 */
export function weightsBy(
  evidence: SeriesGuess['evidence'],
  rehearsed: readonly Rehearsed[],
  horizon: number,
  now: number,
): Weights {
  const { counts, worth, floor } = record;
  const weights = rehearsed.map((each) => weigh(each, horizon, now));
  const erred = eachWay(
    (name) => worth + adding(rehearsed.map(({ errors }, i) => weights[i] * (Math.abs(errors[name]) + floor))),
  );
  const known = counts * (worth + adding(weights));
  const logs = eachWay((name) => {
    const more = evidence[name] - evidence.habit - evidenceOf.given[name];
    const counted = name === 'habit' ? 0 : Math.max(-evidenceOf.most, Math.min(evidenceOf.most, more));
    return counted - known * log(erred[name] / erred.habit);
  });
  const most = Math.max(...guessNames.map((name) => logs[name]));
  const raw = eachWay((name) => exp(logs[name] - most));
  const sum = adding(guessNames.map((name) => raw[name]));
  return eachWay((name) => raw[name] / sum);
}

/**
 * The combination of guesses: the median of the mixture of normals about them in their weights, each of its own deviation.
 * Beside their mean it follows the ways that agree, and an outlying one of little weight hardly moves it.
 */
export const combined = ({ guesses, deviations }: Guessed, weights: Weights): number =>
  medianOf(
    guessNames.map((name) => ({ value: guesses[name], deviation: deviations[name], weight: weights[name] })),
  );

/** Standard deviation of a reading about the combination, by what each way expects and by how far they lie apart. */
export function deviationOf({ guesses, deviations }: Guessed, weights: Weights): number {
  const mean = adding(guessNames.map((name) => weights[name] * guesses[name]));
  const squares = guessNames.map((name) => {
    const apart = guesses[name] - mean;
    return weights[name] * (deviations[name] * deviations[name] + apart * apart);
  });
  return Math.sqrt(adding(squares));
}

/** Half widths of the bands of 50 % and 90 % of what a kit shows, on its scale. */
interface HalfWidths {
  readonly of50: number;
  readonly of90: number;
}

/**
 * What bands rest on beside forecasts that were made: so many as are worth this, `wider` than their deviation, as no level
 * wanders just as it is taken to. Judgment [P]; of the
 * unkind twins of odd seeds 87 % then lie in the bands of 90 %, of logs by the model 94 %.
 */
const bands = { beforehand: 10, wider: 1.2 } as const;

/** Days ahead at which past errors are looked at; between them bands go over evenly by the logarithm. Judgment [P]. */
const leads = [0.5, 3.5, 10.5, 21] as const;

/** A quantile of past errors, and how much it rests on. */
interface Quantile {
  readonly error: number;
  readonly weight: number;
}

/** Errors over what was expected of them, the smallest first, and what they weigh together. */
interface Spread {
  readonly errors: readonly Quantile[];
  readonly weight: number;
}

/**
 * Errors over what was expected of them, of forecasts so many days ahead: one twice as far ahead, or half as far, counts a
 * quarter. Judgment [P]: by a half, the many far ones hide how near ones err.
 */
function spreadAt(rehearsed: readonly Rehearsed[], ahead: number, now: number): Spread {
  const known = rehearsed.map((each) => {
    const apart = (1 + Math.min(ahead, each.ahead)) / (1 + Math.max(ahead, each.ahead));
    return {
      error: Math.abs(each.combined) / each.deviation,
      weight: record.counts * kept(each, now) * apart * apart,
    };
  });
  const assumed = Array.from({ length: bands.beforehand }, (_, i) => ({
    error: bands.wider * normalQuantile(0.5 + (i + 0.5) / (2 * bands.beforehand)),
    weight: 1,
  }));
  const errors = [...known, ...assumed].sort((a, b) => a.error - b.error);
  return { errors, weight: adding(errors.map((each) => each.weight)) };
}

/** The error that a share of a spread stays under. */
function quantileOf({ errors, weight }: Spread, share: number): Quantile {
  // One more than there are: the next error may be larger than all.
  const sought = Math.min(share * (weight + 1), weight);
  let sum = 0;
  for (const each of errors) {
    sum += each.weight;
    if (sum >= sought - 1e-12) return { error: each.error, weight };
  }
  return { error: errors[errors.length - 1].error, weight };
}

/**
 * Quantiles that do not fall with the days ahead: those that do are pooled, by what each rests on (pool adjacent violators: M.
 * Ayer and others, Annals of Mathematical Statistics 26, 1955).
 */
function rising(quantiles: readonly Quantile[]): readonly number[] {
  const pools: { readonly error: number; readonly weight: number; readonly count: number }[] = [];
  for (const { error, weight } of quantiles) {
    let pool = { error, weight, count: 1 };
    for (
      let before = pools.at(-1);
      before !== undefined && before.error > pool.error;
      before = pools.at(-1)
    ) {
      const both = before.weight + pool.weight;
      const mean = (before.error * before.weight + pool.error * pool.weight) / both;
      pool = { error: mean, weight: both, count: before.count + pool.count };
      pools.pop();
    }
    pools.push(pool);
  }
  return pools.flatMap(({ error, count }) => Array.from({ length: count }, () => error));
}

/** Half widths of the bands of a forecast so many days ahead, of an expected deviation, with half of the kit's step there. */
export type Widths = (ahead: number, deviation: number, step: number) => HalfWidths;

/**
 * Half widths of the bands by the errors that the combination has shown over the deviations that were expected of it (split
 * conformal prediction by normalised errors: V. Vovk, A. Gammerman, G. Shafer, Algorithmic Learning in a Random World,
 * 2005; H. Papadopoulos, Inductive Conformal Prediction, 2008), beside what a normal error would be while few are known. They
 * widen with the days ahead as past errors did, beyond what was expected; no narrower than the kit's step.
 */
export function widthsBy(rehearsed: readonly Rehearsed[], now: number): Widths {
  const spreads = leads.map((lead) => spreadAt(rehearsed, lead, now));
  const risingTo = (share: number): readonly number[] =>
    rising(spreads.map((spread) => quantileOf(spread, share)));
  const [half, nine] = [risingTo(0.5), risingTo(0.9)];
  return (ahead, deviation, step) => {
    const after = leads.findIndex((lead) => lead > ahead);
    const at = (quantiles: readonly number[]): number => {
      if (after < 0) return quantiles[leads.length - 1];
      if (after === 0) return quantiles[0];
      const [from, to, here] = [leads[after - 1], leads[after], ahead].map((days) => log(1 + days));
      const share = (here - from) / (to - from);
      return quantiles[after - 1] * (1 - share) + quantiles[after] * share;
    };
    return { of50: deviation * at(half), of90: Math.max(step, deviation * at(nine)) };
  };
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

// Reads numbers as: verdict on a fit
import { group, median } from 'd3-array';
import type { FittedNumber, SpoiltReading } from './diagnostics.js';
import { seriesKey } from './correlated.js';
import type { FitProblem } from './fit-problem.js';
import { kitScale } from './kit-scale.js';
import { distanceOf } from './residual-distance.js';
import type { Minimum } from './search.js';

/** Why a fit is not to be trusted. Figures are in errors of the kit where nothing else is said. */
export type FitFault =
  | {
      readonly kind: 'spoilt';
      /** Share of the readings that is spoilt, 0..1. */
      readonly share: number;
      /** Share that is believed, 0..1. */
      readonly allowed: number;
    }
  | {
      readonly kind: 'start' | 'today' | 'scatter';
      readonly reads: string;
      readonly vessel: string;
      /** Median distance, in standard errors of the readings. */
      readonly off: number;
    }
  | {
      readonly kind: 'end-of-range';
      readonly name: string;
      /** As fitted, in the unit of the number. */
      readonly value: number;
      /** The end of its range, in the same unit. */
      readonly end: number;
    }
  | {
      readonly kind: 'searches';
      /** Log posterior between the best and the next. */
      readonly apart: number;
    };

/** Bounds of a sound fit: judgment, held by the unkind twins [P]. */
const bounds = {
  /** Spoilt readings over the share that is believed. */
  spoilt: 3,
  /** Median distance of the first, and of the last readings. */
  off: 4,
  /** Median size of all residuals of a quantity. */
  scatter: 4,
  /** Standard deviates of its prior. */
  range: 2.6,
  /** Log posterior between searches, and a share of the number of readings that may come on top. */
  searches: { least: 5, share: 0.03 },
  /** d of first and of last readings. */
  first: 14,
  last: 28,
} as const;

interface Residual {
  readonly time: number;
  readonly off: number;
}

function* seriesFaults(problem: FitProblem, predicted: ArrayLike<number>): Generator<FitFault> {
  const indexed = problem.observations.map((observation, i) => ({ observation, i }));
  const until = problem.days - problem.ahead;
  for (const own of group(indexed, ({ observation }) => seriesKey(observation)).values()) {
    const { reads, vessel } = own[0].observation.reading;
    const scale = kitScale(problem.errorOf(reads));
    const all = own.map(({ observation: { reading, time }, i }): Residual => ({
      time,
      off: distanceOf(scale.to(reading.low), scale.to(reading.high), scale.to(predicted[i])),
    }));
    const begin = Math.min(...all.map(({ time }) => time));
    const parts = [
      { kind: 'start', of: all.filter(({ time }) => time <= begin + bounds.first), least: 2 },
      { kind: 'today', of: all.filter(({ time }) => time >= until - bounds.last), least: 3 },
    ] as const;
    for (const { kind, of, least } of parts) {
      const off = of.length < least ? 0 : (median(of, (each) => each.off) ?? 0);
      if (Math.abs(off) > bounds.off) yield { kind, reads, vessel, off };
    }
    const scatter = all.length < 8 ? 0 : (median(all, ({ off }) => Math.abs(off)) ?? 0);
    if (scatter > bounds.scatter) yield { kind: 'scatter', reads, vessel, off: scatter };
  }
}

function* rangeFaults(numbers: readonly FittedNumber[]): Generator<FitFault> {
  for (const { name, prior, value, deviate } of numbers) {
    const soft = prior.distribution === 'normal' || prior.distribution === 'lognormal';
    const end = deviate < 0 ? prior.low : prior.high;
    // No water leaves unseen: that end of the discharge is what is believed, not a bound that was run into.
    if (end === 0) continue;
    const atEnd = soft
      ? Math.abs(deviate) > bounds.range
      : Math.abs(value - end) < 0.02 * (prior.high - prior.low);
    if (atEnd) yield { kind: 'end-of-range', name, value, end };
  }
}

/**
 * Why a fit failed, by name; none where it is to be trusted as far as can be told from the log itself.
 * @param predicted what the fit has at each observation
 */
export function faultsOfFit(
  problem: FitProblem,
  predicted: ArrayLike<number>,
  numbers: readonly FittedNumber[],
  spoilt: readonly SpoiltReading[],
  minima: readonly Minimum[],
): readonly FitFault[] {
  const faults: FitFault[] = [];
  const believed = problem.parameters.value('log.outlier-share');
  const share = spoilt.length / problem.observations.length;
  if (spoilt.length >= 5 && share > bounds.spoilt * believed)
    faults.push({ kind: 'spoilt', share, allowed: bounds.spoilt * believed });
  faults.push(...seriesFaults(problem, predicted), ...rangeFaults(numbers));
  const values = minima.map(({ value }) => value);
  const apart = Math.max(...values) - Math.min(...values);
  const allowed = bounds.searches.least + bounds.searches.share * problem.observations.length;
  if (apart > allowed) faults.push({ kind: 'searches', apart });
  return faults;
}

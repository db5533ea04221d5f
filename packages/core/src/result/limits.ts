import type { Model } from '../model/model.js';
import type { SampledRun, Run } from '../run/run.js';
import { closeRun } from './close-run.js';
import { judgeMeans, meansOf, type Verdict } from './judge.js';
import { harms, limitReader, type LimitCheck, type PlacedLimit } from './limit-check.js';
import type { Series } from './series.js';
import { limitsForCrops } from './limits-for-crops.js';
import { limitsForFish } from './limits-for-fish.js';
import { limitsForRelease } from './limits-for-release.js';
import { limitsOfDomain } from './limits-of-domain.js';
import { limitsForSystem } from './limits-for-system.js';

/**
 * How a run stood to one limit at one place, all that a phrase about it needs: what (`quantity`, `direction`, `value`,
 * `unit`, `averaging`, for `whom`, by which source), where, and the verdict (first when, how long, how far).
 */
export interface LimitResult extends PlacedLimit, Verdict {
  /** Whether the averaging time is as long as the output step: a shorter one is resolved after events alone, elsewhere the values at the output times are compared as they are. */
  readonly resolved: boolean;
}

/**
 * How far within a limit at the worst, as a share of the limit (of one unit where the limit is 0); below 0 beyond it,
 * NaN where it was not judged.
 */
export function marginOf({ worst = Number.NaN, value, direction }: LimitResult): number {
  const sign = direction === 'above' ? -1 : 1;
  return (sign * (worst - value)) / (value === 0 ? 1 : Math.abs(value));
}

/** Order of limits that were passed: by the harm of it, then by how long. For sorting. */
export function worstFirst(
  a: Pick<LimitResult, 'harm' | 'total'>,
  b: Pick<LimitResult, 'harm' | 'total'>,
): number {
  return harms.indexOf(a.harm) - harms.indexOf(b.harm) || b.total - a.total;
}

function checksOf(run: SampledRun, series?: readonly Series[]): readonly LimitCheck[] {
  const reader = limitReader(run, series);
  return [
    ...limitsForFish(reader),
    ...limitsForCrops(reader),
    ...limitsForSystem(reader),
    ...limitsForRelease(reader),
    ...limitsOfDomain(reader),
  ];
}

/** Every limit that runs of a model are held against, in the order of `limitsOf`. */
export function limitNames(model: Model): readonly PlacedLimit[] {
  const course = { model, samples: [] };
  return checksOf(course).map(({ limit, place }) => ({ ...limit, place }));
}

/**
 * Holds a run against every limit of the tables for its species, crops and water. Values between output
 * times are seen for three days after events (`between` of the run): elsewhere an averaging time shorter than the output
 * step is not resolved. A run shorter than an averaging time is not judged by it. A design aid: fish welfare, food safety
 * and discharge stay with local codes and licensed practice.
 * @param series all series of the run at its output times, where they are at hand
 */
export function limitsOf(run: Run, series?: readonly Series[]): readonly LimitResult[] {
  const step = run.model.scenario.every;
  return limitCourses(run, series).map(({ limit, place, times, means, matters }) => ({
    ...limit,
    place,
    resolved: limit.averaging === 0 || limit.averaging >= step,
    ...judgeMeans(times, means, limit, matters),
  }));
}

/** What is held against a limit: the means that it judges at each time that the run was looked at. */
export interface LimitCourse extends Omit<LimitCheck, 'values'> {
  /** d. */
  readonly times: readonly number[];
  /** Means over its averaging time, or the values as they are where samples are too far apart for it. */
  readonly means: Float64Array;
}

/** The courses that `limitsOf` judges, in its order. */
export function limitCourses(run: Run, series?: readonly Series[]): readonly LimitCourse[] {
  const close = closeRun(run);
  const times = close.samples.map(({ time }) => time);
  return checksOf(close, close === run ? series : undefined).map(({ limit, place, values, matters }) => ({
    ...{ limit, place, times, matters },
    means: meansOf(times, values, limit.averaging, run.model.scenario.every),
  }));
}

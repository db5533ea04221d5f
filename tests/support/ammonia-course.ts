import { limitsOf, type LimitResult } from '@leat/core';
import { waterState } from '../../packages/core/src/model/layout.js';
import { acuteCriterion, chronicCriterion } from '../../packages/core/src/result/limits-for-release.js';
import type { Run } from '../../packages/core/src/run/run.js';
import { doneRun } from './run-of.js';
import { scenarioOf, startOf, stillWater, vessel } from './scenario-builder.js';

const pH = 8;
const temperature = 20;

/** How long, how often told (d), and which criterion the course is given as a multiple of. */
interface CourseOptions {
  readonly days: number;
  readonly every: number;
  readonly of: 'acute' | 'chronic';
}

/** Results of the ammonia criteria on a course, by quantity. */
export type Judged = Readonly<
  Record<'ammonia-acute-ratio' | 'ammonia-chronic-ratio' | 'ammonia-4-day-ratio', LimitResult>
>;

/** A vessel of still water at pH 8 and 20 degC, so strongly buffered that ammonia does not move its pH. */
function still(days: number, every: number): Run {
  const sump = vessel('sump', 1);
  const start = [startOf(sump, { water: stillWater(1e5, pH) })];
  return doneRun(scenarioOf([sump], { start, days, every }));
}

/**
 * Holds a made course of total ammonia, told as a multiple of a criterion of US EPA 2013, against the limits on
 * water let out.
 */
export function judgedCourse(course: (day: number) => number, { days, every, of }: CourseOptions): Judged {
  const run = still(days, every);
  const { parameters } = run.model;
  const criterion =
    of === 'acute'
      ? acuteCriterion(parameters, pH, temperature, false)
      : chronicCriterion(parameters, pH, temperature);
  const samples = run.samples.map((sample) => {
    const y = sample.y.slice();
    y[waterState(0, 'tan')] = course(sample.time) * criterion * sample.volume[0];
    return { ...sample, y };
  });
  const results = limitsOf({ ...run, samples });
  const find = (quantity: string): LimitResult => {
    const found = results.find((result) => result.quantity === quantity);
    if (found === undefined) throw new Error(`no limit on ${quantity}`);
    return found;
  };
  return {
    'ammonia-acute-ratio': find('ammonia-acute-ratio'),
    'ammonia-chronic-ratio': find('ammonia-chronic-ratio'),
    'ammonia-4-day-ratio': find('ammonia-4-day-ratio'),
  };
}

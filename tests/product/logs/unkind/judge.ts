import { backtest, type BacktestScore, fit, type Fit } from '@leat/core';
import { openFitProblem } from '../../../../packages/core/src/calibration/fit-problem.js';
import { kitScale } from '../../../../packages/core/src/log/kit-scale.js';
import { simulateUnkind } from './simulator.js';
import { unkindTwin, type UnkindTwin } from './twin.js';

/** What a forecast was worth in one cell: a quantity at a distance. */
export interface Cell {
  readonly reads: string;
  readonly horizon: number;
  readonly count: number;
  /** Error over that of the better simple guess. */
  readonly ratio: number;
  /** The same of the model alone. */
  readonly model: number;
  readonly in90: number;
}

/** How far off the fit truly is with a quantity, and whether it says that it is to be trusted. */
export interface Trusted {
  readonly reads: string;
  /**
   * Median distance to what truly stood in the tank, over the whole log or its last 28 days, the larger: in doublings (of
   * the acid for pH), counted on the scale of the kit, which is flat near nothing.
   */
  readonly off: number;
  readonly trusted: boolean | undefined;
}

/** What came of one twin. */
export interface Judged {
  readonly seed: number;
  readonly readings: number;
  readonly cells: readonly Cell[];
  readonly verdict: Fit['verdict'];
  /** Names of what speaks against the fit. */
  readonly faults: readonly string[];
  readonly courses: readonly Trusted[];
  /** Error of the model alone in ammonia, nitrite and nitrate, over that of the better simple guess. */
  readonly model: number;
}

/** Geometric mean of positive numbers; a forecast that never errs counts as a hundredth of the guess. */
export function geometricMean(ratios: readonly number[]): number {
  return Math.exp(ratios.reduce((sum, ratio) => sum + Math.log(Math.max(ratio, 0.01)), 0) / ratios.length);
}

/** Cells in which enough was judged, and in which the better simple guess ever errs. */
function cellsOf(scores: readonly BacktestScore[]): readonly Cell[] {
  return scores.flatMap((score): Cell[] => {
    const guess = Math.min(score.last, score.month);
    if (score.count < 4 || !(guess > 0)) return [];
    const { reads, horizon, count, in90 } = score;
    return [{ reads, horizon, count, in90, ratio: score.forecast / guess, model: score.model / guess }];
  });
}

const usual = { free: [] } as const;

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[(sorted.length - 1) >> 1] + sorted[sorted.length >> 1]) / 2;
};

/** Every quantity of a fit beside the truth. */
function coursesOf({ seed, truth, system, log }: UnkindTwin, found: Fit): readonly Trusted[] {
  const course = simulateUnkind(seed, truth);
  const problem = openFitProblem({ ...usual, system, log, numbers: found.numbers });
  const days = course.length;
  return (['ammonia', 'nitrite', 'nitrate', 'pH'] as const).flatMap((reads): Trusted[] => {
    const told = found.trust.find((each) => each.reads === reads);
    const sought = course.map((_, time) => ({ reads, vessel: 0, time }));
    const fitted = problem.predict(
      found.numbers.map(({ deviate }) => deviate),
      sought,
    );
    if (told === undefined || fitted === undefined) return [];
    const error = problem.errorOf(reads);
    const scale = kitScale(error);
    const doubling = reads === 'pH' ? Math.log10(2) / error.deviation(0) : scale.to(2e6) - scale.to(1e6);
    const apart = course.map((day, i) => Math.abs(scale.to(day[reads]) - scale.to(fitted[i])) / doubling);
    const off = Math.max(median(apart), median(apart.slice(days - 28)));
    return [{ reads, off, trusted: told.trusted }];
  });
}

/** Backtests the log of a twin, and fits to all of it. */
export function judgedTwin(seed: number): Judged {
  const twin = unkindTwin(seed);
  const { system, log } = twin;
  const cells = cellsOf(backtest({ ...usual, system, log, step: 14, warmUp: 42, fits: 3 }).scores);
  const found: Fit = fit({ ...usual, system, log, furtherStarts: 1, pastFits: 1 });
  const nitrogen = cells.filter(({ reads }) => reads !== 'pH');
  return {
    ...{ seed, cells },
    readings: log.readings.filter(({ reads }) => reads !== 'temperature').length,
    verdict: found.verdict,
    courses: coursesOf(twin, found),
    faults: [...new Set(found.faults.map(({ kind }) => kind))],
    model: geometricMean(nitrogen.map(({ model }) => model)),
  };
}

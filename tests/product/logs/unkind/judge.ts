import { backtest, type BacktestScore, fit, type Fit } from '@leat/core';
import { unkindTwin } from './twin.js';

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

/** What came of one twin. */
export interface Judged {
  readonly seed: number;
  readonly readings: number;
  readonly cells: readonly Cell[];
  /** Names of what speaks against the fit. */
  readonly faults: readonly string[];
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

/** Backtests the log of a twin, and fits to all of it. */
export function judgedTwin(seed: number): Judged {
  const { system, log } = unkindTwin(seed);
  const cells = cellsOf(backtest({ ...usual, system, log, step: 14, warmUp: 42, fits: 3 }).scores);
  const found: Fit = fit({ ...usual, system, log, furtherStarts: 1, pastFits: 1 });
  const nitrogen = cells.filter(({ reads }) => reads !== 'pH');
  return {
    ...{ seed, cells },
    readings: log.readings.filter(({ reads }) => reads !== 'temperature').length,
    faults: [...new Set(found.faults.map(({ kind }) => kind))],
    model: geometricMean(nitrogen.map(({ model }) => model)),
  };
}

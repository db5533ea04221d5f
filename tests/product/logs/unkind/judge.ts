import { backtest, type BacktestScore } from '@leat/core';
import { unkindTwin } from './twin.js';

/** What a forecast was worth in one cell: a quantity at a distance. */
export interface Cell {
  readonly reads: string;
  readonly horizon: number;
  readonly count: number;
  /** Error over that of the better simple guess; undefined where that never errs. */
  readonly ratio: number | undefined;
  /** The same of the model alone. */
  readonly model: number | undefined;
  readonly in90: number;
}

const over = (error: number, { last, month }: BacktestScore): number | undefined =>
  Math.min(last, month) > 0 ? error / Math.min(last, month) : undefined;

/** Cells of the backtest of a twin. */
export function judged(seed: number): readonly Cell[] {
  const { system, log } = unkindTwin(seed);
  const { scores } = backtest({ system, log, free: [], step: 14, warmUp: 42, fits: 3, tolerance: 1e-2 });
  return scores
    .filter(({ count }) => count >= 4)
    .map((score) => ({
      reads: score.reads,
      horizon: score.horizon,
      count: score.count,
      ratio: over(score.forecast, score),
      model: over(score.model, score),
      in90: score.in90,
    }));
}

/** Geometric mean of positive numbers; a forecast that never errs counts as a hundredth of the guess. */
export function geometricMean(ratios: readonly (number | undefined)[]): number {
  const known = ratios.filter((ratio) => ratio !== undefined);
  return Math.exp(known.reduce((sum, ratio) => sum + Math.log(Math.max(ratio, 0.01)), 0) / known.length);
}

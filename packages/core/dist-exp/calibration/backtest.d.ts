import { type FitRequest } from './fit-problem.js';
import type { Measurable } from '../scenario/scenario.js';
/** How a backtest is made. */
export interface BacktestRequest extends FitRequest {
    /** Days from one forecast to the next. */
    readonly step: number;
    /** Days of log before the first forecast. */
    readonly warmUp: number;
    /** Draws of the fitted numbers in each forecast. */
    readonly members: number;
    /** Of the draws: a whole number from 0. */
    readonly seed: number;
}
/** How forecasts of a quantity did at one distance. */
export interface BacktestScore {
    readonly reads: Measurable;
    readonly vessel: string;
    /** Of the errors; '' for pH. */
    readonly unit: string;
    /** Readings up to so many days ahead, from the day after the horizon before. */
    readonly horizon: number;
    /** Readings judged. */
    readonly count: number;
    /** Mean absolute error of the model (middle of its draws), in the internal unit. */
    readonly model: number;
    /** The same of the forecast that the last reading stays. */
    readonly last: number;
    /** The same of the mean of the last 28 days. */
    readonly month: number;
    /** Share of the readings whose interval meets the band of 50 %, 0..1. */
    readonly in50: number;
    /** The same of the band of 90 %. */
    readonly in90: number;
}
/** A backtest; `failed` counts the draws whose run broke off. */
export interface Backtest {
    /** Last date known to each forecast. */
    readonly origins: readonly string[];
    readonly failed: number;
    readonly scores: readonly BacktestScore[];
    readonly notes: readonly string[];
}
/**
 * What forecasts from this log would have been worth: fits to what was known at a day, forecasts the days after with the
 * feed and temperature that were known then, holds the readings against it, and steps on.
 * @throws InputError as openFitProblem does, and where the log is too short for one forecast
 */
export declare function backtest(request: BacktestRequest): Backtest;
//# sourceMappingURL=backtest.d.ts.map
import { Matrix } from 'ml-matrix';
import type { Measurable } from '../scenario/scenario.js';
import type { ReadingError } from './reading-loss.js';
import { type SavedFit } from './fit-file.js';
import { type FitProblem, type FitRequest, type Sought } from './fit-problem.js';
import { type FitSystem } from './fitted-system.js';
/** How a forecast is made. */
export interface ForecastRequest extends Omit<FitRequest, 'free' | 'numbers'> {
    readonly fit: SavedFit;
    /** Days ahead, whole. */
    readonly days: number;
    /** Draws of the numbers; the first is the fit itself. */
    readonly members: number;
    /** Of the draws: a whole number from 0. */
    readonly seed: number;
    /** The system as it is to be from tomorrow on; absent: as it is. */
    readonly whatIf?: FitSystem;
}
/** Lines of the bands of what is there and of what a kit would show, for each of `bandShares`, in the internal unit. */
interface DrawnBands {
    readonly truth: readonly number[];
    readonly reading: readonly number[];
}
/**
 * The bands of a quantity at one time: the same for a forecast and for the backtest that judges it.
 * @param values one a draw
 * @param error of the kit, drawn once for each of them
 */
export declare function bandsAt(values: readonly number[], error: ReadingError, random: () => number): DrawnBands;
/** A quantity in the days ahead. */
export interface ForecastCourse {
    readonly reads: Measurable;
    readonly vessel: string;
    /** Of the values; '' for pH. */
    readonly unit: string;
    /**
     * For each day the values below which 5, 25, 50, 75 and 95 % of the draws lie: what is there, in the internal unit.
     */
    readonly truth: readonly (readonly number[])[];
    /** The same of what a kit would show, its error drawn too. */
    readonly reading: readonly (readonly number[])[];
}
/** What is to be expected. */
export interface Forecast {
    /** First morning of the forecast, the day after the last date of the log. */
    readonly from: string;
    readonly dates: readonly string[];
    /** Draws that the bands are made of. */
    readonly members: number;
    /** Draws whose run broke off; they are not in the bands. */
    readonly failed: number;
    readonly courses: readonly ForecastCourse[];
    readonly notes: readonly string[];
}
/** Deviates drawn from a fit; the first is the fit itself. */
export declare function drawsOf(middle: readonly number[], covariance: Matrix, members: number, random: () => number): readonly Float64Array[];
/** Values looked for in the days ahead, at deviates; undefined where a run breaks off. */
export declare function aheadAt(problem: FitProblem, at: Float64Array, sought: readonly Sought[], whatIf: FitSystem | undefined, tolerance: number): Float64Array | undefined;
/**
 * What a fitted system will do: from the state at the end of the log, for each draw of the fitted numbers by its own
 * run through the log, with the log's late feed and temperature going on, or with a what-if laid over it. The notes say
 * where the fit was made of another system, or of another log.
 * @throws InputError as openFitProblem does
 */
export declare function forecast(request: ForecastRequest): Forecast;
export {};
//# sourceMappingURL=forecast.d.ts.map
import type { Parameters } from '../library/parameters.js';
import type { Measurable } from '../scenario/scenario.js';
/** How a kit errs at a value: standard deviation of sound readings, share of spoilt ones, and their wider spread. */
export interface ReadingError {
    /** Standard deviation where `value` is truly there, in the unit of the value; above 0. */
    deviation(value: number): number;
    readonly outlierShare: number;
    /** Spread of spoilt readings over that of sound ones. */
    readonly outlierSpread: number;
}
/** What an observation costs at a prediction: minus log likelihood, its slope, and a curvature above 0. */
export interface Loss {
    readonly value: number;
    readonly slope: number;
    readonly curvature: number;
}
/**
 * The loss with its derivatives by the prediction, by central differences. Where the second derivative is not above
 * 0 (far out, where a reading counts as spoilt) the curvature is that of reweighted least squares, slope over distance.
 */
export declare function lossOf(low: number, high: number, predicted: number, error: ReadingError): Loss;
/** How readings of a quantity err, by the rows `log.*` of the tables or as the scenario gives them anew. */
export declare function readingError(parameters: Parameters, reads: Measurable): ReadingError;
//# sourceMappingURL=reading-loss.d.ts.map
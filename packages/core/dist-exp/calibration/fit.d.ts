import { type FitRequest } from './fit-problem.js';
import { type FitDiagnostics } from './diagnostics.js';
/** How the search is made. */
export interface FitSearch extends FitRequest {
    /** Where the search begins besides the middle of the priors; default 1. */
    readonly furtherStarts?: number;
    /** Seed of those starts; default 1. */
    readonly seed?: number;
}
/** One search. */
export interface FitStart {
    /** Minus log posterior, but for a constant. */
    readonly value: number;
    readonly converged: boolean;
    /** Runs' derivatives that were taken. */
    readonly steps: number;
}
/** What a fit was made of, so that it can be made again. */
export interface FitProvenance {
    readonly version: string;
    /** SHA-256 of the scenario as it was before the fit. */
    readonly scenario: string;
    /** SHA-256 of what was read of the log up to `until`. */
    readonly log: string;
    readonly from: string;
    readonly until: string;
    readonly free: readonly string[];
    readonly unloggedFeed: string;
    /** Searches made. */
    readonly starts: number;
    /** Of the places where searches begin. */
    readonly seed: number;
}
/** A system fitted to a log. */
export interface Fit extends FitDiagnostics {
    readonly title: string;
    readonly provenance: FitProvenance;
    /** How many readings the fit was made to. */
    readonly readings: number;
    readonly starts: readonly FitStart[];
    readonly notes: readonly string[];
}
/**
 * Fits a system to a log: the numbers with the highest posterior probability (ranges of the tables as priors, readings
 * as intervals of a kit that errs and is sometimes spoilt), with what the log tells of them.
 * @throws InputError as openFitProblem does; RangeError where the model breaks off at the middle of the priors
 */
export declare function fit(request: FitSearch): Fit;
//# sourceMappingURL=fit.d.ts.map
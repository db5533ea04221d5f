import type { RankCorrelation } from '../library/correlations.js';
import type { WaterLog } from '../log/water-log.js';
import type { Setting } from '../scenario/file/set-value.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Fit } from './fit.js';
import { type FittedValue } from './fitted-system.js';
import { type Prior } from './free-parameter.js';
/** What commands take from a fit file. */
export interface SavedFit {
    readonly title: string;
    readonly provenance: {
        readonly scenario: string;
        readonly log: string;
        readonly from: string;
        readonly until: string;
    };
    /**
     * What was fitted, with the prior it had: `deviate` tells where the value stands in that prior, in standard deviates,
     * `deviation` its standard error there.
     */
    readonly numbers: readonly (FittedValue & {
        readonly prior: Prior;
        readonly deviate: number;
        readonly deviation: number;
    })[];
    /** Of the deviates. */
    readonly covariance: readonly (readonly number[])[];
}
/** The text of a fit file: one JSON document, the same for the same fit, with a hash over all of it. */
export declare function fitText(fit: Fit): string;
/** Reads a fit file. Throws InputError where it is none, or is not as it was written. */
export declare function readFit(text: string, file: string): SavedFit;
/** What a fit is used with: the system as its file has it, the log as it now stands, and its last date that counts. */
interface FitUse {
    readonly scenario: Scenario;
    readonly log: WaterLog;
    readonly until: string;
}
/**
 * Why a saved fit may not be of what it is used with: made of another system file, of a log that has since changed or
 * gone on, or of readings after the last date that counts. One line each; none where all is as it was.
 */
export declare function fitDoubts({ provenance }: SavedFit, { scenario, log, until }: FitUse): readonly string[];
/**
 * The numbers of a fit as a table of the user's own (tab-separated), with what the log left of their ranges: normal and
 * lognormal numbers span 90 %, others become triangles of the same spread, within the bounds they had. Start values and
 * paths of the file are not in it.
 */
export declare function fittedTable({ numbers, provenance }: SavedFit): string;
/**
 * A fit as settings: paths of the file, and those of its numbers (with their ranges) that the file gives anew under
 * `parameters`, where a table would not reach them.
 * @param given ids that the file gives anew
 */
export declare function fittedSettings({ numbers }: SavedFit, given: ReadonlySet<string>): readonly Setting[];
/**
 * How the numbers of a fit vary together, as rank correlations: 6/pi asin(r/2) of a correlation r between normals
 * (Pearson 1907) [M]. Of the numbers in `fittedTable` alone, and where both are drawn.
 */
export declare function fittedCorrelations({ numbers, covariance }: SavedFit): readonly RankCorrelation[];
export {};
//# sourceMappingURL=fit-file.d.ts.map
import type { Model } from '../model/model.js';
import { type WaterComponent } from '../processes/components.js';
import type { SampledRun, Run, Sample } from '../run/run.js';
/** How the values of one series are read from the samples of a run. */
export interface SeriesSource {
    readonly name: string;
    readonly unit: string;
    /** Value at a sample and its index among the samples. */
    value(sample: Sample, index: number): number;
}
/** What the parts of all suspended solids are called; other components go by their own names. */
export declare const suspendedNames: Readonly<Partial<Record<WaterComponent, string>>>;
/** Series of every vessel: what is in its water, what follows from that, what sits on its surfaces. */
export declare function vesselSources(run: SampledRun): readonly SeriesSource[];
/** The course of one quantity at one place. */
export interface Series {
    /** `quantity@place`, such as `nitrate@sump`; the whole system is `@system`. */
    readonly name: string;
    readonly unit: string;
    /** One value for each output time of the run. */
    readonly values: Float64Array;
    /** Those times, d since the start. */
    readonly times: readonly number[];
    /** The same by the calendar: `2026-03-01`, or within a day `2026-03-01 06:00`. */
    dates(): readonly string[];
    /**
     * Value at a time, d, on the straight line between output times.
     * Throws RangeError outside the run.
     */
    at(time: number): number;
}
/** Names of every series of a run: vessels, cohorts, plantings, the whole system. */
export declare function seriesNames(run: Run): readonly string[];
/** Unit of every series that a run of a model will have, by name, in the order of `seriesNames`. */
export declare function seriesUnits(model: Model): ReadonlyMap<string, string>;
/** One series by its name. Throws InputError with the nearest name when there is none. */
export declare function seriesOf(run: Run, name: string): Series;
/** The last value of one series, in its unit. Throws InputError with the nearest name when there is none. */
export declare function lastValue(run: SampledRun, name: string): number;
/** Every series of a run, in the order of `seriesNames`. */
export declare function allSeries(run: SampledRun): readonly Series[];
//# sourceMappingURL=series.d.ts.map
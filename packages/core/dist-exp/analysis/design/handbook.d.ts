import type { TableRow } from '../../library/table-row.js';
import type { Model } from '../../model/model.js';
import type { Run } from '../../run/run.js';
/** What the handbook sizes a filter from; masses of ammonia and of the areal rate in the same form (N, or NH3). */
export interface FilterDemand {
    /** Feed given, g d-1. */
    readonly feed: number;
    /** Ammonia made per g of feed, g g-1: 0.03, or protein x 0.092 (Timmons & Ebeling). */
    readonly ammoniaPerFeed: number;
    /** Ammonia that goes with exchanged water and never reaches the filter, g d-1; absent: none. */
    readonly dilution?: number;
    /** What a m2 of grown-in surface removes, g d-1. */
    readonly arealRate: number;
    /** Surface of the media, m2 per m3 of bulk. */
    readonly specificSurface: number;
}
/** A filter by the handbook. */
export interface FilterSize {
    /** Ammonia to remove, g d-1. */
    readonly load: number;
    /** m2. */
    readonly surface: number;
    /** Of media in bulk, m3. */
    readonly volume: number;
}
/**
 * Sizes a filter as handbooks do: ammonia from feed, less dilution, over an areal rate, over a specific surface.
 * It knows no temperature, pH, oxygen or start-up but what the areal rate was taken at; it stands beside the
 * model's answer for comparison. FAO 589 Appendix 4; Miller, Florida A&M training slides.
 * Throws RangeError where a number is not finite, feed, ammonia or dilution is below 0, rate or surface is not above
 * 0, or dilution takes more than is made.
 */
export declare function handbookFilter(demand: FilterDemand): FilterSize;
/** One `value` that a handbook gives, in the unit of what is varied. */
export interface HandbookValue {
    readonly value: number;
    /** The published number that it rests on, with its source. */
    readonly rate: number;
    readonly rateUnit: string;
    readonly conditions: string;
    readonly source: string;
    readonly page: string;
    readonly mark: TableRow['mark'];
    /** Whether it is published for the temperature here (true where it names none). */
    readonly applies: boolean;
}
/** What handbooks say of a size: by areal rate for a filter, by feed per area for beds, by surface for a load. */
export interface Handbook {
    readonly rule: 'surface' | 'planted-area' | 'load';
    /** Feed on the day of most feed, g. */
    readonly feed: number;
    /** Protein in it, g. */
    readonly protein: number;
    /** TAN that comes of it by its protein, g N d-1. */
    readonly tanByProtein: number;
    /** TAN that comes of it by its mass, g N d-1. */
    readonly tanByFeed: number;
    /** m2 (or g d-1 of feed) for one of what is varied. */
    readonly perUnit: number;
    /** Mean of the water there, degC. */
    readonly temperature: number;
    readonly values: readonly HandbookValue[];
}
/** The two ends of what is varied, `from` and `to` in its unit, each as it makes the model. */
export interface SizeEnds {
    readonly from: number;
    readonly to: number;
    readonly atFrom: Model;
    readonly atTo: Model;
}
/**
 * Vessels whose surface for biofilm depends on what is varied, as indices: media, not the walls that come with a
 * larger vessel.
 */
export declare function surfacesVaried({ atFrom, atTo }: Pick<SizeEnds, 'atFrom' | 'atTo'>): readonly number[];
/**
 * What handbooks would give for what is varied, from the feed of the day of most feed: surface by areal rate where it
 * changes a surface for biofilm, planted area by feed per area, a load by the surface of filters. Undefined where no
 * handbook rule is known here (water, doses, volumes without media).
 * @param run at the answer, or wherever the search came nearest
 */
export declare function handbookOf(ends: SizeEnds, run: Run): Handbook | undefined;
//# sourceMappingURL=handbook.d.ts.map
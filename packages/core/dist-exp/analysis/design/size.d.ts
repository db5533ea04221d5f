import type { Trial } from './trial.js';
/** A search for the smallest or largest value of one quantity at which every condition holds. */
export interface SizeSearch {
    /** Lower end of the range that is searched, in the unit of what is varied. */
    readonly from: number;
    /** Upper end. */
    readonly to: number;
    readonly want: 'smallest' | 'largest';
    /** The answer is this close to a value that fails, as a share of it. */
    readonly within: number;
    /** Whether only whole numbers make sense. */
    readonly whole?: boolean;
    /** A value near which the answer is looked for first: no scan, and so nothing learnt of what lies far off. */
    readonly near?: number;
    /** Runs the value. */
    judge(value: number): Trial;
}
/** Values `from` one that is tried `to` another between which every trial holds. */
export interface SizeRange {
    readonly from: number;
    readonly to: number;
}
/**
 * What a search came to. `found`: fails before and holds from there on, to the other end or to where it fails again.
 * `at-the-end`: holds at the wanted end and fails further on. `not-monotone`: holds, fails and holds again; the value
 * is the first of them, refined.
 */
export interface SizeAnswer {
    readonly kind: 'found' | 'holds-everywhere' | 'at-the-end' | 'not-monotone' | 'holds-nowhere';
    /** The size, in the unit of what is varied; absent where none holds. */
    readonly value?: number;
    /** The nearest value tried that fails, on the side of the wanted end. */
    readonly fails?: number;
    /** The first value tried beyond the answer that fails. */
    readonly failsAgain?: number;
    /** Places of the conditions that fail there: what binds. */
    readonly binding: readonly number[];
    /** Where it holds, by the values tried; under the key that saved answers have. */
    readonly stretches: readonly SizeRange[];
    /** Every value tried, ascending. */
    readonly trials: readonly Trial[];
}
/**
 * Finds the smallest (or largest) value at which every condition holds: a scan of the whole range that shows
 * where conditions hold, then a bracketed search between a value that fails and one that holds, to `within`.
 * Between two neighbouring values of the scan nothing is known but what the search tries.
 * @throws RangeError where from is not below to, or within is not between 0 and 1
 */
export declare function findSize(search: SizeSearch): SizeAnswer;
//# sourceMappingURL=size.d.ts.map
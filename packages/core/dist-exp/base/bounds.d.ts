import { type Dimension } from './units.js';
/** A quantity in the internal unit of its dimension: more than 0 (`above`), or 0 or more; only temperatures go below. */
export interface QuantityBound {
    readonly kind: 'quantity';
    readonly dimension: Dimension;
    readonly above: boolean;
    /** The most that it may be, and why no more can be meant; absent: any. */
    readonly high?: number;
    readonly why?: string;
}
/** A share from 0 to 1, to below 1, or of any size. */
export interface ShareBound {
    readonly kind: 'share';
    readonly upTo: 'to-one' | 'below-one' | 'any';
}
/** A plain number, or a whole number of things (`count`), between two bounds that are allowed; `above`: not the lower. */
export interface NumberBound {
    readonly kind: 'number' | 'count';
    readonly above?: boolean;
    readonly low: number;
    readonly high: number;
}
/** What a number may be. */
export type Bound = QuantityBound | ShareBound | NumberBound;
/** A quantity of 0 or more (a temperature: any). */
export declare function fromZero(dimension: Dimension): QuantityBound;
/** A quantity of more than 0. */
export declare function aboveZero(dimension: Dimension): QuantityBound;
/** A quantity from 0 to `high`: more cannot be meant, for the reason `why`. */
export declare function upTo(dimension: Dimension, high: number, why: string): QuantityBound;
/** A share, up to 1 unless stated. */
export declare function shareBound(upTo?: ShareBound['upTo']): ShareBound;
/** A number from `low` to `high`. */
export declare function numberFrom(low: number, high: number): NumberBound;
/** A number of more than 0, up to `high`. */
export declare function numberAbove(high: number): NumberBound;
/** A whole number from `low` to `high`. */
export declare function countFrom(low: number, high: number): NumberBound;
/** The range of a share in words: `0 to 1`. */
export declare function shareRange({ upTo }: ShareBound): string;
/** What a number with this bound is, in its internal unit: `a number of m3, more than 0`. */
export declare function describeBound(bound: Bound): string;
/** What is wrong with a value that should be a number within a bound, as a fault tells it; undefined where nothing is. */
export declare function boundProblem(bound: Bound, value: unknown): string | undefined;
//# sourceMappingURL=bounds.d.ts.map
import { type MemberOutcome, type Outline } from './members.js';
import { type Spreads, type SpreadsState } from './spreads.js';
/** A `member`, by its number from 0, and what is to be said of it. */
export interface MemberNote {
    readonly member: number;
    readonly reason: string;
}
/** What an accumulator holds, as plain data, in one form whatever the order in which it came. */
export interface AccumulatorState {
    /** Members of the whole ensemble, those that are not in yet included. */
    readonly members: number;
    /** 1 for each member that is in. */
    readonly done: Uint8Array;
    readonly series: SpreadsState;
    /** For each limit two cells: when first passed, and how long. */
    readonly limits: SpreadsState;
    /** For each limit the members that could be judged. */
    readonly judged: Uint32Array;
    /** For each limit the members that passed it. */
    readonly passed: Uint32Array;
    /** For each measure, then each condition (its margin): one number a member, NaN where there is none. */
    readonly answers: readonly Float64Array[];
    /** For each condition and member: 1 where it holds. */
    readonly holds: readonly Uint8Array[];
    readonly failed: readonly MemberNote[];
    /** For each measure, then each condition: the first member without an answer. */
    readonly unanswered: readonly (MemberNote | null)[];
}
/** Gathers the members of an ensemble in memory that hardly grows with their number. */
export interface Accumulator {
    /** Puts a member in. Throws RangeError when it is in already. */
    add(member: number, outcome: MemberOutcome): void;
    /** Whether a member, by its number from 0, is in. */
    has(member: number): boolean;
    /** Members that are in, failed ones included. */
    size(): number;
    /** Adds what another accumulator of the same ensemble holds. Throws RangeError when both hold a member. */
    merge(other: AccumulatorState): void;
    /** Everything held. Arrays are not copied: write it out before the next `add`. */
    state(): AccumulatorState;
    readonly series: Spreads;
    readonly limits: Spreads;
}
/** An empty accumulator for so many `members` of what an outline names. */
export declare function openAccumulator(outline: Outline, members: number): Accumulator;
//# sourceMappingURL=accumulator.d.ts.map
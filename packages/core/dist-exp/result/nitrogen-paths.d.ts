import type { Run } from '../run/run.js';
/** So much went from one place to another. */
export interface Link {
    readonly from: string;
    readonly to: string;
    /** Above 0. */
    readonly amount: number;
}
/**
 * Takes out what only goes round: of every circle of links the smallest amount, from each of its links. What every
 * place receives less what it gives stays as it was.
 * @returns the links that are left, and all that was taken out, counted once for each circle
 */
export declare function removeCircles(links: readonly Link[]): {
    readonly links: readonly Link[];
    readonly circled: number;
};
/** A place that nitrogen came from, passed through, or ended in. */
export interface PathPlace {
    readonly name: string;
    /** `source` and `fate` carry the names of `fatesOf`; a `pool` is a form of nitrogen inside the system. */
    readonly kind: 'source' | 'pool' | 'fate';
}
/** So many grams of nitrogen (`amount`) went `from` one place (index) `to` another. */
export interface PathLink {
    readonly from: number;
    readonly to: number;
    readonly amount: number;
}
/** The ways of nitrogen through a system over a whole run, g N. */
export interface NitrogenPaths {
    readonly places: readonly PathPlace[];
    readonly links: readonly PathLink[];
    /** What only went round, such as from ammonia to biofilm and back; it is in no link. */
    readonly circled: number;
}
/**
 * The ways of nitrogen through the whole system from the first sample of a run to its last, g N: from its sources
 * (feed, source water, what the stores held) through its forms (fish, solids, ammonia, nitrite, nitrate, biofilm,
 * crops) to its fates, from the integrated extents and the postings. Where a process takes from several or
 * gives to several at once, each giver counts for each taker in proportion, except that nitrogen gas comes of nitrate
 * before anything else. Every pool gives what it receives, to
 * rounding. What went to and fro or round is taken out (`circled` says how much went round), so that
 * the links can be drawn from left to right.
 */
export declare function nitrogenPaths(run: Run): NitrogenPaths;
//# sourceMappingURL=nitrogen-paths.d.ts.map
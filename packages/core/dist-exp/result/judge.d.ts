/** Whether a window reaches from one time to another, but for rounding: the first full one is not missed by the last bit. */
export declare function fillsWindow(from: number, to: number, window: number): boolean;
/**
 * Mean over the window that ends at each time, of the straight lines through (time, value): exact for
 * them. NaN where the window reaches back past the first time. A window of 0 gives the values back.
 * @param times ascending
 * @param window same unit as the times, 0 or more
 */
export declare function runningMean(times: readonly number[], values: ArrayLike<number>, window: number): Float64Array;
/** Which way a limit is passed. */
export type Direction = 'above' | 'below';
/** How a course of values stood to a limit. */
export interface Verdict {
    /** Whether a full averaging window fell inside the run while it mattered. */
    readonly judged: boolean;
    readonly passed: boolean;
    /** When first passed, d; absent when never. */
    readonly first?: number;
    /** How long beyond the limit in all, d. */
    readonly total: number;
    /** Value farthest towards (or beyond) the limit, and when; absent when not judged. */
    readonly worst?: number;
    /** d. */
    readonly worstAt?: number;
}
/**
 * Compares running means with a limit. Between output times the mean is taken to run straight, so the
 * time of passing is interpolated.
 * @param times output times, d
 * @param averaging window, d; 0 compares the values themselves
 * @param matters whether anyone the limit is for was there at each time
 */
export declare function judge(times: readonly number[], values: ArrayLike<number>, limit: {
    readonly value: number;
    readonly direction: Direction;
}, averaging: number, matters?: (index: number) => boolean): Verdict;
//# sourceMappingURL=judge.d.ts.map
/** Hands out the arrays in which the samples of a run are kept. */
export interface SampleBuffer {
    /** An array of so many numbers, which hold whatever they held. */
    array(size: number): Float64Array;
}
/** Buffers that are used anew. */
export interface ReusedBuffer extends SampleBuffer {
    /** Takes all arrays back: whatever they held is lost as they are handed out again. */
    clear(): void;
}
/** A buffer of fresh arrays. */
export declare const freshBuffer: SampleBuffer;
/**
 * A buffer that hands out the same arrays again after `clear`, for runs that are read out one after another: the
 * members of an ensemble then leave next to nothing to be swept up.
 */
export declare function reusedBuffer(): ReusedBuffer;
/** Output times: the multiples of a step from a start to the end, start and end included. */
export declare function outputTimes(days: number, every: number, from?: number): readonly number[];
//# sourceMappingURL=sample-buffer.d.ts.map
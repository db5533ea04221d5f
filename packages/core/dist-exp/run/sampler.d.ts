import type { Sample } from './run.js';
import type { RunParts } from './run-state.js';
import type { SampleBuffer } from './sample-buffer.js';
/** Takes samples of a run into its record. */
export declare class Sampler {
    private readonly parts;
    private readonly buffer;
    /** Streams that evaporate. */
    private readonly vapour;
    constructor(parts: RunParts, buffer: SampleBuffer);
    /**
     * Takes a sample within a segment.
     * @param y states at the time
     * @param x extents at the time
     * @param since d since the water was last moved, along whose straight lines volumes are read
     */
    take(time: number, y: Float64Array, x: Float64Array, since: number): void;
    /** The sample that `take` takes, kept nowhere. */
    look(time: number, y: Float64Array, x: Float64Array, since: number): Sample;
    private copy;
    /** Values that have moved along straight lines for some time. */
    private along;
    /** Feed offered to each cohort. */
    private fedAt;
}
//# sourceMappingURL=sampler.d.ts.map
import type { Run, Sample } from '../run/run.js';
import type { Store } from './why-quantities.js';
/** How much of a store each cause has brought (+) or taken (-). */
export type History = ReadonlyMap<string, number>;
/** What is there before anything happened. */
export declare const START = "state at the start";
/**
 * All that brought a store to where it stands at a sample, from the integrated extents of rows and streams
 * and from the postings; amounts of one cause are added. Their sum is `heldBy`, to rounding.
 */
export declare function historyOf(run: Run, sample: Sample, store: Store): History;
/** What a store holds at a sample. */
export declare function heldBy(sample: Sample, store: Store): number;
//# sourceMappingURL=why-history.d.ts.map
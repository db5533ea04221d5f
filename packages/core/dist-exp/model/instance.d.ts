import type { Process } from '../processes/process.js';
import type { Values } from '../library/values.js';
import { type Layout, type PlaceIndex } from './layout.js';
/** A process at work at one place. */
export interface Instance extends PlaceIndex {
    readonly process: Process;
    /** Index of its row in the model. */
    readonly row: number;
    /** Name of vessel, cohort or batch. */
    readonly place: string;
    /** Feed for which its row holds (`feedKey`), or undefined. */
    readonly feed: string | undefined;
    readonly values: Values;
    readonly reads: readonly Reading[];
}
/** Index of the vessel whose water the rate at a place depends on: its own, unless a probe stands in another. */
export declare function waterRead({ vessel, probe }: Pick<PlaceIndex, 'vessel' | 'probe'>): number;
/** Where a variable is read: a `state` (its index) as a concentration, a state as it is, or derived chemistry. */
export type Reading = {
    readonly kind: 'concentration' | 'amount';
    readonly state: number;
} | {
    readonly kind: 'chemistry';
    readonly which: 0 | 1 | 2 | 3;
};
/** Finds where the variables of a process stand for one place. */
export declare function readingsOf(process: Process, layout: Layout, place: PlaceIndex): readonly Reading[];
/** Tells feeds apart: a row of feed eaten holds for one protein content. */
export declare function feedKey(feed: {
    readonly name: string;
    readonly protein: number;
}): string;
//# sourceMappingURL=instance.d.ts.map
import type { Matrix } from 'ml-matrix';
import type { Component } from '../../processes/components.js';
import type { Layout } from '../../model/layout.js';
/** A way in which a state dies away, and what takes part in it. */
export interface Mode {
    /** Time in which a deviation falls to 1/e, d; negative where it grows. */
    readonly time: number;
    /** Time in which it falls to a twentieth: 95 % of the way back, d. */
    readonly recovery: number;
    /** Period of the swing that goes with it, d, where it swings. */
    readonly swing?: number;
    /**
     * What takes part, the most first: component, place (`everywhere` where no single one leads), `share` of the whole,
     * 0..1.
     */
    readonly parts: readonly {
        readonly component: Component;
        readonly place: string;
        readonly share: number;
    }[];
}
/**
 * Time constants of a linear system from its eigenvalues, the slowest first. What takes part in a mode is found
 * by participation factors, |right eigenvector x left eigenvector|, which do not depend on units.
 * @param jacobian of the states given, per day
 * @param scale what counts as one of each
 */
export declare function modesOf(jacobian: Matrix, scale: readonly number[], states: Layout['states']): readonly Mode[];
//# sourceMappingURL=modes.d.ts.map
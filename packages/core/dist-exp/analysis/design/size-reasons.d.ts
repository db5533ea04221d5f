import type { Run } from '../../run/run.js';
/** Where TAN went, and how the biofilm of some vessels worked: what the areal rates of tables leave out. */
export interface SizeReasons {
    /** TAN that fish, solids and dead cells released, g N d-1: `mean` of the run, and of the output step of `most`. */
    readonly released: {
        readonly mean: number;
        readonly most: number;
    };
    /** Of all TAN that went, the `share` (0..1) oxidised in each vessel, taken up by crops, lost to air or with water. */
    readonly went: readonly {
        readonly to: string;
        readonly share: number;
    }[];
    /** Areal rate in those vessels, g N m-2 d-1: `mean` of the run, and of the output step of `most`. */
    readonly arealRate: {
        readonly mean: number;
        readonly most: number;
    };
    /** Mean `value` of each condition there, and the `factor` that it leaves of the rate at 20 degC without any lack. */
    readonly factors: readonly {
        readonly name: string;
        readonly value: number;
        readonly unit: string;
        readonly factor: number;
    }[];
    /** Share of the room on those surfaces that biofilm fills, 0..1: at the `start` and at the `end`. */
    readonly filled: {
        readonly start: number;
        readonly end: number;
    };
}
/**
 * Why the model does not agree with an areal rate: what a run says of TAN and of the biofilm of some vessels (`vessels`, by
 * index).
 */
export declare function sizeReasons(run: Run, vessels: readonly number[]): SizeReasons;
//# sourceMappingURL=size-reasons.d.ts.map
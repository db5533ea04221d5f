import type { AcidBaseConstants } from '../chemistry/acid-base.js';
import type { Parameters } from '../library/parameters.js';
import type { Component, Content } from '../processes/components.js';
import type { Scenario } from '../scenario/scenario.js';
import type { SparsePattern, SparseRows } from '../solve/contract.js';
import type { Instance } from './instance.js';
import type { Layout } from './layout.js';
import type { Extension } from './own.js';
import type { Stream } from './streams.js';
/** One entry of a row: so much (`coefficient`) of a component appears (+) or disappears (-) per unit of rate. */
export interface Entry {
    readonly component: Component;
    /** Index of the state, or -1 where the component is outside. */
    readonly state: number;
    /** Name of the vessel, or of the account outside, that the component belongs to. */
    readonly place: string;
    readonly coefficient: number;
    /** What one unit of the component holds of each conserved quantity. */
    readonly content: Content;
}
/** One row of the model: a process at a place, or one component carried by one stream. */
export interface Row {
    /** Such as `ammonia-oxidation@biofilter` or `nitrate: sump > tank-1`. */
    readonly id: string;
    /** Process id (`ammonia-oxidation`), or `transport`. */
    readonly process: string;
    /** Vessel in which it happens (transport: where the water comes from, or the account). */
    readonly place: string;
    /** Unit of the extent, such as `g N`. */
    readonly unit: string;
    readonly entries: readonly Entry[];
}
/** A scenario made into numbers: everything needed to run, nothing read from outside, never changed. */
export interface Model {
    readonly scenario: Scenario;
    readonly parameters: Parameters;
    /** Components and processes of a user's own; their numbers stand among the parameters. */
    readonly extension?: Extension;
    readonly layout: Layout;
    readonly streams: readonly Stream[];
    /** One row per rate: first those of each stream that carries, then the processes, then what streams carry of own components. */
    readonly rows: readonly Row[];
    /** First row of each stream, or -1. */
    readonly streamRow: readonly number[];
    /** First row of each stream for components of a user's own that go with the water, in the order of the layout, or -1 (water from outside holds none). */
    readonly ownStreamRow: readonly number[];
    readonly instances: readonly Instance[];
    /** Content of each state per unit. */
    readonly contents: readonly Content[];
    readonly stoichiometry: SparseRows;
    readonly dependence: SparsePattern;
}
/**
 * What holds during a segment of constant forcing: set by the driver before each segment, read by the
 * rates. Volumes run on a straight line, because all flows are constant within a segment.
 */
export interface Regime {
    /** Start of the segment, d. */
    time: number;
    /** Volume of each vessel at that time, m3. */
    readonly volume: Float64Array;
    /** By how much it rises, m3 d-1. */
    readonly slope: Float64Array;
    /** Water in each stream, m3 d-1. */
    readonly flow: Float64Array;
    /** Concentrations of what a stream from outside brings: 9 for each stream. */
    readonly source: Float64Array;
    /** Acid-base constants of each vessel. */
    readonly constants: AcidBaseConstants[];
    /** Coefficients of each process instance: views into one array a process, to be filled in place. */
    readonly coefficients: readonly Float64Array[];
}
//# sourceMappingURL=model.d.ts.map
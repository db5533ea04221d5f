import { type Scenario } from '../scenario/scenario.js';
import { type Component, type WaterComponent } from '../processes/components.js';
import type { Tables } from './scope.js';
import { type OwnComponent } from './own.js';
/** One state: what it counts and where. */
export interface State {
    readonly component: Component;
    /** Vessel, cohort or planting batch. */
    readonly place: string;
    /** Index of the vessel in which it stands. */
    readonly vessel: number;
}
/**
 * One batch of a planting, by index: its `planting`, its `vessel`, the states of its dry `mass` without fruit and its
 * `nitrogen`.
 */
export interface Batch {
    readonly name: string;
    readonly planting: number;
    readonly vessel: number;
    /** m2. */
    readonly area: number;
    readonly mass: number;
    readonly nitrogen: number;
    /** State of its fruit, -1 where it bears none. */
    readonly fruit: number;
}
/**
 * States of a cohort: its `mass`, `number` and body `fat`, of those that died and lie in the water the mass (`dead`) and fat
 * (`deadFat`), -1 where these are taken out; and the index of its `vessel`.
 */
export interface FishStates {
    readonly mass: number;
    readonly number: number;
    readonly fat: number;
    readonly dead: number;
    readonly deadFat: number;
    readonly vessel: number;
}
/** Places of all states in y. Water first: of each vessel in the order of waterComponents. */
export interface Layout {
    readonly states: readonly State[];
    readonly vessels: readonly string[];
    /** Of each vessel the state of its ammonia oxidisers, -1 where it has none; */
    readonly aob: readonly number[];
    /** The same of nitrite oxidisers. */
    readonly nob: readonly number[];
    /** The same of what its film has got used to. */
    readonly acclimation: readonly number[];
    /** The same of the share of its nitrifiers that are awake. */
    readonly awake: readonly number[];
    /** The same of its heterotrophs. */
    readonly heterotrophs: readonly number[];
    /** The same of settled solids that break down. */
    readonly settled: readonly number[];
    /** The same of settled solids that hardly break down. */
    readonly settledRefractory: readonly number[];
    /** The same of lime. */
    readonly calcite: readonly number[];
    /** Of each cohort where its states stand. */
    readonly fish: readonly FishStates[];
    readonly batches: readonly Batch[];
    /** Components of a user's own, behind all of ours. */
    readonly own: readonly OwnStates[];
}
/** Where a component of a user's own stands: its `states`, one index for each vessel, -1 where there is none. */
export interface OwnStates {
    readonly component: OwnComponent;
    readonly states: readonly number[];
}
/** Those of them that go with the water. */
export declare function ownInWater({ own }: Layout): readonly OwnStates[];
/** Unit in which a component is counted, ours or a user's own. */
export declare function unitIn({ own }: Layout, component: Component): string;
/** Index of a water component of a vessel. */
export declare function waterState(vessel: number, component: WaterComponent): number;
/** A place in a layout. */
export interface PlaceIndex {
    /** Index of the vessel. */
    readonly vessel: number;
    /** Index of the cohort, or -1. */
    readonly cohort: number;
    /** Index of the batch, or -1. */
    readonly batch: number;
    /** Index of the doser, where it is one. */
    readonly doser?: number;
    /** Index of the vessel whose water is measured, where a probe stands in another. */
    readonly probe?: number;
}
/** Index of a component at a place: -1 where its vessel has none, undefined for what is held nowhere. */
export declare function stateOf(layout: Layout, place: PlaceIndex, component: string): number | undefined;
/** Gives every state of a scenario its place in y, components of a user's own last. */
export declare function layOut(scenario: Scenario, parameters: Tables, ownComponents?: readonly OwnComponent[]): Layout;
//# sourceMappingURL=layout.d.ts.map
import type { Model } from '../../model/model.js';
import { type Component } from '../../processes/components.js';
import type { RateSystem } from '../../solve/contract.js';
import type { EvenTerm } from './spread-actions.js';
/** States that are held at their value because they do not settle, and why. */
export interface Held {
    readonly component: string;
    /** Where it is held: a vessel, cohort or batch; `everywhere` for all of the kind. */
    readonly place: string;
    readonly reason: string;
    /** What all of it in the system would gain per day were it not held, and the unit of that. */
    readonly drift?: number;
    readonly unit?: string;
    /** Places of these states in the layout of the model. */
    readonly states: readonly number[];
}
/** Stock and crops: they grow until somebody takes them out. */
export declare function livingHeld(model: Model): readonly Held[];
/**
 * Lime that lies in the water, and scale: they go and come over years. What is dosed settles, and is not held.
 * @param even what repeated actions bring
 */
export declare function limeHeld(model: Model, even: readonly EvenTerm[]): readonly Held[];
/** All states of one component, over all places. */
export declare function statesOf(model: Model, component: string): readonly number[];
/** Holds what never settles: it drifts for ever, or may be anything. */
export declare function holdDrifting(model: Model, component: Component, state: number, drift: number): Held;
/**
 * Holds components of the water in the reservoir because the user wants it.
 * @throws InputError where there is no such component
 */
export declare function holdRequested(model: Model, components: readonly string[]): readonly Held[];
/**
 * A rate system in which some states stay as they are, whatever the rates say, and in which others gain and
 * lose evenly besides. Rates of the original keep their places; those of the even terms follow.
 */
export declare function heldSystem(system: RateSystem, held: ReadonlySet<number>, even: readonly EvenTerm[]): RateSystem;
//# sourceMappingURL=held.d.ts.map
import { Matrix } from 'ml-matrix';
import type { Model } from '../../model/model.js';
import type { RateSystem } from '../../solve/contract.js';
import { type Held } from './held.js';
import { type Mode } from './modes.js';
import type { EvenTerm } from './spread-actions.js';
/** A state that does not change, with what was held to get there. */
export interface ConstantState {
    readonly y: Float64Array;
    readonly held: readonly Held[];
    readonly free: readonly number[];
    /** Jacobian of the free states, 1/d. */
    readonly jacobian: Matrix;
    readonly modes: readonly Mode[];
    /** Days marched before Newton was in reach, and the Newton steps from there. */
    readonly marched: number;
    readonly steps: number;
    /** The last Newton step, as a share of each state at most. */
    readonly lastStep: number;
}
/** No state was found that lasts, though all that drifts was held. */
export declare class NoSteadyStateError extends Error {
    readonly name = "NoSteadyStateError";
}
interface Task {
    readonly model: Model;
    readonly system: RateSystem;
    readonly even: readonly EvenTerm[];
}
/**
 * The state at which nothing that can settle changes, reached from a start: by a march as far as need be, then by
 * Newton's method with the Jacobian of the model. What never settles is held at its value at the start, one
 * component after another; what is neither brought in nor taken out, at the value that the march led to.
 * @throws NoSteadyStateError when nothing more can be held and still none is found
 */
export declare function constantState(task: Task, start: Float64Array, given: readonly Held[]): ConstantState;
export {};
//# sourceMappingURL=constant-state.d.ts.map
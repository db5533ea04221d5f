import type { Model } from '../../model/model.js';
import type { RateSystem } from '../../solve/contract.js';
import { type ConstantState } from './constant-state.js';
import { type Cycle } from './cycle.js';
/** A state that comes back after a cycle. */
export interface PeriodicState {
    readonly y: Float64Array;
    readonly passes: number;
    /** The largest change over one cycle, as a share of each state. */
    readonly residual: number;
}
/**
 * The state that a cycle brings back to itself, from the state that its mean forcing would hold. Broyden's method
 * on y - pass(y), begun with I - exp(J P) of the mean forcing for its Jacobian: the part that varies within the
 * cycle is learnt from the passes. Source [M]: Broyden 1965, Math. Comp. 19:577.
 * @throws NoSteadyStateError when it does not converge
 */
export declare function periodicState(model: Model, cycle: Cycle, system: RateSystem, mean: ConstantState): PeriodicState;
//# sourceMappingURL=periodic-state.d.ts.map
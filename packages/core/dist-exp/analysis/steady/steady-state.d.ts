import type { Model } from '../../model/model.js';
import type { Run } from '../../run/run.js';
import type { Action, Scenario } from '../../scenario/scenario.js';
import { type Held } from './held.js';
import type { Mode } from './modes.js';
import { type RepeatedAction } from './spread-actions.js';
/** How a steady state is sought. */
export interface SteadyOptions {
    /** Day of the run whose weather is repeated; default 0. */
    readonly day?: number;
    /** Crops held at the mean of their cycle from planting to harvest (default), or as they stand at the start. */
    readonly crops?: 'mean' | 'as-at-start';
    /** Components of the water held in the reservoir at their value at the start. */
    readonly hold?: readonly string[];
}
/** A state that lasts, or a cycle that repeats, under the forcing of one day. */
export interface SteadyState {
    readonly kind: 'constant' | 'periodic';
    /** d. */
    readonly period: number;
    /** Day whose weather is repeated. */
    readonly day: number;
    /** A month of it, as a run would tell it: hourly where it is periodic, daily where it is constant. */
    readonly course: Run;
    /** What is held because it does not settle. */
    readonly held: readonly Held[];
    /** Time constants, the slowest first; of the mean forcing where the state is periodic. */
    readonly modes: readonly Mode[];
    /** Whether small changes die away. */
    readonly stable: boolean;
    /** Actions that are spread evenly, and kinds of those that are left out. */
    readonly spread: readonly RepeatedAction[];
    readonly leftOut: readonly Action['kind'][];
    /** What the water did until it settled, such as a pump that sucked air. */
    readonly water: readonly {
        readonly kind: string;
        readonly place: string;
    }[];
    /** Days of march before Newton was in reach. */
    readonly marched: number;
    /** Newton steps. */
    readonly steps: number;
    /** Passes over the cycle; 0 where the state is constant. */
    readonly passes: number;
    /** Largest share of a state by which it still changes: the last Newton step, or over one cycle. */
    readonly residual: number;
}
/**
 * The state that a system comes to, and keeps, under the weather of one day, with fish and crops held as they are
 * at the start. Doses, drainings and changes of water that repeat are spread evenly; other actions and rules are left
 * out. With timers, hours of feeding or rations of water that run out, the state is one that repeats.
 * @throws InputError when the water never settles, NoSteadyStateError when no such state is found
 */
export declare function steadyState(model: Model, options?: SteadyOptions): SteadyState;
/**
 * The whole day of a run that a text names: a time after the start such as `90 d`, or a date.
 * @param where what to name in a fault, such as an option
 * @throws InputError where it names no day, or one before the start
 */
export declare function dayOn(text: string, { startDate }: Pick<Scenario, 'startDate'>, where: string): number;
//# sourceMappingURL=steady-state.d.ts.map
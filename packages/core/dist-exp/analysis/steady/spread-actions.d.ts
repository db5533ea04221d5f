import type { Model } from '../../model/model.js';
import { type SpreadableAction } from '../../scenario/action-kinds.js';
import type { Action, Scenario } from '../../scenario/scenario.js';
/** An action that is done again and again, `every` so many days. */
export interface RepeatedAction {
    readonly action: SpreadableAction;
    readonly every: number;
}
/** Actions of a scenario by what a state that lasts can make of them. */
export interface SpreadActions {
    /** Doses, drainings and changes of water at equal intervals: spread evenly over time. */
    readonly spread: readonly RepeatedAction[];
    /** Kinds of actions that are left out, because they happen once or change stock or settings. */
    readonly leftOut: readonly Action['kind'][];
}
/** What a state gains whatever it is, per day, and the share of it that goes per day. */
export interface EvenTerm {
    readonly state: number;
    readonly gain: number;
    readonly loss: number;
}
/** Sorts the actions of a scenario into those that are spread evenly and those that are left out. */
export declare function spreadActions(scenario: Scenario): SpreadActions;
/** Water that repeated drainings take out of each vessel, m3 d-1; the float makes it good. */
export declare function drainedWater(spread: readonly RepeatedAction[]): ReadonlyMap<string, number>;
/**
 * What repeated actions do per day to the states. A share s drained every P days is spread as a loss of
 * 2 s / (P (2 - s)) a day: with a steady inflow the mean of what lies there is then the same.
 */
export declare function evenTerms(spread: readonly RepeatedAction[], model: Pick<Model, 'layout' | 'scenario' | 'parameters'>): readonly EvenTerm[];
//# sourceMappingURL=spread-actions.d.ts.map
import type { Action } from './scenario.js';
/**
 * The kinds of action, in the order in which they are done at one instant: what leaves, then water and cleaning, then
 * what comes, then settings. What each does to a run stands in `run/actions.ts`, how each is written in
 * `scenario/sections`.
 */
export declare const actionKinds: {
    readonly 'lose-fish': {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly 'harvest-fish': {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly grade: {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly 'harvest-crop': {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly 'leave-empty': {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly 'drain-solids': {
        readonly sets: false;
        readonly spreads: true;
    };
    readonly clean: {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly medicate: {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly 'change-water': {
        readonly sets: false;
        readonly spreads: true;
    };
    readonly 'cart-water': {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly dose: {
        readonly sets: false;
        readonly spreads: true;
    };
    readonly stock: {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly plant: {
        readonly sets: false;
        readonly spreads: false;
    };
    readonly 'source-water': {
        readonly sets: true;
        readonly spreads: false;
    };
    readonly 'top-up': {
        readonly sets: true;
        readonly spreads: false;
    };
    readonly feed: {
        readonly sets: true;
        readonly spreads: false;
    };
    readonly aeration: {
        readonly sets: true;
        readonly spreads: false;
    };
    readonly control: {
        readonly sets: true;
        readonly spreads: false;
    };
    readonly pump: {
        readonly sets: true;
        readonly spreads: false;
    };
};
/** An action of a kind. */
export type ActionOf<Kind extends Action['kind']> = Extract<Action, {
    readonly kind: Kind;
}>;
/** An action that can be spread evenly over time. */
export type SpreadableAction = ActionOf<{
    [Kind in Action['kind']]: (typeof actionKinds)[Kind]['spreads'] extends true ? Kind : never;
}[Action['kind']]>;
/** The kinds of action in the order in which they are done at one instant; within a kind: the order of the file. */
export declare const actionOrder: readonly Action["kind"][];
/** Compares actions by the place of their kinds in `actionOrder`, for sorting. */
export declare function byKind(a: Action, b: Action): number;
/** Whether an action leaves a setting behind. */
export declare function isSetting({ kind }: Action): boolean;
/** Whether an action can be spread evenly over time. */
export declare function isSpreadable(action: Action): action is SpreadableAction;
//# sourceMappingURL=action-kinds.d.ts.map
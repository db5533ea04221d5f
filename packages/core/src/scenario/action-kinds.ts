import type { Action } from './scenario.js';

/** What holds of all actions of a kind. */
interface ActionKind {
  /** Whether it leaves a setting behind, which stands until another is made: doing it again changes nothing. */
  readonly sets: boolean;
  /** Whether, done again and again, it can be spread evenly over time in a state that lasts. */
  readonly spreads: boolean;
}

const setting = { sets: true, spreads: false } as const;
const act = { sets: false, spreads: false } as const;
const repeatedAct = { sets: false, spreads: true } as const;

/**
 * The kinds of action, in the order in which they are done at one instant: what leaves, then water and cleaning, then
 * what comes, then settings. What each does to a run stands in `run/actions.ts`, how each is written in
 * `scenario/sections`.
 */
export const actionKinds = {
  'lose-fish': act,
  'harvest-fish': act,
  grade: act,
  'harvest-crop': act,
  'leave-empty': act,
  'drain-solids': repeatedAct,
  clean: act,
  medicate: act,
  'change-water': repeatedAct,
  'cart-water': act,
  dose: repeatedAct,
  stock: act,
  plant: act,
  'source-water': setting,
  'top-up': setting,
  feed: setting,
  aeration: setting,
  control: setting,
  pump: setting,
} as const satisfies Readonly<Record<Action['kind'], ActionKind>>;

/** An action of a kind. */
export type ActionOf<Kind extends Action['kind']> = Extract<Action, { readonly kind: Kind }>;

/** An action that can be spread evenly over time. */
export type SpreadableAction = ActionOf<
  {
    [Kind in Action['kind']]: (typeof actionKinds)[Kind]['spreads'] extends true ? Kind : never;
  }[Action['kind']]
>;

/** The kinds of action in the order in which they are done at one instant; within a kind: the order of the file. */
export const actionOrder = Object.keys(actionKinds) as readonly Action['kind'][];

const place = new Map(actionOrder.map((kind, index) => [kind, index]));

/** Compares actions by the place of their kinds in `actionOrder`, for sorting. */
export function byKind(a: Action, b: Action): number {
  return (place.get(a.kind) ?? 0) - (place.get(b.kind) ?? 0);
}

/** Whether an action leaves a setting behind. */
export function isSetting({ kind }: Action): boolean {
  return actionKinds[kind].sets;
}

/** Whether an action can be spread evenly over time. */
export function isSpreadable(action: Action): action is SpreadableAction {
  return actionKinds[action.kind].spreads;
}

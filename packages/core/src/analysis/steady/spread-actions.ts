import { waterComponents } from '../../processes/components.js';
import { ownInWater, waterState } from '../../model/layout.js';
import { dosedTo } from '../../model/dosed.js';
import type { Model } from '../../model/model.js';
import { concentrationsOf } from '../../run/ledger.js';
import { type ActionOf, isSpreadable, type SpreadableAction } from '../../scenario/action-kinds.js';
import type { TimedAction, Action, Scenario } from '../../scenario/scenario.js';

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

/** Days between like actions, where there are at least two at equal distances that go on to the end of the run. */
function interval(actions: readonly TimedAction[], days: number): number | undefined {
  const times = actions.map(({ at }) => at).sort((a, b) => a - b);
  if (times.length < 2) return undefined;
  const every = (times[times.length - 1] - times[0]) / (times.length - 1);
  const even = times.every((time, i) => Math.abs(time - times[0] - i * every) < 1e-6);
  const goesOn = times[times.length - 1] + every >= days - 1e-6;
  return even && goesOn && every > 0 ? every : undefined;
}

/** Sorts the actions of a scenario into those that are spread evenly and those that are left out. */
export function spreadActions(scenario: Scenario): SpreadActions {
  const like = new Map<string, TimedAction[]>();
  for (const timed of scenario.actions) {
    const key = JSON.stringify(timed.action);
    like.set(key, [...(like.get(key) ?? []), timed]);
  }
  const spread: RepeatedAction[] = [];
  const leftOut = new Set<Action['kind']>();
  for (const actions of like.values()) {
    const { action } = actions[0];
    const every = interval(actions, scenario.days);
    if (every !== undefined && isSpreadable(action)) spread.push({ action, every });
    else leftOut.add(action.kind);
  }
  return { spread, leftOut: [...leftOut] };
}

/** Water that repeated drainings take out of each vessel, m3 d-1; the float makes it good. */
export function drainedWater(spread: readonly RepeatedAction[]): ReadonlyMap<string, number> {
  const drained = new Map<string, number>();
  for (const { action, every } of spread) {
    if (action.kind !== 'drain-solids' || action.water === 0) continue;
    drained.set(action.vessel, (drained.get(action.vessel) ?? 0) + action.water / every);
  }
  return drained;
}

type Spread<One extends SpreadableAction> = (
  action: One,
  every: number,
  model: Pick<Model, 'layout' | 'scenario' | 'parameters'>,
) => readonly EvenTerm[];

/** What an action of each kind that can be spread does per day when it is done `every` so many days. */
const spreads: { readonly [Kind in SpreadableAction['kind']]: Spread<ActionOf<Kind>> } = {
  dose: ({ vessel, product, mass }, every, { layout, parameters }) =>
    dosedTo(layout, parameters, vessel, product, mass).map(([state, amount]) => ({
      state,
      gain: amount / every,
      loss: 0,
    })),
  'drain-solids': ({ vessel, share }, every, { layout }) => {
    const at = layout.vessels.indexOf(vessel);
    const loss = (2 * share) / (every * (2 - share));
    return [layout.settled[at], layout.settledRefractory[at]].flatMap((state) =>
      state < 0 ? [] : [{ state, gain: 0, loss }],
    );
  },
  'change-water': (action, every, { layout, scenario }) => {
    const vessel = layout.vessels.indexOf(action.vessel);
    const there = scenario.vessels[vessel].volume;
    const perDay = Math.min(there, action.volume ?? (action.share ?? 0) * there) / every;
    const water = scenario.waters.find(({ name }) => name === action.water);
    if (water === undefined) throw new RangeError(`no water named ${action.water}`);
    const loss = perDay / there;
    return [
      ...concentrationsOf(water).map((concentration, c) => ({
        state: waterState(vessel, waterComponents[c]),
        gain: concentration * perDay,
        loss,
      })),
      ...ownInWater(layout).map(({ states }) => ({ state: states[vessel], gain: 0, loss })),
    ];
  },
};

/**
 * What repeated actions do per day to the states. A share s drained every P days is spread as a loss of
 * 2 s / (P (2 - s)) a day: with a steady inflow the mean of what lies there is then the same.
 */
export function evenTerms(
  spread: readonly RepeatedAction[],
  model: Pick<Model, 'layout' | 'scenario' | 'parameters'>,
): readonly EvenTerm[] {
  return spread.flatMap(({ action, every }) =>
    (spreads[action.kind] as Spread<SpreadableAction>)(action, every, model),
  );
}

import { InputError } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import { unitIn, waterState } from '../../model/layout.js';
import type { Model } from '../../model/model.js';
import { type Component, unitOf, type WaterComponent, waterComponents } from '../../processes/components.js';
import type { RateSystem, SparseRows } from '../../solve/contract.js';
import { packPattern, packRows } from '../../solve/sparse-rows.js';
import type { EvenTerm } from './spread-actions.js';

/** States that are held at their value because they do not settle, and why. */
export interface Held {
  readonly component: string;
  /** Where it is held: a vessel, cohort or batch; `everywhere` for all of the kind. */
  readonly place: string;
  readonly reason: string;
  /** d until 95 % of a disturbance would be gone, where it is held because that is too long. */
  readonly settles?: number;
  /** What all of it in the system would gain per day were it not held, and the unit of that. */
  readonly drift?: number;
  readonly unit?: string;
  /** Places of these states in the layout of the model. */
  readonly states: readonly number[];
}

/** Stock and crops: they grow until somebody takes them out. */
export function livingHeld(model: Model): readonly Held[] {
  const { fish, batches } = model.layout;
  const of = (component: string, states: readonly number[], reason: string): Held[] =>
    states.length === 0 ? [] : [{ component, place: 'everywhere', reason, states }];
  return [
    ...of(
      'fish',
      fish.flatMap(({ mass, number, fat }) => [mass, number, fat]),
      'fish grow and die until they are taken out',
    ),
    ...of(
      'crops',
      batches.flatMap(({ mass, nitrogen, fruit }) =>
        fruit < 0 ? [mass, nitrogen] : [mass, nitrogen, fruit],
      ),
      'crops grow from planting to harvest and begin anew',
    ),
  ];
}

/**
 * Lime that lies in the water, and scale: they go and come over years. What is dosed settles, and is not held.
 * @param even what repeated actions bring
 */
export function limeHeld(model: Model, even: readonly EvenTerm[]): readonly Held[] {
  const dosed = new Set([
    ...even.map(({ state }) => state),
    ...model.instances
      .filter(({ doser }) => doser !== undefined)
      .flatMap(({ row }) => model.rows[row].entries.map(({ state }) => state)),
  ]);
  const states = model.layout.calcite.filter((state) => state >= 0 && !dosed.has(state));
  if (states.length === 0) return [];
  return [
    { component: 'calcite', place: 'everywhere', reason: 'lime dissolves and falls over years', states },
  ];
}

/**
 * Holds at the start components of the water that would take longer to settle than who runs the system will wait.
 * @param slow component, and d until 95 % of a disturbance is gone
 */
export function holdSlow(model: Model, slow: ReadonlyMap<WaterComponent, number>): readonly Held[] {
  return [...slow].map(([component, days]) => ({
    component,
    reason: 'too slow to settle, so it stands as it does at the start',
    settles: days,
    drift: 0,
    unit: `${unitOf[component]}/d`,
    ...heldAt(model, component, -1),
  }));
}

/** All states of one component, over all places. */
export function statesOf(model: Model, component: string): readonly number[] {
  return model.layout.states.flatMap((state, index) => (state.component === component ? [index] : []));
}

/**
 * Where a component is held: in the reservoir, so that the other vessels follow it, or, on a surface, at a state of
 * it.
 */
function heldAt(
  model: Model,
  component: string,
  state: number,
): { place: string; states: readonly number[] } {
  const { layout, scenario } = model;
  const water = waterComponents.find((name) => name === component);
  return water === undefined
    ? { place: layout.states[state].place, states: [state] }
    : {
        place: scenario.reservoir,
        states: [waterState(layout.vessels.indexOf(scenario.reservoir), water)],
      };
}

/** Holds what never settles: it drifts for ever, or may be anything. */
export function holdDrifting(model: Model, component: Component, state: number, drift: number): Held {
  const reason =
    drift === 0
      ? 'nothing brings it in or takes it out: the whole stays what it was'
      : 'it drifts for years: what comes in and what goes out do not meet';
  return {
    component,
    reason,
    drift,
    unit: `${unitIn(model.layout, component)}/d`,
    ...heldAt(model, component, state),
  };
}

/**
 * Holds components of the water in the reservoir because the user wants it.
 * @throws InputError where there is no such component
 */
export function holdRequested(model: Model, components: readonly string[]): readonly Held[] {
  return components.map((name) => {
    const component = waterComponents.find((each) => each === name);
    if (component !== undefined)
      return {
        component,
        reason: 'held as asked',
        drift: 0,
        unit: `${unitOf[component]}/d`,
        ...heldAt(model, component, -1),
      };
    const near = nearest(name, waterComponents);
    throw new InputError([
      {
        problem: 'no such component of the water',
        got: name,
        expected: waterComponents.join(', '),
        ...(near === undefined ? {} : { nearest: near }),
      },
    ]);
  });
}

function rowOf(rows: SparseRows, row: number): readonly (readonly [number, number])[] {
  const entries: (readonly [number, number])[] = [];
  for (let e = rows.start[row]; e < rows.start[row + 1]; e++) entries.push([rows.column[e], rows.value[e]]);
  return entries;
}

/**
 * A rate system in which some states stay as they are, whatever the rates say, and in which others gain and
 * lose evenly besides. Rates of the original keep their places; those of the even terms follow.
 */
export function heldSystem(
  system: RateSystem,
  held: ReadonlySet<number>,
  even: readonly EvenTerm[],
): RateSystem {
  const moving = even.filter(({ state }) => !held.has(state));
  const stoichiometry = packRows([
    ...Array.from({ length: system.rates }, (_, row) =>
      rowOf(system.stoichiometry, row).filter(([state]) => !held.has(state)),
    ),
    ...moving.map(({ state }) => [[state, 1] as const]),
  ]);
  const { start, column } = system.dependence;
  const dependence = packPattern([
    ...Array.from({ length: system.rates }, (_, row) => [...column.subarray(start[row], start[row + 1])]),
    ...moving.map(({ state }) => [state]),
  ]);
  const partials = column.length;
  return {
    states: system.states,
    rates: system.rates + moving.length,
    stoichiometry,
    dependence,
    evaluate(t, y, r) {
      system.evaluate(t, y, r);
      moving.forEach(({ state, gain, loss }, i) => {
        r[system.rates + i] = gain - loss * y[state];
      });
    },
    differentiate(t, y, dr, rt) {
      system.differentiate(t, y, dr, rt);
      moving.forEach(({ loss }, i) => {
        dr[partials + i] = -loss;
        rt[system.rates + i] = 0;
      });
    },
  };
}

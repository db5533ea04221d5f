import { batchName, type Scenario } from '../scenario/scenario.js';
import { waterComponents, type Component, type WaterComponent } from '../processes/components.js';

/** One state: what it counts and where. */
export interface State {
  readonly component: Component;
  /** Vessel, cohort or planting batch. */
  readonly place: string;
  /** Vessel in which it stands. */
  readonly vessel: string;
  /** Index of the vessel. */
  readonly cell: number;
}

/**
 * One batch of a planting, by index: its `planting`, its vessel (`cell`), the states of its dry `mass` and its
 * `nitrogen`.
 */
export interface Batch {
  readonly name: string;
  readonly planting: number;
  readonly cell: number;
  /** m2. */
  readonly area: number;
  readonly mass: number;
  readonly nitrogen: number;
}

/** Places of all states in y. Water of vessel i: 8 i .. 8 i + 7 in the order of waterComponents. */
export interface Layout {
  readonly states: readonly State[];
  readonly cells: readonly string[];
  /** Of each vessel the state of its ammonia oxidisers, -1 where it has none; */
  readonly aob: readonly number[];
  /** The same of nitrite oxidisers. */
  readonly nob: readonly number[];
  /** The same of settled solids. */
  readonly settled: readonly number[];
  /** Of each cohort the states of its `mass` and `number`, and the index of its vessel (`cell`). */
  readonly fish: readonly { readonly mass: number; readonly number: number; readonly cell: number }[];
  readonly batches: readonly Batch[];
}

/** Index of a water component of a vessel. */
export function waterState(cell: number, component: WaterComponent): number {
  return cell * waterComponents.length + waterComponents.indexOf(component);
}

/** Gives every state of a scenario its place in y. */
export function layOut(scenario: Scenario): Layout {
  const cells = scenario.vessels.map((vessel) => vessel.name);
  const index = new Map(cells.map((name, cell) => [name, cell]));
  const cellOf = (vessel: string): number => index.get(vessel) ?? -1;
  const states: State[] = [];
  const add = (component: Component, place: string, cell: number): number =>
    states.push({ component, place, vessel: cells[cell], cell }) - 1;
  cells.forEach((name, cell) => waterComponents.forEach((component) => add(component, name, cell)));
  const onSurface = (component: Component) =>
    scenario.vessels.map((vessel, cell) => (vessel.surface > 0 ? add(component, vessel.name, cell) : -1));
  const aob = onSurface('aob');
  const nob = onSurface('nob');
  const settled = scenario.vessels.map((vessel, cell) =>
    vessel.floor > 0 || vessel.capture > 0 ? add('settled', vessel.name, cell) : -1,
  );
  const fish = scenario.cohorts.map((cohort) => {
    const cell = cellOf(cohort.vessel);
    return { mass: add('fish-mass', cohort.name, cell), number: add('fish-number', cohort.name, cell), cell };
  });
  const batches = scenario.plantings.flatMap((planting, index) =>
    Array.from({ length: planting.batches }, (_, batch) => {
      const cell = cellOf(planting.vessel);
      const name = batchName(planting.name, planting.batches, batch);
      return {
        name,
        planting: index,
        cell,
        area: planting.area / planting.batches,
        mass: add('crop-mass', name, cell),
        nitrogen: add('crop-nitrogen', name, cell),
      };
    }),
  );
  return { states, cells, aob, nob, settled, fish, batches };
}

import type { Process, Variable } from '../processes/process.js';
import { waterComponents } from '../processes/components.js';
import type { Values } from '../library/values.js';
import { ownInWater, stateOf, type Layout, type PlaceIndex } from './layout.js';

/** A process at work at one place. */
export interface Instance extends PlaceIndex {
  readonly process: Process;
  /** Index of its row in the model. */
  readonly row: number;
  /** Name of vessel, cohort or batch. */
  readonly place: string;
  /** Feed for which its row holds (`feedKey`), or undefined. */
  readonly feed: string | undefined;
  readonly values: Values;
  readonly reads: readonly Reading[];
}

/** Index of the vessel whose water the rate at a place depends on: its own, unless a probe stands in another. */
export function waterRead({ vessel, probe = vessel }: Pick<PlaceIndex, 'vessel' | 'probe'>): number {
  return probe;
}

/** Where a variable is read: a `state` (its index) as a concentration, a state as it is, or derived chemistry. */
export type Reading =
  | { readonly kind: 'concentration' | 'amount'; readonly state: number }
  | { readonly kind: 'chemistry'; readonly which: 0 | 1 | 2 | 3 };

const chemistry: Partial<Record<Variable, 0 | 1 | 2 | 3>> = {
  pH: 0,
  ammonia: 1,
  'carbon-dioxide': 2,
  saturation: 3,
};

/** Finds where the variables of a process stand for one place. */
export function readingsOf(process: Process, layout: Layout, place: PlaceIndex): readonly Reading[] {
  return process.reads.map((variable): Reading => {
    const which = chemistry[variable];
    if (which !== undefined) return { kind: 'chemistry', which };
    const state = stateOf(layout, { ...place, vessel: waterRead(place) }, variable) ?? -1;
    if (state < 0) throw new RangeError(`${process.id} reads ${variable}, which has no place there`);
    const dissolved =
      (waterComponents as readonly string[]).includes(variable) ||
      ownInWater(layout).some(({ component }) => component.id === variable);
    return { kind: dissolved ? 'concentration' : 'amount', state };
  });
}

/** Tells feeds apart: a row of feed eaten holds for one protein content. */
export function feedKey(feed: { readonly name: string; readonly protein: number }): string {
  return `${feed.name} ${feed.protein}`;
}

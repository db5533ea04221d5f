import type { Process, Variable } from '../processes/process.js';
import { waterComponents, type WaterComponent } from '../processes/components.js';
import type { Values } from '../library/values.js';
import { waterState, type Layout } from './layout.js';

/** A process at work at one place. */
export interface Instance {
  readonly process: Process;
  /** Index of its row in the model. */
  readonly row: number;
  /** Name of vessel, cohort or batch. */
  readonly place: string;
  /** Index of the vessel. */
  readonly vessel: number;
  /** Index of the cohort, or -1. */
  readonly cohort: number;
  /** Index of the batch, or -1. */
  readonly batch: number;
  /** Feed for which its row holds (`feedKey`), or undefined. */
  readonly feed: string | undefined;
  readonly values: Values;
  readonly reads: readonly Reading[];
}

/** Where a variable is read: a `state` (its index) as a concentration, a state as it is, or derived chemistry. */
export type Reading =
  | { readonly kind: 'concentration' | 'amount'; readonly state: number }
  | { readonly kind: 'chemistry'; readonly which: 0 | 1 | 2 };

const chemistry: Partial<Record<Variable, 0 | 1 | 2>> = { pH: 0, ammonia: 1, 'carbon-dioxide': 2 };

/** Finds where the variables of a process stand for one place. */
export function readingsOf(
  process: Process,
  layout: Layout,
  place: { vessel: number; cohort: number; batch: number },
): readonly Reading[] {
  const fixed = (variable: Variable): number => {
    switch (variable) {
      case 'aob':
        return layout.aob[place.vessel];
      case 'nob':
        return layout.nob[place.vessel];
      case 'settled':
        return layout.settled[place.vessel];
      case 'fish-mass':
        return layout.fish[place.cohort].mass;
      case 'fish-number':
        return layout.fish[place.cohort].number;
      case 'crop-mass':
        return layout.batches[place.batch].mass;
      case 'crop-nitrogen':
        return layout.batches[place.batch].nitrogen;
      default:
        throw new RangeError(`${process.id} reads ${variable}, which has no place there`);
    }
  };
  return process.reads.map((variable): Reading => {
    const which = chemistry[variable];
    if (which !== undefined) return { kind: 'chemistry', which };
    if ((waterComponents as readonly string[]).includes(variable)) {
      return { kind: 'concentration', state: waterState(place.vessel, variable as WaterComponent) };
    }
    return { kind: 'amount', state: fixed(variable) };
  });
}

/** Tells feeds apart: a row of feed eaten holds for one protein content. */
export function feedKey(feed: { readonly name: string; readonly protein: number }): string {
  return `${feed.name} ${feed.protein}`;
}

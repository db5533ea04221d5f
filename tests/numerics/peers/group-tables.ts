import { waterRead } from '../../../packages/core/src/model/instance.js';
import { waterState } from '../../../packages/core/src/model/layout.js';
import type { Model } from '../../../packages/core/src/model/model.js';
import { DERIVED, type Group } from './shape.js';

/** Where the instances of a process read, and where their partials go. */
export interface GroupTables {
  /** What each variable is: 0 a concentration, 1 an amount, 2 pH, 3 ammonia, 4 carbon dioxide, 5 saturation. */
  readonly kind: readonly number[];
  /** By instance, by variable: its place among the states and, after them, the chemistry of each vessel. */
  readonly at: readonly (readonly number[])[];
  /** By instance, three for each variable: places of partials; chemistry has three (TAN, alkalinity, carbon). */
  readonly slot: readonly (readonly number[])[];
}

/** Makes the tables of a group. */
export function groupTables({ dependence, layout }: Model, { id, instances }: Group): GroupTables {
  const states = layout.states.length;
  const slotOf = (row: number, state: number): number => {
    const found = dependence.column
      .subarray(0, dependence.start[row + 1])
      .indexOf(state, dependence.start[row]);
    if (found < 0) throw new RangeError(`${id} depends on a state that was not laid out`);
    return found;
  };
  return {
    kind: instances[0].reads.map((reading) =>
      reading.kind === 'chemistry' ? 2 + reading.which : reading.kind === 'concentration' ? 0 : 1,
    ),
    at: instances.map((instance) =>
      instance.reads.map((reading) =>
        reading.kind === 'chemistry' ? states + DERIVED * waterRead(instance) + reading.which : reading.state,
      ),
    ),
    slot: instances.map((instance) =>
      instance.reads.flatMap((reading) =>
        reading.kind === 'chemistry'
          ? (['tan', 'alkalinity', 'carbon'] as const).map((component) =>
              slotOf(instance.row, waterState(waterRead(instance), component)),
            )
          : [slotOf(instance.row, reading.state), -1, -1],
      ),
    ),
  };
}

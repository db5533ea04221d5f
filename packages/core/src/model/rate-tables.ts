import type { Kernel, Sites } from '../processes/kernels/kernel.js';
import { anyConditions } from '../processes/process.js';
import type { Process } from '../processes/process.js';
import type { Floats, Given } from '../solve/room.js';
import { waterRead, type Instance } from './instance.js';
import { waterState } from './layout.js';
import type { Model } from './model.js';
import { DERIVED } from './rate-loops.js';
import type { Group, RateRoom } from './rate-room.js';

/** What a partial belongs to: a concentration, an amount, or the first of the four values of chemistry. */
export const CONCENTRATION = 0;
export const AMOUNT = 1;
export const CHEMISTRY = 2;

/**
 * Everything that the instances of a model read, in flat arrays: the reads of instance j are
 * `reads[j] .. reads[j+1]-1`, its coefficients are the j-th of `coefficients`.
 */
export interface RateTables {
  readonly groups: readonly Group[];
  readonly coefficients: readonly Floats[];
  readonly reads: Int32Array;
  /** Place of each variable in v, and its partial, as the kernels left it. */
  readonly at: Int32Array;
  readonly d: Floats;
  readonly kind: Int32Array;
  /** Where the partial goes in `dependence`: one place, or three (TAN, alkalinity, carbon) for chemistry. */
  readonly slot: Int32Array;
}

/** Calls rate and partials of one process place by place, on views of its tables cut at the first call. */
function plainKernel({ rate, partials }: Process): Kernel {
  let views: readonly SiteViews[] | undefined;
  return {
    rates: (all, v, r) => {
      const places = (views ??= all.flatMap(cutSites));
      for (const { row, at, k } of places) r[row] = rate(v, at, k);
    },
    partials: (all, v) => {
      const places = (views ??= all.flatMap(cutSites));
      for (const { at, k, d } of places) partials(v, at, k, d);
    },
  };
}

/** The tables of one place. */
type SiteViews = Pick<Sites, 'row' | 'at' | 'k' | 'd'>;

function cutSites({ count, row, width, size, at, k, d }: Sites): readonly SiteViews[] {
  return Array.from({ length: count }, (_, i) => ({
    row: row + i,
    at: at.subarray(i * width, (i + 1) * width),
    k: k.subarray(i * size, (i + 1) * size),
    d: d.subarray(i * width, (i + 1) * width),
  }));
}

/**
 * Lays out the tables.
 * @param plain whether every rate is called one by one, without kernels: slow, for comparison
 */
export function layRateTables(model: Model, plain: boolean, room: RateRoom): RateTables {
  const { instances } = model;
  const reads = new Int32Array(instances.length + 1);
  instances.forEach((instance, j) => {
    reads[j + 1] = reads[j] + instance.reads.length;
  });
  const count = reads[instances.length];
  const at = new Int32Array(count);
  const d = room.floats(count);
  const kind = new Int32Array(count);
  const slot = new Int32Array(3 * count);
  instances.forEach((instance, j) => {
    placeReads(model, instance, reads[j], { at, kind, slot });
  });

  const places = room.ints(at);
  const coefficients: Floats[] = [];
  const sitesOf = new Map<Kernel, Given<Sites>[]>();
  for (let first = 0; first < instances.length;) {
    const { process, row, values } = instances[first];
    let end = first;
    while (end < instances.length && instances[end].process === process) end++;
    const size = process.coefficients(values, anyConditions).length;
    const k = room.floats(size * (end - first));
    for (let j = first; j < end; j++) {
      if (instances[j].row !== row + j - first) throw new RangeError(`rows of ${process.id} lie apart`);
      coefficients.push(room.part(k, (j - first) * size, size));
    }
    const kernel = (plain ? undefined : process.kernel) ?? plainKernel(process);
    const width = process.reads.length;
    const sites: Given<Sites> = {
      count: end - first,
      row,
      place: room.ints(Int32Array.from(instances.slice(first, end), placeOf)),
      width,
      size,
      at: room.part(places, reads[first], width * (end - first), Int32Array.BYTES_PER_ELEMENT),
      k,
      d: room.part(d, reads[first], width * (end - first)),
    };
    sitesOf.set(kernel, [...(sitesOf.get(kernel) ?? []), sites]);
    first = end;
  }
  const groups = [...sitesOf].map(([kernel, sites]): Group => ({
    kernel,
    sites: room.records<Sites>(sites),
  }));
  return { groups, coefficients, reads, at, d, kind, slot };
}

/** Index of a place among those of its kind. */
function placeOf({ vessel, cohort, batch, doser = -1 }: Instance): number {
  return Math.max(cohort, batch, doser) < 0 ? vessel : Math.max(cohort, batch, doser);
}

function placeReads(
  model: Model,
  instance: Instance,
  from: number,
  { at, kind, slot }: Pick<RateTables, 'at' | 'kind' | 'slot'>,
): void {
  const { start, column } = model.dependence;
  const states = model.layout.states.length;
  const slotOf = (state: number): number => {
    for (let e = start[instance.row]; e < start[instance.row + 1]; e++) if (column[e] === state) return e;
    throw new RangeError(`${instance.process.id} depends on a state that was not laid out`);
  };
  const vessel = waterRead(instance);
  instance.reads.forEach((reading, m) => {
    const q = from + m;
    if (reading.kind === 'chemistry') {
      kind[q] = CHEMISTRY + reading.which;
      at[q] = states + DERIVED * vessel + reading.which;
      slot[3 * q] = slotOf(waterState(vessel, 'tan'));
      slot[3 * q + 1] = slotOf(waterState(vessel, 'alkalinity'));
      slot[3 * q + 2] = slotOf(waterState(vessel, 'carbon'));
    } else {
      kind[q] = reading.kind === 'concentration' ? CONCENTRATION : AMOUNT;
      at[q] = reading.state;
      slot[3 * q] = slotOf(reading.state);
    }
  });
}

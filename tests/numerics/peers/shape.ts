import { waterComponents } from '../../../packages/core/src/processes/components.js';
import type { Instance } from '../../../packages/core/src/model/instance.js';
import type { Model } from '../../../packages/core/src/model/model.js';
import type { Regime } from '../../../packages/core/src/model/model.js';

const WATER = waterComponents.length;

/** Constants of acids and bases of a vessel, in the order of `AcidBase` in emit-c.ts and of programs/model.py. */
export const CONSTANTS = 6;

/** Values that follow from the composition of a vessel and that rates read: pH, ammonia, carbon dioxide, saturation. */
export const DERIVED = 4;

/** Instances of one process, and where their coefficients stand in a packed regime. */
export interface Group {
  readonly id: string;
  readonly volumetric: boolean;
  /** Number of variables that the rate reads. */
  readonly reads: number;
  readonly instances: readonly Instance[];
  /** Offset of the coefficients of each instance, and their number. */
  readonly coefficients: readonly number[];
  readonly count: number;
}

/** Where everything that a regime holds stands in one array of doubles. */
export interface Shape {
  readonly vesselCount: number;
  readonly volume: number;
  readonly slope: number;
  readonly flow: number;
  readonly constants: number;
  /** Streams that carry what is dissolved; `source` is an offset, or -1 when the water is a vessel's. */
  readonly carrying: readonly {
    readonly stream: number;
    readonly from: number;
    readonly row: number;
    readonly source: number;
  }[];
  readonly groups: readonly Group[];
  readonly size: number;
  /** Packs a regime. */
  pack(regime: Regime): Float64Array;
}

/** Lays out the regimes of a model, by one of them (for the number of coefficients). */
export function shapeOf(model: Model, regime: Regime): Shape {
  const vesselCount = model.layout.vessels.length;
  let size = 0;
  const take = (count: number): number => {
    size += count;
    return size - count;
  };
  const volume = take(vesselCount);
  const slope = take(vesselCount);
  const flow = take(model.streams.length);
  const constants = take(CONSTANTS * vesselCount);
  const carrying = model.streams.flatMap((stream, index) =>
    model.streamRow[index] < 0
      ? []
      : [
          {
            stream: index,
            from: stream.from,
            row: model.streamRow[index],
            source: stream.from < 0 ? take(WATER) : -1,
          },
        ],
  );
  const offset = regime.coefficients.map((coefficients) => take(coefficients.length));
  const ids = [...new Set(model.instances.map(({ process }) => process.id))];
  const groups = ids.map((id): Group => {
    const instances = model.instances.filter(({ process }) => process.id === id);
    return {
      id,
      volumetric: instances[0].process.basis === 'volume',
      reads: instances[0].reads.length,
      instances,
      coefficients: instances.map((instance) => offset[model.instances.indexOf(instance)]),
      count: regime.coefficients[model.instances.indexOf(instances[0])].length,
    };
  });
  return {
    vesselCount,
    volume,
    slope,
    flow,
    constants,
    carrying,
    groups,
    size,
    pack(from) {
      const packed = new Float64Array(size);
      packed.set(from.volume, volume);
      packed.set(from.slope, slope);
      packed.set(from.flow, flow);
      from.constants.forEach(({ k1, k2, ammonium, water, proton, calcite }, vessel) => {
        packed.set([k1, k2, ammonium, water, proton, calcite], constants + CONSTANTS * vessel);
      });
      for (const { stream, source } of carrying) {
        if (source >= 0) packed.set(from.source.subarray(stream * WATER, (stream + 1) * WATER), source);
      }
      from.coefficients.forEach((coefficients, j) => {
        packed.set(coefficients, offset[j]);
      });
      return packed;
    },
  };
}

import type { RateSystem } from '../solve/contract.js';
import type { LoopsBy, Place } from '../solve/room.js';
import { waterComponents } from '../processes/components.js';
import { ownInWater } from './layout.js';
import type { Model } from './model.js';
import { layRateChain } from './rate-chain.js';
import type { CarriedTables } from './rate-loops.js';
import { RateRoom } from './rate-room.js';
import { layRateTables } from './rate-tables.js';
import type { Regime } from './model.js';
import { layWater, type PhMemory } from './water-look.js';

const WATER = waterComponents.length;

/** The rates of a model under a regime that the driver sets. */
export interface Rates {
  readonly system: RateSystem;
  readonly regime: Regime;
  /** What they remember from one evaluation to the next, changed in place. */
  readonly memory: PhMemory;
}

/** How rates are worked out. */
export interface RateOptions {
  /** Call the rate of every process place by place instead of its kernel: slow, for comparison. */
  readonly plain?: boolean;
  /** Who works them out: the module, where it is used in this thread, unless JavaScript is asked for. */
  readonly by?: LoopsBy;
}

/** Rows of what streams carry; of components of a user's own water from outside holds none. */
function layCarried(
  { streams, streamRow, ownStreamRow, dependence, layout }: Model,
  room: RateRoom,
): Place<CarriedTables> {
  const own = ownInWater(layout);
  const rows = streams.flatMap(({ from }, stream) => {
    const first = (from < 0 ? stream : from) * WATER;
    const ours =
      streamRow[stream] < 0 ? [] : waterComponents.map((_, c) => [first + c, streamRow[stream] + c]);
    const theirs =
      ownStreamRow[stream] < 0 ? [] : own.map(({ states }, c) => [states[from], ownStreamRow[stream] + c]);
    return [...ours, ...theirs].map(([at, row]) => [stream, from, at, row, dependence.start[row]]);
  });
  const [stream, from, at, row, entry] = [0, 1, 2, 3, 4].map((k) =>
    room.ints(Int32Array.from(rows, (each) => each[k])),
  );
  return room.record<CarriedTables>({ stream, from, at, row, entry, count: rows.length });
}

/** All that the rates of a model work on, and the loops that work on it. */
function layRates(model: Model, plain: boolean, by: LoopsBy) {
  const { streams, instances, dependence } = model;
  const room = new RateRoom(by);
  const tables = layRateTables(model, plain, room);
  const constants: Regime['constants'] = [];
  const wantsPh = instances.some(
    ({ process }) => (plain || process.kernel === undefined) && process.reads.includes('pH'),
  );
  const water = layWater(model, room, constants, wantsPh);
  const flow = room.floats(streams.length);
  const source = room.floats(streams.length * WATER);
  const carried = layCarried(model, room);
  const r = room.floats(model.rows.length);
  const dr = room.floats(dependence.column.length);
  const scaled = instances.filter(({ process }) => process.basis === 'volume');
  const rowOf = Int32Array.from(scaled, (instance) => instance.row);
  const vesselOf = Int32Array.from(scaled, (instance) => instance.vessel);
  return {
    tables,
    constants,
    water,
    flow,
    source,
    carried,
    r,
    dr,
    rowOf,
    vesselOf,
    chain: layRateChain(model, tables, water, dr, room),
    carry: room.bind('carry', carried, water.laid.v, flow, source, r),
    carryPartials: room.bind('carryPartials', carried, water.laid.perVolume, flow, dr),
    kernels: room.walk(tables.groups, water.laid.v, r),
    scales: room.bind('scale', r, room.ints(rowOf), room.ints(vesselOf), water.laid.volume, scaled.length),
  };
}

/**
 * Opens the rates of a model for one run. States are amounts; rates see concentrations y/V(t), and
 * pH, ammonia and carbon dioxide solved from them. All work arrays are made here, none later.
 */
export function openRates(model: Model, { plain = false, by = 'module' }: RateOptions = {}): Rates {
  const laid = layRates(model, plain, by);
  const { tables, constants, water, r, dr, rowOf, vesselOf, chain, kernels } = laid;
  // All is laid out: what follows opens the room.
  const { start, rise, hydrogen, origin, slope } = water.tables.array;
  const regime: Regime = {
    time: 0,
    volume: start,
    slope: rise,
    flow: laid.flow.array,
    source: laid.source.array,
    constants,
    coefficients: tables.coefficients.map(({ array }) => array),
  };

  /** Fills r of the room. */
  function look(t: number, y: Float64Array): void {
    water.y.array.set(y);
    water.look(t - regime.time);
    laid.carry.run();
    kernels.rates.run();
    laid.scales.run();
  }

  function evaluate(t: number, y: Float64Array, out: Float64Array): void {
    look(t, y);
    out.set(r.array);
  }

  function differentiate(t: number, y: Float64Array, byState: Float64Array, byTime: Float64Array): void {
    look(t, y);
    water.open.run();
    kernels.partials.run();
    chain.byState();
    laid.carryPartials.run();
    byState.set(dr.array);
    if (rise.every((slope) => slope === 0)) byTime.fill(0);
    else drift(byTime);
  }

  function linearise(
    t: number,
    y: Float64Array,
    out: Float64Array,
    byState: Float64Array,
    byTime: Float64Array,
  ): void {
    differentiate(t, y, byState, byTime);
    out.set(r.array);
  }

  /** Partials by time of moving volumes, with the rates known. */
  function drift(rt: Float64Array): void {
    const { v, perVolume } = water.tables.array;
    chain.byTime(rt);
    for (let i = 0; i < rowOf.length; i++) {
      const vessel = vesselOf[i];
      if (rise[vessel] === 0) continue;
      rt[rowOf[i]] += rise[vessel] * r.array[rowOf[i]] * perVolume[vessel];
    }
    const { stream, from, at, row, count } = laid.carried.array;
    for (let i = 0; i < count; i++) {
      const vessel = from[i];
      if (vessel < 0 || rise[vessel] === 0) continue;
      rt[row[i]] = -regime.flow[stream[i]] * perVolume[vessel] * rise[vessel] * v[at[i]];
    }
  }

  return {
    regime,
    memory: { hydrogen, origin, slope },
    system: {
      states: model.layout.states.length,
      rates: model.rows.length,
      stoichiometry: model.stoichiometry,
      dependence: model.dependence,
      evaluate,
      differentiate,
      linearise,
    },
  };
}

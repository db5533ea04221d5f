import type { RateSystem } from '../solve/contract.js';
import type { Floats, LoopsBy } from '../solve/room.js';
import { waterComponents } from '../processes/components.js';
import { ownInWater } from './layout.js';
import type { Model } from './model.js';
import { layRateChain } from './rate-chain.js';
import type { StreamTables } from './rate-loops.js';
import { RateRoom } from './rate-room.js';
import { layRateTables } from './rate-tables.js';
import type { Regime } from './model.js';
import { layWater, type PhMemory, type WaterLook } from './water-look.js';

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

/** What moves with the water, as it is laid out. */
interface Flows {
  readonly flow: Floats;
  readonly source: Floats;
  readonly slope: Floats;
}

/** What streams carry: rates of their rows, and the partials of these by states and by time. */
interface Transport {
  rates(r: Float64Array): void;
  byState(dr: Float64Array): void;
  /** Where volumes move. */
  byTime(rt: Float64Array): void;
}

/** What streams carry of components of a user's own: water from outside holds none. */
function openOwnTransport(
  { streams, ownStreamRow, dependence, layout }: Model,
  regime: Flows,
  water: WaterLook,
): Transport | undefined {
  const own = ownInWater(layout);
  const carried = streams.flatMap(({ from }, stream) =>
    ownStreamRow[stream] < 0
      ? []
      : own.map(({ states }, c) => ({ stream, from, state: states[from], row: ownStreamRow[stream] + c })),
  );
  if (carried.length === 0) return undefined;
  return {
    rates(r) {
      const { v } = water.tables.array;
      for (const { stream, state, row } of carried) r[row] = regime.flow.array[stream] * v[state];
    },
    byState(dr) {
      const { perVolume } = water.tables.array;
      for (const { stream, from, row } of carried)
        dr[dependence.start[row]] = regime.flow.array[stream] * perVolume[from];
    },
    byTime(rt) {
      const { v, perVolume } = water.tables.array;
      for (const { stream, from, state, row } of carried)
        rt[row] = -regime.flow.array[stream] * perVolume[from] * regime.slope.array[from] * v[state];
    },
  };
}

/** Where rates and their partials by states go. */
interface Targets {
  readonly r: Floats;
  readonly dr: Floats;
}

/** Streams in a room; rates go to `r`, partials to `dr`, whatever they are handed. */
function layTransport(
  { streams, streamRow, dependence }: Model,
  { flow, source, slope }: Flows,
  water: WaterLook,
  { r, dr }: Targets,
  room: RateRoom,
): Transport {
  const carrying = streams.flatMap((_, index) => (streamRow[index] < 0 ? [] : [index]));
  const fromOf = Int32Array.from(carrying, (index) => streams[index].from);
  const firstRow = Int32Array.from(carrying, (index) => streamRow[index]);
  const tables = room.record<StreamTables>({
    stream: room.ints(Int32Array.from(carrying)),
    from: room.ints(fromOf),
    row: room.ints(firstRow),
    entry: room.ints(firstRow.map((row) => dependence.start[row])),
    count: carrying.length,
    components: WATER,
  });
  const { v, perVolume } = water.laid;
  const rates = room.bind('carry', tables, v, flow, source, r);
  const partials = room.bind('carryPartials', tables, perVolume, flow, dr);
  return {
    rates: () => {
      rates.run();
    },
    byState: () => {
      partials.run();
    },
    byTime(rt) {
      const { v, perVolume } = water.tables.array;
      carrying.forEach((stream, s) => {
        const from = fromOf[s];
        const rise = from < 0 ? 0 : slope.array[from];
        if (rise === 0) return;
        const perDay = -flow.array[stream] * perVolume[from] * rise;
        for (let c = 0; c < WATER; c++) rt[firstRow[s] + c] = perDay * v[from * WATER + c];
      });
    },
  };
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
  const flows = {
    flow: room.floats(streams.length),
    source: room.floats(streams.length * WATER),
    slope: water.laid.rise,
  };
  const r = room.floats(model.rows.length);
  const dr = room.floats(dependence.column.length);
  const scaled = instances.filter(({ process }) => process.basis === 'volume');
  const rowOf = Int32Array.from(scaled, (instance) => instance.row);
  const vesselOf = Int32Array.from(scaled, (instance) => instance.vessel);
  return {
    tables,
    constants,
    water,
    flows,
    r,
    dr,
    rowOf,
    vesselOf,
    chain: layRateChain(model, tables, water, dr, room),
    transport: layTransport(model, flows, water, { r, dr }, room),
    own: openOwnTransport(model, flows, water),
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
  const { tables, constants, water, flows, r, dr, rowOf, vesselOf, chain, transport, own, kernels } = laid;
  // All is laid out: what follows opens the room.
  const { start, rise, hydrogen, origin, slope } = water.tables.array;
  const regime: Regime = {
    time: 0,
    volume: start,
    slope: rise,
    flow: flows.flow.array,
    source: flows.source.array,
    constants,
    coefficients: tables.coefficients.map(({ array }) => array),
  };

  /** Fills r of the room. */
  function look(t: number, y: Float64Array): void {
    water.y.array.set(y);
    water.look(t - regime.time);
    transport.rates(r.array);
    own?.rates(r.array);
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
    transport.byState(dr.array);
    own?.byState(dr.array);
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
    const { perVolume } = water.tables.array;
    chain.byTime(rt);
    for (let i = 0; i < rowOf.length; i++) {
      const vessel = vesselOf[i];
      if (rise[vessel] === 0) continue;
      rt[rowOf[i]] += rise[vessel] * r.array[rowOf[i]] * perVolume[vessel];
    }
    transport.byTime(rt);
    own?.byTime(rt);
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

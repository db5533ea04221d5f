import type { RateSystem } from '../solve/contract.js';
import { waterComponents } from '../processes/components.js';
import { ownInWater } from './layout.js';
import type { Model } from './model.js';
import { openRateChain } from './rate-chain.js';
import { layRateTables } from './rate-tables.js';
import type { Regime } from './model.js';
import { openWaterLook, type PhMemory, type WaterLook } from './water-look.js';

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
  regime: Regime,
  { v, perVolume }: WaterLook,
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
      for (const { stream, state, row } of carried) r[row] = regime.flow[stream] * v[state];
    },
    byState(dr) {
      for (const { stream, from, row } of carried)
        dr[dependence.start[row]] = regime.flow[stream] * perVolume[from];
    },
    byTime(rt) {
      for (const { stream, from, state, row } of carried)
        rt[row] = -regime.flow[stream] * perVolume[from] * regime.slope[from] * v[state];
    },
  };
}

function openTransport(
  { streams, streamRow, dependence }: Model,
  regime: Regime,
  { v, perVolume }: WaterLook,
): Transport {
  const carrying = streams.flatMap((_, index) => (streamRow[index] < 0 ? [] : [index]));
  const streamOf = Int32Array.from(carrying);
  const fromOf = Int32Array.from(carrying, (index) => streams[index].from);
  const firstRow = Int32Array.from(carrying, (index) => streamRow[index]);
  return {
    rates(r) {
      for (let s = 0; s < streamOf.length; s++) {
        const flow = regime.flow[streamOf[s]];
        const row = firstRow[s];
        const from = fromOf[s];
        const values = from < 0 ? regime.source : v;
        const first = (from < 0 ? streamOf[s] : from) * WATER;
        for (let c = 0; c < WATER; c++) r[row + c] = flow * values[first + c];
      }
    },
    byState(dr) {
      for (let s = 0; s < streamOf.length; s++) {
        const from = fromOf[s];
        if (from < 0) continue;
        const perDay = regime.flow[streamOf[s]] * perVolume[from];
        const entry = dependence.start[firstRow[s]];
        for (let c = 0; c < WATER; c++) dr[entry + c] = perDay;
      }
    },
    byTime(rt) {
      for (let s = 0; s < streamOf.length; s++) {
        const from = fromOf[s];
        if (from < 0 || regime.slope[from] === 0) continue;
        const perDay = -regime.flow[streamOf[s]] * perVolume[from] * regime.slope[from];
        for (let c = 0; c < WATER; c++) rt[firstRow[s] + c] = perDay * v[from * WATER + c];
      }
    },
  };
}

/**
 * Opens the rates of a model for one run. States are amounts; rates see concentrations y/V(t), and
 * pH, ammonia and carbon dioxide solved from them. All work arrays are made here, none later.
 */
export function openRates(model: Model, options: RateOptions = {}): Rates {
  const { layout, streams, instances, dependence } = model;
  const states = layout.states.length;
  const vesselCount = layout.vessels.length;
  const plain = options.plain ?? false;
  const tables = layRateTables(model, plain);
  const { groups, coefficients } = tables;
  const regime: Regime = {
    time: 0,
    volume: new Float64Array(vesselCount),
    slope: new Float64Array(vesselCount),
    flow: new Float64Array(streams.length),
    source: new Float64Array(streams.length * WATER),
    constants: [],
    coefficients,
  };
  const wantsPh = instances.some(
    ({ process }) => (plain || process.kernel === undefined) && process.reads.includes('pH'),
  );
  const water = openWaterLook(model, regime, wantsPh);
  const { v, volume, perVolume } = water;
  const chain = openRateChain(model, regime, tables, water);
  const transport = openTransport(model, regime, water);
  const own = openOwnTransport(model, regime, water);
  const scaled = Int32Array.from(
    instances.flatMap(({ process }, j) => (process.basis === 'volume' ? [j] : [])),
  );
  const vesselOf = Int32Array.from(instances, (instance) => instance.vessel);
  const rowOf = Int32Array.from(instances, (instance) => instance.row);
  const scratch = new Float64Array(model.rows.length);

  function atPlaces(r: Float64Array): void {
    for (const { kernel, sites } of groups) kernel.rates(sites, v, r);
    for (let i = 0; i < scaled.length; i++) r[rowOf[scaled[i]]] *= volume[vesselOf[scaled[i]]];
  }

  function evaluate(t: number, y: Float64Array, r: Float64Array): void {
    water.look(t, y);
    transport.rates(r);
    own?.rates(r);
    atPlaces(r);
  }

  function differentiate(t: number, y: Float64Array, dr: Float64Array, rt: Float64Array): void {
    linearise(t, y, scratch, dr, rt);
  }

  function linearise(t: number, y: Float64Array, r: Float64Array, dr: Float64Array, rt: Float64Array): void {
    evaluate(t, y, r);
    water.open();
    for (const { kernel, sites } of groups) kernel.partials(sites, v);
    chain.byState(dr);
    transport.byState(dr);
    own?.byState(dr);
    if (regime.slope.every((slope) => slope === 0)) rt.fill(0);
    else drift(r, rt);
  }

  /** Partials by time of moving volumes, with the rates known. */
  function drift(r: Float64Array, rt: Float64Array): void {
    chain.byTime(rt);
    for (let i = 0; i < scaled.length; i++) {
      const vessel = vesselOf[scaled[i]];
      if (regime.slope[vessel] === 0) continue;
      const row = rowOf[scaled[i]];
      rt[row] += regime.slope[vessel] * r[row] * perVolume[vessel];
    }
    transport.byTime(rt);
    own?.byTime(rt);
  }

  return {
    regime,
    memory: water.memory,
    system: {
      states,
      rates: model.rows.length,
      stoichiometry: model.stoichiometry,
      dependence,
      evaluate,
      differentiate,
      linearise,
    },
  };
}

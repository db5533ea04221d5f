import { SPECIATION } from '../chemistry/acid-base.js';
import type { Floats } from '../solve/room.js';
import { groupProducts } from '../solve/sums-of-products.js';
import { waterComponents } from '../processes/components.js';
import { waterRead } from './instance.js';
import { ownInWater } from './layout.js';
import type { Model } from './model.js';
import { AMOUNT, CHEMISTRY, CONCENTRATION, type RateTables } from './rate-tables.js';
import type { RateRoom } from './rate-room.js';
import type { WaterLook } from './water-look.js';

const WATER = waterComponents.length;
/** Components that chemistry depends on, in the order of its partials. */
const ACIDS = (['tan', 'alkalinity', 'carbon'] as const).map((name) => waterComponents.indexOf(name));
const VALUES = 4;
const SPREAD = VALUES * ACIDS.length;

/** Factors of one vessel by which partials of a process at a place become partials by states (m: 0 whole, 1 per m3). */
const PER_STATE = 2 * (2 + SPREAD);
const byConcentration = (m: number): number => m * (2 + SPREAD);
const byAmount = (m: number): number => m * (2 + SPREAD) + 1;
const byAcid = (m: number, value: number, acid: number): number =>
  m * (2 + SPREAD) + 2 + value * ACIDS.length + acid;

/**
 * Factors of one vessel by which they become partials by time, as its water spreads out: of each component (ours, then the
 * user's own that go with the water), then of each value of chemistry; m times `one` of them further on, as above.
 */
interface Drifts {
  readonly components: number;
  readonly one: number;
}

/** The chain rule from partials by variables, as kernels leave them, to partials by states and time. */
export interface RateChain {
  /** Fills the partials by states of every process; the rows of transport get 0. */
  byState(): void;
  /** Fills rt for every process that reads only the state of its water; the rows of transport get 0. */
  byTime(rt: Float64Array): void;
}

/** Places of products of a partial and a factor of a vessel, and where their sum goes. */
interface Products {
  readonly to: number[];
  readonly partial: number[];
  readonly factor: number[];
}

/** Which products make the partials by states and by time. */
function layProducts(
  { instances, layout }: Model,
  { reads, at, kind, slot }: RateTables,
  { drifts, own }: { readonly drifts: Drifts; readonly own: readonly (readonly number[])[] },
): { readonly state: Products; readonly time: readonly Products[] } {
  const none = (): Products => ({ to: [], partial: [], factor: [] });
  const state = none();
  const times = layout.vessels.map(none);
  const add = (list: Products, to: number, partial: number, factor: number): void => {
    list.to.push(to);
    list.partial.push(partial);
    list.factor.push(factor);
  };
  instances.forEach((instance, j) => {
    const { process, row } = instance;
    const vessel = waterRead(instance);
    const m = process.basis === 'volume' ? 1 : 0;
    const s = vessel * PER_STATE;
    const t = vessel * 2 * drifts.one;
    const time = times[vessel];
    const componentOf = (state: number): number => {
      const extra = own.findIndex((states) => states[vessel] === state);
      return extra < 0 ? state - vessel * WATER : WATER + extra;
    };
    for (let q = reads[j]; q < reads[j + 1]; q++) {
      if (kind[q] === CONCENTRATION) {
        add(state, slot[3 * q], q, s + byConcentration(m));
        add(time, row, q, t + m * drifts.one + componentOf(at[q]));
      } else if (kind[q] === AMOUNT) add(state, slot[3 * q], q, s + byAmount(m));
      else {
        const value = kind[q] - CHEMISTRY;
        ACIDS.forEach((_, acid) => {
          add(state, slot[3 * q + acid], q, s + byAcid(m, value, acid));
        });
        add(time, row, q, t + m * drifts.one + drifts.components + value);
      }
    }
  });
  return { state, time: times };
}

/**
 * Lays the chain rule of a model out as sums of products of partials and factors.
 * @param dr where the partials by states go
 */
export function layRateChain(
  model: Model,
  tables: RateTables,
  water: WaterLook,
  dr: Floats,
  room: RateRoom,
): RateChain {
  const vesselCount = model.layout.vessels.length;
  const own = ownInWater(model.layout).map(({ states }) => states);
  const components = WATER + own.length;
  const one = components + VALUES;
  const { state, time } = layProducts(model, tables, { drifts: { components, one }, own });
  const entries = model.dependence.column.length;
  const products = groupProducts(state.to, state.partial, state.factor, entries);
  const [start, left, right] = [products.start, products.left, products.right].map((part) => room.ints(part));
  const perState = room.floats(PER_STATE * vesselCount);
  const factors = room.bind('factorsOf', water.tables, perState, VALUES, SPREAD);
  const toStates = room.bind('sums', tables.d, perState, dr, start, left, right, entries, 0);
  const perTime = new Float64Array(2 * one * vesselCount);

  return {
    byState() {
      factors.run();
      toStates.run();
    },
    byTime(rt) {
      rt.fill(0);
      for (let vessel = 0; vessel < vesselCount; vessel++) {
        const spread = -water.tables.array.rise[vessel];
        if (spread !== 0) ofVessel(vessel, spread, rt);
      }
    },
  };

  /** Adds what a vessel whose volume moves makes of the partials by time. */
  function ofVessel(vessel: number, spread: number, rt: Float64Array): void {
    const { v, perVolume, speciation } = water.tables.array;
    const d = tables.d.array;
    const t = vessel * 2 * one;
    const first = vessel * WATER;
    for (let c = 0; c < WATER; c++) {
      const drift = spread * v[first + c];
      perTime[t + c] = drift * perVolume[vessel];
      perTime[t + one + c] = drift;
    }
    for (let c = 0; c < own.length; c++) {
      const drift = spread * v[own[c][vessel]];
      perTime[t + WATER + c] = drift * perVolume[vessel];
      perTime[t + one + WATER + c] = drift;
    }
    for (let value = 0; value < VALUES; value++) {
      const o = vessel * SPECIATION + VALUES + value * ACIDS.length;
      let drift = 0;
      for (let acid = 0; acid < ACIDS.length; acid++) drift += speciation[o + acid] * v[first + ACIDS[acid]];
      drift *= spread;
      perTime[t + components + value] = drift * perVolume[vessel];
      perTime[t + one + components + value] = drift;
    }
    const { to, partial, factor } = time[vessel];
    for (let e = 0; e < to.length; e++) rt[to[e]] += d[partial[e]] * perTime[factor[e]];
  }
}

import { SPECIATION } from '../chemistry/acid-base.js';
import { groupProducts, SumsOfProducts } from '../solve/sums-of-products.js';
import { waterComponents } from '../processes/components.js';
import { waterRead } from './instance.js';
import type { Model } from './model.js';
import { AMOUNT, CHEMISTRY, CONCENTRATION, type RateTables } from './rate-tables.js';
import type { Regime } from './model.js';
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

/** Factors of one vessel by which they become partials by time, as its water spreads out. */
const PER_TIME = 2 * (WATER + VALUES);
const driftOf = (m: number, component: number): number => m * (WATER + VALUES) + component;
const driftOfValue = (m: number, value: number): number => m * (WATER + VALUES) + WATER + value;

/** The chain rule from partials by variables, as kernels leave them, to partials by states and time. */
export interface RateChain {
  /** Fills dr for every process; the rows of transport get 0. */
  byState(dr: Float64Array): void;
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
  { instances }: Model,
  { reads, at, kind, slot }: RateTables,
): { readonly state: Products; readonly time: Products } {
  const state: Products = { to: [], partial: [], factor: [] };
  const time: Products = { to: [], partial: [], factor: [] };
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
    const t = vessel * PER_TIME;
    for (let q = reads[j]; q < reads[j + 1]; q++) {
      if (kind[q] === CONCENTRATION) {
        add(state, slot[3 * q], q, s + byConcentration(m));
        add(time, row, q, t + driftOf(m, at[q] - vessel * WATER));
      } else if (kind[q] === AMOUNT) add(state, slot[3 * q], q, s + byAmount(m));
      else {
        const value = kind[q] - CHEMISTRY;
        ACIDS.forEach((_, acid) => {
          add(state, slot[3 * q + acid], q, s + byAcid(m, value, acid));
        });
        add(time, row, q, t + driftOfValue(m, value));
      }
    }
  });
  return { state, time };
}

/** Lays the chain rule of a model out as sums of products of partials and factors. */
export function openRateChain(
  model: Model,
  regime: Regime,
  tables: RateTables,
  { v, volume, perVolume, speciation }: WaterLook,
): RateChain {
  const { dependence } = model;
  const { d } = tables;
  const vesselCount = model.layout.vessels.length;
  const { state, time } = layProducts(model, tables);
  const entries = dependence.column.length;
  const toStates = new SumsOfProducts(groupProducts(state.to, state.partial, state.factor, entries), 'set');
  const toTime = new SumsOfProducts(
    groupProducts(time.to, time.partial, time.factor, model.rows.length),
    'set',
  );
  const perState = new Float64Array(PER_STATE * vesselCount);
  const perTime = new Float64Array(PER_TIME * vesselCount);

  return {
    byState(dr) {
      for (let vessel = 0; vessel < vesselCount; vessel++) {
        const s = vessel * PER_STATE;
        const size = volume[vessel];
        const inverse = perVolume[vessel];
        perState[s] = inverse;
        perState[s + 1] = 1;
        perState[s + 2 + SPREAD] = 1;
        perState[s + 3 + SPREAD] = size;
        const o = vessel * SPECIATION + VALUES;
        for (let e = 0; e < SPREAD; e++) {
          perState[s + 2 + e] = speciation[o + e] * inverse;
          perState[s + 4 + SPREAD + e] = speciation[o + e];
        }
      }
      toStates.apply(d, perState, dr);
    },
    byTime(rt) {
      for (let vessel = 0; vessel < vesselCount; vessel++) {
        const t = vessel * PER_TIME;
        const first = vessel * WATER;
        const spread = -regime.slope[vessel];
        for (let c = 0; c < WATER; c++) {
          const drift = spread * v[first + c];
          perTime[t + c] = drift * perVolume[vessel];
          perTime[t + WATER + VALUES + c] = drift;
        }
        for (let value = 0; value < VALUES; value++) {
          const o = vessel * SPECIATION + VALUES + value * ACIDS.length;
          let drift = 0;
          for (let acid = 0; acid < ACIDS.length; acid++)
            drift += speciation[o + acid] * v[first + ACIDS[acid]];
          drift *= spread;
          perTime[t + WATER + value] = drift * perVolume[vessel];
          perTime[t + 2 * WATER + VALUES + value] = drift;
        }
      }
      toTime.apply(d, perTime, rt);
    },
  };
}

import { hydrogenIon, speciate, SPECIATION } from '../chemistry/acid-base.js';
import type { RateSystem } from '../solve/contract.js';
import { waterComponents } from './component.js';
import type { Instance } from './instance.js';
import { waterState } from './layout.js';
import type { Model } from './model.js';
import type { Regime } from './regime.js';

const WATER = waterComponents.length;
const TAN = waterComponents.indexOf('tan');
const ALKALINITY = waterComponents.indexOf('alkalinity');
const CARBON = waterComponents.indexOf('carbon');

/** What a partial belongs to: 0 a concentration, 1 an amount, 2..4 pH, ammonia, carbon dioxide. */
interface Plan {
  readonly kind: Int32Array;
  /** Slots in the row's partials: one, or three (TAN, alkalinity, carbon) for chemistry. */
  readonly slot: Int32Array;
  readonly at: Int32Array;
}

/** The rates of a model under a regime that the driver sets. */
export interface Rates {
  readonly system: RateSystem;
  readonly regime: Regime;
}

function planOf(model: Model, instance: Instance): Plan {
  const { start, column } = model.dependence;
  const states = model.layout.states.length;
  const slotOf = (state: number): number => {
    for (let e = start[instance.row]; e < start[instance.row + 1]; e++) if (column[e] === state) return e;
    throw new RangeError(`${instance.process.id} depends on a state that was not laid out`);
  };
  const reads = instance.reads;
  const kind = new Int32Array(reads.length);
  const slot = new Int32Array(reads.length * 3);
  const at = new Int32Array(reads.length);
  reads.forEach((reading, m) => {
    if (reading.kind === 'chemistry') {
      kind[m] = 2 + reading.which;
      at[m] = states + 3 * instance.cell + reading.which;
      slot[3 * m] = slotOf(waterState(instance.cell, 'tan'));
      slot[3 * m + 1] = slotOf(waterState(instance.cell, 'alkalinity'));
      slot[3 * m + 2] = slotOf(waterState(instance.cell, 'carbon'));
    } else {
      kind[m] = reading.kind === 'concentration' ? 0 : 1;
      at[m] = reading.state;
      slot[3 * m] = slotOf(reading.state);
    }
  });
  return { kind, slot, at };
}

/**
 * Opens the rates of a model for one run. States are amounts; rates see concentrations y/V(t), and
 * pH, ammonia and carbon dioxide solved from them. All work arrays are made here, none later.
 */
export function openRates(model: Model): Rates {
  const { layout, streams, streamRow, instances, dependence } = model;
  const states = layout.states.length;
  const cells = layout.cells.length;
  const molarNitrogen = model.parameters.value('molar.nitrogen');
  const regime: Regime = {
    time: 0,
    volume: new Float64Array(cells),
    slope: new Float64Array(cells),
    flow: new Float64Array(streams.length),
    source: new Float64Array(streams.length * WATER),
    constants: [],
    coefficients: instances.map(() => new Float64Array(0)),
  };
  const volume = new Float64Array(cells);
  const perVolume = new Float64Array(cells);
  const v = new Float64Array(states + 3 * cells);
  const hydrogen = new Float64Array(cells).fill(1e-4);
  const speciation = new Float64Array(cells * SPECIATION);
  const d = new Float64Array(16);
  const carrying = streams
    .map((stream, index) => ({ index, from: stream.from, row: streamRow[index] }))
    .filter((stream) => stream.row >= 0);
  const plans = instances.map((instance) => planOf(model, instance));
  const volumetric = Uint8Array.from(instances, (instance) => (instance.process.basis === 'volume' ? 1 : 0));
  const cellOf = Int32Array.from(instances, (instance) => instance.cell);
  const rowOf = Int32Array.from(instances, (instance) => instance.row);
  const rateOf = instances.map((instance) => instance.process.rate);
  const partialsOf = instances.map((instance) => instance.process.partials);

  function look(t: number, y: Float64Array): void {
    for (let s = cells * WATER; s < states; s++) v[s] = y[s];
    for (let cell = 0; cell < cells; cell++) {
      const size = regime.volume[cell] + regime.slope[cell] * (t - regime.time);
      volume[cell] = size;
      const inverse = 1 / size;
      perVolume[cell] = inverse;
      const first = cell * WATER;
      for (let s = first; s < first + WATER; s++) v[s] = y[s] * inverse;
      const tan = v[first + TAN];
      const carbon = v[first + CARBON];
      const k = regime.constants[cell];
      const h = hydrogenIon(v[first + ALKALINITY], carbon, tan / molarNitrogen, k, hydrogen[cell]);
      if (h > 0) hydrogen[cell] = h;
      speciate(tan, carbon, h, k, molarNitrogen, speciation, cell * SPECIATION);
      v[states + 3 * cell] = speciation[cell * SPECIATION];
      v[states + 3 * cell + 1] = speciation[cell * SPECIATION + 1];
      v[states + 3 * cell + 2] = speciation[cell * SPECIATION + 2];
    }
  }

  function evaluate(t: number, y: Float64Array, r: Float64Array): void {
    look(t, y);
    for (const { index, from, row } of carrying) {
      const flow = regime.flow[index];
      if (from < 0) for (let c = 0; c < WATER; c++) r[row + c] = flow * regime.source[index * WATER + c];
      else for (let c = 0; c < WATER; c++) r[row + c] = flow * v[from * WATER + c];
    }
    for (let j = 0; j < instances.length; j++) {
      const rate = rateOf[j](v, plans[j].at, regime.coefficients[j]);
      r[rowOf[j]] = volumetric[j] === 1 ? rate * volume[cellOf[j]] : rate;
    }
  }

  function differentiate(t: number, y: Float64Array, dr: Float64Array, rt: Float64Array): void {
    look(t, y);
    dr.fill(0);
    rt.fill(0);
    for (const { index, from, row } of carrying) {
      if (from < 0) continue;
      const perDay = regime.flow[index] * perVolume[from];
      const drift = -perDay * regime.slope[from];
      for (let c = 0; c < WATER; c++) {
        dr[dependence.start[row + c]] = perDay;
        rt[row + c] = drift * v[from * WATER + c];
      }
    }
    for (let j = 0; j < instances.length; j++) {
      const { kind, slot, at } = plans[j];
      const cell = cellOf[j];
      const k = regime.coefficients[j];
      partialsOf[j](v, at, k, d);
      const scale = volumetric[j] === 1 ? 1 : perVolume[cell];
      const amount = volumetric[j] === 1 ? volume[cell] : 1;
      // How the rate falls as the same amounts spread through more water: sum of partial x concentration.
      let dilution = 0;
      for (let m = 0; m < kind.length; m++) {
        const partial = d[m];
        if (kind[m] === 0) {
          dr[slot[3 * m]] += partial * scale;
          dilution += partial * v[at[m]];
        } else if (kind[m] === 1) {
          dr[slot[3 * m]] += partial * amount;
        } else {
          const o = cell * SPECIATION + 3 * (kind[m] - 1);
          const first = cell * WATER;
          dr[slot[3 * m]] += partial * speciation[o] * scale;
          dr[slot[3 * m + 1]] += partial * speciation[o + 1] * scale;
          dr[slot[3 * m + 2]] += partial * speciation[o + 2] * scale;
          dilution +=
            partial *
            (speciation[o] * v[first + TAN] +
              speciation[o + 1] * v[first + ALKALINITY] +
              speciation[o + 2] * v[first + CARBON]);
        }
      }
      const slope = regime.slope[cell];
      if (slope !== 0) {
        rt[rowOf[j]] =
          volumetric[j] === 1
            ? slope * (rateOf[j](v, at, k) - dilution)
            : -slope * perVolume[cell] * dilution;
      }
    }
  }

  return {
    regime,
    system: {
      states,
      rates: model.rows.length,
      stoichiometry: model.stoichiometry,
      dependence,
      evaluate,
      differentiate,
    },
  };
}

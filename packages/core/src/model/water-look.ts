// Reads numbers as: chemistry of a vessel
import { pHOf, speciate, SPECIATION } from '../chemistry/acid-base.js';
import { hydrogenNear } from '../chemistry/acid-base.js';
import { waterComponents } from '../processes/components.js';
import { ownInWater } from './layout.js';
import type { Model } from './model.js';
import { DERIVED } from './rate-tables.js';
import type { Regime } from './model.js';

const WATER = waterComponents.length;
const TAN = waterComponents.indexOf('tan');
const ALKALINITY = waterComponents.indexOf('alkalinity');
const CARBON = waterComponents.indexOf('carbon');
/** A predicted hydrogen ion off by more than this factor from where it is predicted from is not used. */
const TRUSTED = 2;

/** Where the search for the hydrogen ion of each vessel begins. Plain data; it decides the last places of a root. */
export interface PhMemory {
  /** The last root, mol m-3. */
  readonly hydrogen: Float64Array;
  /** Where partials were last taken: TAN, alkalinity, carbon and root. */
  readonly origin: Float64Array;
  /** Partials of the root there, by the first three. */
  readonly slope: Float64Array;
}

/** What rates read at one point (t, y). All arrays are made once. */
export interface WaterLook {
  /** Values of all variables: concentrations, amounts, then `DERIVED` values for each vessel. */
  readonly v: Float64Array;
  readonly volume: Float64Array;
  readonly perVolume: Float64Array;
  readonly memory: PhMemory;
  /** As `speciate` fills it, for each vessel; after `open` only. */
  readonly speciation: Float64Array;
  /** Fills v, volume and perVolume. */
  look(t: number, y: Float64Array): void;
  /** Fills the partials of chemistry at the point looked at last, and predicts from there in later looks. */
  open(): void;
}

/**
 * Opens the water of a model.
 * @param wantsPh whether a rate reads the pH itself, and not the hydrogen ion
 */
export function openWaterLook(model: Model, regime: Regime, wantsPh: boolean): WaterLook {
  const states = model.layout.states.length;
  const vesselCount = model.layout.vessels.length;
  const molarNitrogen = model.parameters.value('molar.nitrogen');
  const v = new Float64Array(states + DERIVED * vesselCount);
  const volume = new Float64Array(vesselCount);
  const perVolume = new Float64Array(vesselCount);
  const speciation = new Float64Array(vesselCount * SPECIATION);
  const hydrogen = new Float64Array(vesselCount).fill(1e-4);
  const origin = new Float64Array(4 * vesselCount).fill(Number.NaN);
  const slope = new Float64Array(3 * vesselCount);
  const own = ownInWater(model.layout).map(({ states }) => states);

  /** A start for h: on the tangent from where the partials were taken, or the last root. */
  function guessOf(vessel: number, tan: number, alkalinity: number, carbon: number): number {
    const o = 4 * vessel;
    const s = 3 * vessel;
    const from = origin[o + 3];
    const guess =
      from +
      slope[s] * (tan - origin[o]) +
      slope[s + 1] * (alkalinity - origin[o + 1]) +
      slope[s + 2] * (carbon - origin[o + 2]);
    return guess * TRUSTED > from && guess < from * TRUSTED ? guess : hydrogen[vessel];
  }

  function look(t: number, y: Float64Array): void {
    const since = t - regime.time;
    for (let s = vesselCount * WATER; s < states; s++) v[s] = y[s];
    for (let vessel = 0; vessel < vesselCount; vessel++) {
      const size = regime.volume[vessel] + regime.slope[vessel] * since;
      const inverse = 1 / size;
      volume[vessel] = size;
      perVolume[vessel] = inverse;
      const first = vessel * WATER;
      for (let s = first; s < first + WATER; s++) v[s] = y[s] * inverse;
      for (const state of own) v[state[vessel]] = y[state[vessel]] * inverse;
      const tan = v[first + TAN];
      const carbon = v[first + CARBON];
      const alkalinity = v[first + ALKALINITY];
      const k = regime.constants[vessel];
      const guess = guessOf(vessel, tan, alkalinity, carbon);
      const h = hydrogenNear(alkalinity, carbon, tan / molarNitrogen, k, guess);
      if (h > 0) hydrogen[vessel] = h;
      const o = states + DERIVED * vessel;
      const square = h * h;
      const sum = square + k.k1 * h + k.k1 * k.k2;
      if (wantsPh) v[o] = pHOf(h);
      v[o + 1] = (tan * k.ammonium) / (k.ammonium + h);
      v[o + 2] = (carbon * square) / sum;
      v[o + 3] = (carbon * k.k1 * k.k2) / (sum * k.calcite);
      v[o + 4] = h;
    }
  }

  function open(): void {
    for (let vessel = 0; vessel < vesselCount; vessel++) {
      const first = vessel * WATER;
      const h = v[states + DERIVED * vessel + 4];
      const o = vessel * SPECIATION;
      const k = regime.constants[vessel];
      speciate(v[first + TAN], v[first + CARBON], h, k, molarNitrogen, speciation, o);
      origin[4 * vessel] = v[first + TAN];
      origin[4 * vessel + 1] = v[first + ALKALINITY];
      origin[4 * vessel + 2] = v[first + CARBON];
      origin[4 * vessel + 3] = h;
      // From partials of the pH to those of h.
      const perPh = -Math.LN10 * h;
      for (let m = 0; m < 3; m++) slope[3 * vessel + m] = speciation[o + 4 + m] * perPh;
    }
  }

  return { v, volume, perVolume, memory: { hydrogen, origin, slope }, speciation, look, open };
}

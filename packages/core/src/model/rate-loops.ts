/**
 * What rates do beside their laws, as loops over the tables of a model, in the subset of TypeScript that `tools/module` makes
 * WebAssembly of: the module and these functions as they stand give the same bytes.
 */
import type { i32 } from '../base/whole.js';
import { type AcidBaseConstants, hydrogenNear, pHOf, speciate, SPECIATION } from '../chemistry/acid-base.js';

/** Values of chemistry that v holds for each vessel after the states: pH, ammonia, carbon dioxide, saturation, hydrogen ion. */
export const DERIVED = 5;

/** A predicted hydrogen ion off by more than this factor from where it is predicted from is not used. */
const TRUSTED = 2;

/** The water of all vessels. */
export interface WaterTables {
  /** Values of all variables: concentrations, amounts, then `DERIVED` values for each vessel. */
  readonly v: Float64Array;
  readonly volume: Float64Array;
  readonly perVolume: Float64Array;
  /** Days since the segment began, one number; volumes at that time, and by how much they rise, m3 d-1. */
  readonly since: Float64Array;
  readonly start: Float64Array;
  readonly rise: Float64Array;
  /** Where the search for the hydrogen ion begins: see `PhMemory`. */
  readonly hydrogen: Float64Array;
  readonly origin: Float64Array;
  readonly slope: Float64Array;
  /** As `speciate` fills it, for each vessel. */
  readonly speciation: Float64Array;
  /** State of each component of a user's own that goes with the water, in each vessel. */
  readonly own: Int32Array;
  readonly owns: i32;
  readonly vessels: i32;
  readonly states: i32;
  /** Components of water in a vessel, and which of them chemistry depends on. */
  readonly components: i32;
  readonly tan: i32;
  readonly alkalinity: i32;
  readonly carbon: i32;
  /** Whether a rate reads the pH itself, and not the hydrogen ion: 1. */
  readonly wantsPh: i32;
}

/** A start for the hydrogen ion: on the tangent from where the partials were taken, or the last root. */
function guessOf(water: WaterTables, vessel: i32, tan: number, alkalinity: number, carbon: number): number {
  const { origin, slope } = water;
  const o = 4 * vessel;
  const s = 3 * vessel;
  const from = origin[o + 3];
  const guess =
    from +
    slope[s] * (tan - origin[o]) +
    slope[s + 1] * (alkalinity - origin[o + 1]) +
    slope[s + 2] * (carbon - origin[o + 2]);
  return guess * TRUSTED > from && guess < from * TRUSTED ? guess : water.hydrogen[vessel];
}

/** Fills v, volume and perVolume from the states y. */
export function look(
  water: WaterTables,
  y: Float64Array,
  constants: readonly AcidBaseConstants[],
  molarNitrogen: number,
): void {
  const { v, vessels, states, components, own, hydrogen } = water;
  for (let s = vessels * components; s < states; s++) v[s] = y[s];
  for (let vessel = 0; vessel < vessels; vessel++) {
    const size = water.start[vessel] + water.rise[vessel] * water.since[0];
    const inverse = 1 / size;
    water.volume[vessel] = size;
    water.perVolume[vessel] = inverse;
    const first = vessel * components;
    for (let s = first; s < first + components; s++) v[s] = y[s] * inverse;
    for (let c = 0; c < water.owns; c++) {
      const state = own[c * vessels + vessel];
      v[state] = y[state] * inverse;
    }
    const tan = v[first + water.tan];
    const carbon = v[first + water.carbon];
    const alkalinity = v[first + water.alkalinity];
    const k = constants[vessel];
    const guess = guessOf(water, vessel, tan, alkalinity, carbon);
    const h = hydrogenNear(alkalinity, carbon, tan / molarNitrogen, k, guess);
    if (h > 0) hydrogen[vessel] = h;
    const o = states + DERIVED * vessel;
    const square = h * h;
    const sum = square + k.k1 * h + k.k1 * k.k2;
    if (water.wantsPh === 1) v[o] = pHOf(h);
    v[o + 1] = (tan * k.ammonium) / (k.ammonium + h);
    v[o + 2] = (carbon * square) / sum;
    v[o + 3] = (carbon * k.k1 * k.k2) / (sum * k.calcite);
    v[o + 4] = h;
  }
}

/** Fills the partials of chemistry at the point looked at last, and has later looks predict from there. */
export function openChemistry(
  water: WaterTables,
  constants: readonly AcidBaseConstants[],
  molarNitrogen: number,
): void {
  const { v, components, origin, slope, speciation } = water;
  for (let vessel = 0; vessel < water.vessels; vessel++) {
    const first = vessel * components;
    const h = v[water.states + DERIVED * vessel + 4];
    const o = vessel * SPECIATION;
    const p = 4 * vessel;
    const tan = v[first + water.tan];
    const carbon = v[first + water.carbon];
    speciate(tan, carbon, h, constants[vessel], molarNitrogen, speciation, o);
    origin[p] = tan;
    origin[p + 1] = v[first + water.alkalinity];
    origin[p + 2] = carbon;
    origin[p + 3] = h;
    // From partials of the pH to those of h.
    const perPh = -Math.LN10 * h;
    for (let m = 0; m < 3; m++) slope[3 * vessel + m] = speciation[o + 4 + m] * perPh;
  }
}

/**
 * What streams carry, one component after another: the stream, the vessel that it comes from or below 0 from outside, where the
 * component stands in v (from outside: among the sources), its row, and its only partial.
 */
export interface CarriedTables {
  readonly stream: Int32Array;
  readonly from: Int32Array;
  readonly at: Int32Array;
  readonly row: Int32Array;
  readonly entry: Int32Array;
  readonly count: i32;
}

/** Rates of what streams carry: flow times what is in the water that they come from. */
export function carry(
  { stream, from, at, row, count }: CarriedTables,
  v: Float64Array,
  flow: Float64Array,
  source: Float64Array,
  r: Float64Array,
): void {
  for (let i = 0; i < count; i++) r[row[i]] = flow[stream[i]] * (from[i] < 0 ? source[at[i]] : v[at[i]]);
}

/** Partials of what streams carry by what is in the water. */
export function carryPartials(
  { stream, from, entry, count }: CarriedTables,
  perVolume: Float64Array,
  flow: Float64Array,
  dr: Float64Array,
): void {
  for (let i = 0; i < count; i++) if (from[i] >= 0) dr[entry[i]] = flow[stream[i]] * perVolume[from[i]];
}

/** Turns rates per m3 into rates of a vessel. */
export function scale(
  r: Float64Array,
  row: Int32Array,
  vessel: Int32Array,
  volume: Float64Array,
  count: i32,
): void {
  for (let i = 0; i < count; i++) r[row[i]] *= volume[vessel[i]];
}

/**
 * Factors of each vessel by which partials by variables become partials by states: of a concentration, of an amount and of the values
 * of chemistry by each of what it depends on, of rates as they are and then of those per m3.
 * @param values how many values of chemistry have partials
 * @param spread how many partials they have together
 */
export function factorsOf(
  { volume, perVolume, speciation, vessels }: WaterTables,
  factors: Float64Array,
  values: i32,
  spread: i32,
): void {
  const half = 2 + spread;
  for (let vessel = 0; vessel < vessels; vessel++) {
    const s = vessel * 2 * half;
    const t = s + half;
    const size = volume[vessel];
    const inverse = perVolume[vessel];
    factors[s] = inverse;
    factors[s + 1] = 1;
    factors[t] = 1;
    factors[t + 1] = size;
    const o = vessel * SPECIATION + values;
    for (let e = 0; e < spread; e++) {
      factors[s + 2 + e] = speciation[o + e] * inverse;
      factors[t + 2 + e] = speciation[o + e];
    }
  }
}

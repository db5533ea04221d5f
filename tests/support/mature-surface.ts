import { createParameters } from '../../packages/core/src/library/parameters.js';
import type { Override } from '../../packages/core/src/library/own-row.js';
import type { Run, Sample } from '../../packages/core/src/run/run.js';
import { amountOf, doneRun, lastOf } from './run-of.js';
import { constant, scenarioOf, startOf, stillWater, vessel } from './scenario-builder.js';

/** Water that a grown-in surface stands in. */
export interface HeldWater {
  /** degC. */
  readonly temperature: number;
  /** Total ammonia, g N m-3. */
  readonly tan: number;
  /** Absent: 7.5. */
  readonly pH?: number;
  /** g m-3. Absent: 6. */
  readonly oxygen?: number;
  /** Dissolved organic matter, g COD m-3. Absent: none. */
  readonly dissolved?: number;
}

/** What a surface does at rest, per m2 and day. */
export interface HeldRates {
  /** TAN oxidised, g N. */
  readonly oxidised: number;
  /** Dissolved organic matter taken up, g COD. */
  readonly takenUp: number;
}

const surface = 10;
/** m3: so much water that what the surface does in `days` changes it by less than a part in ten thousand. */
const volume = 1e6;
const days = 1000;
const found = new Map<string, HeldRates>();

/** Nothing in the water but what the surface does: what breaks down by itself would not stay as it is held. */
const held: readonly Override[] = [
  ...['dissolved.oxidation', 'solids.hydrolysis-suspended', 'solids.refractory-hydrolysis'],
].map((id) => ({ id, value: 1e-12 }));

const madeOf = (run: Run, sample: Sample): number =>
  amountOf(run, sample, 'nitrite', 'cell') + amountOf(run, sample, 'nitrate', 'cell');

/**
 * What a surface at rest does in water that does not change, by the model with its default numbers: a vessel of a
 * million m3 with 10 m2 of surface, after 1000 days. Throws Error where it has not come to rest.
 */
function heldRates(water: HeldWater): HeldRates {
  const { temperature, tan, pH = 7.5, oxygen = 6, dissolved = 0 } = water;
  const key = JSON.stringify([temperature, tan, pH, oxygen, dissolved]);
  const known = found.get(key);
  if (known !== undefined) return known;
  const cell = vessel('cell', volume, { surface, temperature: constant(temperature) });
  const still = stillWater(2, pH, { ammonia: tan, oxygen, dissolved, chloride: 100 });
  const start = [startOf(cell, { water: still, aob: 0.5, nob: 0.2 })];
  const run = doneRun(scenarioOf([cell], { days, every: 20, start, overrides: held }), { tolerance: 1e-7 });
  const [early, late] = run.samples.slice(-3);
  const last = lastOf(run);
  const rateOf = (from: Sample, to: Sample): number =>
    (madeOf(run, to) - madeOf(run, from)) / (surface * (to.time - from.time));
  const oxidised = rateOf(late, last);
  if (Math.abs(rateOf(early, late) - oxidised) > 1e-3 * oxidised + 1e-6)
    throw new Error(`a surface in ${key} has not come to rest`);
  const left = (sample: Sample): number => amountOf(run, sample, 'dissolved', 'cell');
  const takenUp = (left(late) - left(last)) / (surface * (last.time - late.time));
  const rates = { oxidised, takenUp };
  found.set(key, rates);
  return rates;
}

/** Whether few ammonia oxidisers on a surface, in a tenth of a month, become more. */
function fewGrow({ temperature, tan, pH = 7.5, oxygen = 6 }: HeldWater): boolean {
  const cell = vessel('cell', volume, { surface, temperature: constant(temperature) });
  const still = stillWater(2, pH, { ammonia: tan, oxygen, chloride: 100 });
  const start = [startOf(cell, { water: still, aob: 1e-3, nob: 1e-3 })];
  const run = doneRun(scenarioOf([cell], { days: 3, every: 3, start, overrides: held }), { tolerance: 1e-7 });
  return amountOf(run, lastOf(run), 'aob', 'cell') > amountOf(run, run.samples[0], 'aob', 'cell');
}

/** Least TAN, g N m-3, that ammonia oxidisers live on: under it few of them become fewer. Found by halving. */
export function leastTan(water: Omit<HeldWater, 'tan'>): number {
  let [low, high] = [1e-3, 1];
  for (let halving = 0; halving < 14; halving++) {
    const tan = Math.sqrt(low * high);
    if (fewGrow({ ...water, tan })) high = tan;
    else low = tan;
  }
  return Math.sqrt(low * high);
}

/** TAN that a grown-in surface oxidises in held water, g N m-2 d-1. */
export const matureRate = (water: HeldWater): number => heldRates(water).oxidised;

/** A load led to a grown-in surface. */
interface LedLoad {
  /** TAN led in, g N per m2 and day. */
  readonly load: number;
  /** Water it comes with, m3 per m2 and day. */
  readonly flow: number;
  /** degC. */
  readonly temperature: number;
}

/**
 * TAN that a grown-in surface oxidises of a load, g N m-2 d-1; what is left flows out with the water. The level at rest
 * is where load, outflow and what the surface does at it meet.
 */
export function removedOf({ load, flow, temperature }: LedLoad): number {
  let [low, high] = [0, load / flow];
  for (let halving = 0; halving < 24; halving++) {
    const tan = (low + high) / 2;
    if (matureRate({ temperature, tan }) + flow * tan < load) low = tan;
    else high = tan;
  }
  return load - (flow * (low + high)) / 2;
}

/** Carbon to nitrogen of a sugar: g COD per g of carbon. */
const demandOfCarbon = 32 / 12;

/**
 * Share of its clean rate that a surface keeps where organic matter comes to it beside the TAN: so many g of carbon
 * (2.67 g COD) for each g of TAN that the clean surface oxidises. The level of dissolved matter is found by halving.
 */
export function shareKept(water: HeldWater, carbonPerNitrogen: number): number {
  const clean = matureRate(water);
  const wanted = carbonPerNitrogen * demandOfCarbon * clean;
  let [low, high] = [0, 200];
  for (let halving = 0; halving < 20; halving++) {
    const dissolved = (low + high) / 2;
    if (heldRates({ ...water, dissolved }).takenUp < wanted) low = dissolved;
    else high = dissolved;
  }
  return heldRates({ ...water, dissolved: (low + high) / 2 }).oxidised / clean;
}

const parameters = createParameters();

/** Surface of a m3 of a medium that films and water reach, m2: a / (1 + a d / 2 e) by its specific surface and porosity. */
export const reachedOf = (all: number, porosity: number): number =>
  all / (1 + (all * parameters.value('biofilm.depth')) / (2 * porosity));

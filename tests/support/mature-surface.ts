import { carbonFromPh } from '../../packages/core/src/chemistry/acid-base.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import type { Run, Sample } from '../../packages/core/src/run/run.js';
import type { SourceWater } from '../../packages/core/src/scenario/scenario.js';
import { concentration, doneRun, lastOf } from './run-of.js';
import { constant, float, scenarioOf, startOf, stillWater, vessel } from './scenario-builder.js';

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
}

const surface = 10;
const flow = 1;
const days = 300;
/** eq m-3: 100 mg/L as CaCO3. */
const alkalinity = 2;
const parameters = createParameters();

/**
 * A cell of 1 m3 with 10 m2 of surface, led through by 1 m3 a day, for 300 days. What the full oxidation of the
 * ammonia led in will take of oxygen and alkalinity is led in with it, so that where the cell comes to rest at the
 * wished TAN it also has the wished pH and oxygen (in a steady state no net cells are made, and the sums are exact).
 */
function grownIn(led: number, water: Required<HeldWater>): Run {
  const { temperature, tan, pH, oxygen } = water;
  const carbon = carbonFromPh(parameters, alkalinity, pH, tan, temperature);
  const perMol = parameters.value('molar.nitrogen');
  const still = { ...stillWater(alkalinity, pH, { tan, oxygen, chloride: 100 }), carbon };
  const source: SourceWater = {
    ...still,
    name: 'mains',
    tan: led,
    alkalinity: alkalinity + (2 * (led - tan)) / perMol,
    oxygen: oxygen + (2 * parameters.value('molar.oxygen-gas') * (led - tan)) / perMol,
  };
  const cell = vessel('cell', 1, { surface, exchange: flow, temperature: constant(temperature) });
  return doneRun(
    scenarioOf([cell], {
      days,
      every: 20,
      waters: [source],
      topUp: float(1),
      start: [startOf(cell, { water: still, aob: 0.5, nob: 0.2 })],
    }),
    { tolerance: 1e-7 },
  );
}

const found = new Map<string, number>();

/**
 * TAN that a grown-in surface oxidises in held water, g N m-2 d-1, by the model with its default numbers.
 * Throws Error where the surface does not come to rest, or cannot be brought to that TAN.
 */
export function matureRate(held: HeldWater): number {
  const water = { pH: 7.5, oxygen: 6, ...held };
  const key = JSON.stringify(water);
  const known = found.get(key);
  if (known !== undefined) return known;
  const tanOf = (run: Run, sample: Sample): number => concentration(run, sample, 'tan', 'cell');
  // False position (Illinois) on the ammonia led in: the TAN that is left rises with it.
  const missed = (led: number): number => {
    const run = grownIn(led, water);
    const left = tanOf(run, lastOf(run));
    if (Math.abs(tanOf(run, run.samples[run.samples.length - 2]) - left) > 1e-3 * left) {
      throw new Error(`a surface in ${key} has not come to rest`);
    }
    return left - water.tan;
  };
  let low = water.tan;
  let high = water.tan + (2 * surface) / flow;
  let below = missed(low);
  let above = missed(high);
  for (let pass = 0; pass < 40; pass++) {
    const led = (low * above - high * below) / (above - below);
    const miss = missed(led);
    if (Math.abs(miss) < 1e-3 * water.tan) {
      const rate = ((led - water.tan - miss) * flow) / surface;
      found.set(key, rate);
      return rate;
    }
    if (miss > 0) {
      high = led;
      above = miss;
      below /= 2;
    } else {
      low = led;
      below = miss;
      above /= 2;
    }
  }
  throw new Error(`no surface in ${key}`);
}

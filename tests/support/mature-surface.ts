import { carbonFromPh } from '../../packages/core/src/chemistry/acid-base.js';
import { openIonicStrength } from '../../packages/core/src/chemistry/ions.js';
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
const usualAlkalinity = 2;
/**
 * eq m-3, under a load: base comes with it as fast as oxidation at rest takes it, and while the surface settles in,
 * water of little alkalinity would swing to a pH at which it dies. No rate depends on alkalinity itself.
 */
const bufferedAlkalinity = 10;
const parameters = createParameters();
const ionsOf = openIonicStrength(parameters);

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
 * TAN that a grown-in surface oxidises of a load that it can carry, g N m-2 d-1; what is left flows out with the water.
 * Throws Error where it does not come to rest, as under a load beyond it.
 */
export function removedOf({ load, flow: perSurface, temperature }: LedLoad): number {
  const flow = perSurface * surface;
  const led = load / perSurface;
  let left = 0;
  for (let pass = 0; pass < 60; pass++) {
    const water = { temperature, tan: left, pH: 7.5, oxygen: 6 };
    const next = restingTan(grownIn(led, water, flow, bufferedAlkalinity));
    if (Math.abs(next - left) < 1e-4 * led) return (led - next) * perSurface;
    left = (left + next) / 2;
  }
  throw new Error(`no rest under a load of ${load} g/m2/d`);
}

/** TAN that is left once nothing changes any more. */
function restingTan(run: Run): number {
  const tanOf = (sample: Sample): number => concentration(run, sample, 'tan', 'cell');
  const left = tanOf(lastOf(run));
  if (Math.abs(tanOf(run.samples[run.samples.length - 2]) - left) > 1e-3 * left + 1e-4) {
    throw new Error(`a surface at ${left} mg/L has not come to rest`);
  }
  return left;
}

/**
 * A cell of 1 m3 with 10 m2 of surface, led through by so many m3 a day (absent: 1), for 300 days. What the full oxidation of the
 * ammonia led in will take of oxygen and alkalinity is led in with it, so that where the cell comes to rest at the
 * wished TAN it also has the wished pH and oxygen (in a steady state no net cells are made, and the sums are exact).
 */
function grownIn(led: number, water: Required<HeldWater>, through = flow, alkalinity = usualAlkalinity): Run {
  const { temperature, tan, pH, oxygen } = water;
  const rest = stillWater(alkalinity, pH, { tan, oxygen, chloride: 100 });
  // At rest all that was led in is nitrate, the base of its acid gone: ions as in the water of the start, and that.
  const carbon = carbonFromPh(
    parameters,
    alkalinity,
    pH,
    tan,
    temperature,
    ionsOf({ ...rest, nitrate: led - tan }),
  );
  const perMol = parameters.value('molar.nitrogen');
  const still = { ...rest, carbon };
  const source: SourceWater = {
    ...still,
    name: 'mains',
    tan: led,
    alkalinity: alkalinity + (2 * (led - tan)) / perMol,
    oxygen: oxygen + (2 * parameters.value('molar.oxygen-gas') * (led - tan)) / perMol,
  };
  const cell = vessel('cell', 1, { surface, exchange: through, temperature: constant(temperature) });
  return doneRun(
    scenarioOf([cell], {
      days,
      every: 20,
      waters: [source],
      topUp: float(1),
      start: [startOf(cell, { water: still, aob: 0.5, nob: 0.2 })],
    }),
    { tolerance: 1e-6 },
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
  // False position (Illinois) on the ammonia led in: the TAN that is left rises with it.
  const missed = (led: number): number => restingTan(grownIn(led, water)) - water.tan;
  let low = water.tan;
  let high = water.tan + surface / flow;
  // Of what is led in at that level some is oxidised: about a tenth is as good a first guess as any.
  let below = -0.1 * water.tan;
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

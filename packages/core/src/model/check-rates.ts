import { pow } from '../base/elementary.js';
import type { Fault } from '../base/faults.js';
import { createRandom } from '../base/random.js';
import type { Values } from '../library/values.js';
import { anyConditions, type Conditions, type Process } from '../processes/process.js';
import { closeRow, type ContentIn } from './stoichiometry.js';

/** Random points at which a rate is tried. */
const POINTS = 30;
/** Step of a difference as a share of the variable, and how far a partial may be from it, of the size of both. */
const STEP = 1e-5;
const GAP = 1e-5;

/** What is 0 in water without a component. */
const goesWith: Readonly<Record<string, string>> = { tan: 'ammonia', carbon: 'carbon-dioxide' };

const log = (random: () => number, low: number, high: number): number => low * pow(high / low, random());

/** Values of what a process reads: pH and flank as they are in water, all else over five powers of ten. */
function pointOf({ reads }: Process, random: () => number): Float64Array {
  return Float64Array.from(reads, (variable) => {
    if (variable === 'pH') return 5 + 4 * random();
    return variable === 'acclimation' ? 3 + 4 * random() : log(random, 1e-2, 1e3);
  });
}

/** Conditions of a place, each up to three times more or less than usual. */
function conditionsOf(random: () => number): Conditions {
  const { temperature, air, pressure, setPoint, sign, airShare, capture, ...sizes } = anyConditions;
  const scaled = Object.entries(sizes).map(([name, value]) => [name, value * log(random, 1 / 3, 3)] as const);
  return {
    ...anyConditions,
    ...Object.fromEntries(scaled),
    temperature: temperature + 20 * (random() - 0.5),
    air: air + 20 * (random() - 0.5),
    ...{ pressure, setPoint, sign, airShare, capture: capture * random() },
  };
}

/** The first variable whose partial is off, and by what. */
function wrongPartial(
  process: Process,
  k: readonly number[],
  v: Float64Array,
  at: readonly number[],
): string | undefined {
  const stated = new Float64Array(at.length).fill(Number.NaN);
  process.partials(v, at, k, stated);
  const size = Math.abs(process.rate(v, at, k));
  for (const m of at) {
    const h = STEP * v[m];
    const moved = (by: number): number =>
      process.rate(
        v.map((value, n) => (n === m ? value + by : value)),
        at,
        k,
      );
    const difference = (moved(h) - moved(-h)) / (2 * h);
    const scale = Math.max(Math.abs(stated[m]), Math.abs(difference), size / v[m]);
    if (scale === 0 || Math.abs(stated[m] - difference) <= GAP * scale) continue;
    const point = process.reads.map((variable, n) => `${variable} ${v[n].toPrecision(4)}`).join(', ');
    const digits = (value: number): string => value.toPrecision(6);
    return `by ${process.reads[m]} is ${digits(stated[m])}, differences give ${digits(difference)} (at ${point})`;
  }
  return undefined;
}

/** What a process uses up and reads, but goes on using where there is none. */
function usedFromNothing(
  process: Process,
  values: Values,
  content: ContentIn,
  k: readonly number[],
  v: Float64Array,
): string | undefined {
  const at = [...process.reads.keys()];
  // Alkalinity may truly be negative.
  const used = closeRow(process, values, content).filter(
    ({ component, outside, coefficient }) =>
      outside === undefined && coefficient < 0 && component !== 'alkalinity',
  );
  return used
    .map(({ component }): string => component)
    .find((component) => {
      const none = v.map((value, n) =>
        process.reads[n] === component || process.reads[n] === goesWith[component] ? 0 : value,
      );
      return process.rate(none, at, k) > 0;
    });
}

/**
 * Tries the rate of a process at random points: coefficients and rate are finite, their number stays, the partials are
 * those of the rate, and it stops where what it uses up ends.
 */
export function rateFaults(process: Process, values: Values, content: ContentIn): readonly Fault[] {
  const random = createRandom(1);
  const key = `processes.${process.id}`;
  const at = [...process.reads.keys()];
  const count = process.coefficients(values, anyConditions).length;
  for (let point = 0; point < POINTS; point++) {
    const k = process.coefficients(values, conditionsOf(random));
    const v = pointOf(process, random);
    if (k.length !== count || !k.every(Number.isFinite))
      return [
        { key: `${key}.coefficients`, problem: 'not finite, or not always as many', got: k.join(', ') },
      ];
    const rate = process.rate(v, at, k);
    if (!Number.isFinite(rate))
      return [{ key: `${key}.rate`, problem: 'not a finite number', got: String(rate) }];
    const wrong = wrongPartial(process, k, v, at);
    if (wrong !== undefined) return [{ key: `${key}.partials`, problem: `not those of the rate: ${wrong}` }];
    const used = usedFromNothing(process, values, content, k, v);
    if (used !== undefined)
      return [
        {
          key: `${key}.rate`,
          problem: `goes on where there is no ${used}, which it uses up`,
          expected: '0 there',
        },
      ];
  }
  return [];
}

import { describe, expect, it } from 'vitest';
import { hydrogenAt } from '../../../../packages/core/src/chemistry/acid-base.js';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import { processes } from '../../../../packages/core/src/processes/index.js';
import {
  HYDROGEN_AFTER_PH,
  type Kernel,
  type Sites,
} from '../../../../packages/core/src/processes/kernels/kernel.js';
import type { Process } from '../../../../packages/core/src/processes/process.js';
import { drawnConditions, drawnPoint, drawnValues } from '../../../support/process-points.js';

const PLACES = 3;
/** What no kernel may write over. */
const UNTOUCHED = -77;

const kernels = new Map<Kernel, Process[]>();
for (const process of processes) {
  const { kernel } = process;
  if (kernel !== undefined) kernels.set(kernel, [...(kernels.get(kernel) ?? []), process]);
}

/** Processes of one kernel at some places: variables by name and place, where they share them; coefficients drawn apart. */
function laidOut(
  own: readonly Process[],
  seed: number,
): { v: Float64Array; sites: Sites[]; r: Float64Array } {
  const random = createRandom(seed);
  const found: number[] = [];
  const place = new Map<string, number>();
  const put = (process: Process, point: Float64Array, i: number): number[] =>
    process.reads.map((variable, m) => {
      const name = `${variable} ${String(i)}`;
      const known = place.get(name);
      if (known !== undefined) return known;
      const at = found.length;
      place.set(name, at);
      found.push(point[m]);
      while (variable === 'pH' && found.length < at + HYDROGEN_AFTER_PH) found.push(Number.NaN);
      if (variable === 'pH') found.push(hydrogenAt(point[m]));
      return at;
    });
  // What the places of one kernel have in common is drawn once.
  const drawn = Array.from({ length: PLACES }, () => ({
    values: drawnValues(random),
    conditions: drawnConditions(random),
  }));
  const sites = own.map((process, n): Sites => {
    const width = process.reads.length;
    const at = drawn.flatMap((_, i) => put(process, drawnPoint(process, random), i));
    const k = drawn.flatMap(({ values, conditions }) => process.coefficients(values, conditions));
    return {
      count: PLACES,
      row: 2 + n * (PLACES + 1),
      place: Int32Array.from(drawn, (_, i) => i),
      width,
      size: k.length / PLACES,
      at: Int32Array.from(at),
      k: Float64Array.from(k),
      d: new Float64Array(width * PLACES + 2).fill(UNTOUCHED),
    };
  });
  const r = new Float64Array(2 + own.length * (PLACES + 1) + 2).fill(UNTOUCHED);
  return { v: Float64Array.from(found), sites, r };
}

describe.each(
  [...kernels].map(([kernel, own]) => [own.map(({ id }) => id).join(', '), kernel, own] as const),
)('the kernel of %s', (_ids, kernel, own) => {
  it.each([1, 2, 3, 4])(
    'does what its processes do one by one, and writes nowhere else (draw %d)',
    (seed) => {
      const { v, sites, r } = laidOut(own, seed);
      kernel.rates(sites, v, r);
      kernel.partials(sites, v);
      const wanted = r.slice().fill(UNTOUCHED);
      own.forEach((process, n) => {
        const { at, k, d, row, width, size } = sites[n];
        for (let i = 0; i < PLACES; i++) {
          const own = { at: at.slice(i * width, (i + 1) * width), k: k.slice(i * size, (i + 1) * size) };
          wanted[row + i] = process.rate(v, own.at, own.k);
          const partials = new Float64Array(width);
          process.partials(v, own.at, own.k, partials);
          partials.forEach((partial, m) => {
            expect(Math.abs(d[i * width + m] - partial)).toBeLessThanOrEqual(1e-11 * Math.abs(partial));
          });
        }
        expect([...d.slice(width * PLACES)]).toEqual([UNTOUCHED, UNTOUCHED]);
      });
      wanted.forEach((rate, i) => {
        expect(Math.abs(r[i] - rate), String(i)).toBeLessThanOrEqual(1e-11 * Math.abs(rate));
      });
    },
  );
});

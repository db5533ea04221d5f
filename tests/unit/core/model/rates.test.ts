import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import { acidBaseConstants } from '../../../../packages/core/src/chemistry/acid-base.js';
import { compileModel } from '../../../../packages/core/src/model/compile.js';
import { openRates, type Rates } from '../../../../packages/core/src/model/rates.js';
import type { Conditions } from '../../../../packages/core/src/processes/process.js';
import type { Model } from '../../../../packages/core/src/model/model.js';
import { drawnConditions } from '../../../support/process-points.js';
import { lastOf, doneRun } from '../../../support/run-of.js';
import { teachingSystem } from '../../../support/teaching-system.js';

const model = compileModel(teachingSystem({ days: 12 }), createParameters());

/** Rates under a made-up regime: every stream runs, every vessel's volume moves. */
function openAtRandom(seed: number, plain = false): { rates: Rates; y: Float64Array; t: number } {
  const random = createRandom(seed);
  const rates = openRates(model, { plain });
  const { regime } = rates;
  regime.time = 3;
  model.layout.vessels.forEach((_, vessel) => {
    regime.volume[vessel] = 0.3 + 2 * random();
    regime.slope[vessel] = random() - 0.5;
    regime.constants[vessel] = acidBaseConstants(model.parameters, 15 + 15 * random(), 0.03 * random());
  });
  model.streams.forEach((_, stream) => {
    regime.flow[stream] = 20 * random();
  });
  regime.source.forEach((_, index) => {
    regime.source[index] = 5 * random();
  });
  // One place has one set of conditions, whatever processes work there.
  const places = new Map<string, Conditions>();
  model.instances.forEach((instance, index) => {
    const place = [instance.vessel, instance.cohort, instance.batch].join();
    const conditions = places.get(place) ?? drawnConditions(random);
    places.set(place, conditions);
    const k = instance.process.coefficients(instance.values, conditions);
    regime.coefficients[index].set(k);
  });
  // A state that a run has been through, shaken.
  const reached = lastOf(doneRun(model.scenario)).y;
  return { rates, y: reached.map((value) => (value + 0.01) * (0.5 + random())), t: 3.4 };
}

function denseOf(model: Model, packed: Float64Array): number[][] {
  const { start, column } = model.dependence;
  return model.rows.map((_, row) => {
    const dense = new Array<number>(model.layout.states.length).fill(0);
    for (let e = start[row]; e < start[row + 1]; e++) dense[column[e]] += packed[e];
    return dense;
  });
}

describe.each([31, 32, 33])('the rates of a whole system (draw %d)', (seed) => {
  const { rates, y, t } = openAtRandom(seed);
  const { system } = rates;
  const dr = new Float64Array(system.dependence.column.length).fill(Number.NaN);
  const rt = new Float64Array(system.rates).fill(Number.NaN);
  system.differentiate(t, y, dr, rt);
  const dense = denseOf(model, dr);
  const at = (time: number, state: Float64Array): Float64Array => {
    const r = new Float64Array(system.rates).fill(Number.NaN);
    system.evaluate(time, state, r);
    return r;
  };
  const now = at(t, y);

  it('have the partials by every state that differences show, and no others', () => {
    let worst = '';
    let largest = 0;
    for (let state = 0; state < system.states; state++) {
      const h = 1e-5 * y[state];
      const [up, down] = [1, -1].map((sign) =>
        at(
          t,
          y.map((value, s) => (s === state ? value + sign * h : value)),
        ),
      );
      for (let row = 0; row < system.rates; row++) {
        const difference = (up[row] - down[row]) / (2 * h);
        const size = Math.max(
          Math.abs(difference),
          Math.abs(dense[row][state]),
          Math.abs(now[row]) / y[state],
        );
        const gap = size === 0 ? 0 : Math.abs(difference - dense[row][state]) / size;
        if (gap <= largest) continue;
        largest = gap;
        worst = `${model.rows[row].id} by ${model.layout.states[state].component}@${model.layout.states[state].place}`;
      }
    }
    expect(largest, worst).toBeLessThan(1e-6);
    expect(dense.flat().every(Number.isFinite)).toBe(true);
  });

  it('have the partials by time of moving volumes', () => {
    const h = 1e-5;
    const [up, down] = [at(t + h, y), at(t - h, y)];
    const gaps = Array.from(rt, (partial, row) => {
      const difference = (up[row] - down[row]) / (2 * h);
      const size = Math.max(Math.abs(difference), Math.abs(partial), Math.abs(now[row]));
      return size === 0 ? 0 : Math.abs(difference - partial) / size;
    });
    expect(Math.max(...gaps)).toBeLessThan(1e-6);
    expect(rt.filter((partial) => partial !== 0).length).toBeGreaterThan(100);
  });

  it('are those of its processes one by one, with or without kernels, and in bare, empty and negative places too', () => {
    const { system: plain } = openAtRandom(seed, true).rates;
    const random = createRandom(seed + 100);
    const points = [y, ...[0, 1e-12, -1e-6].map((at) => y.map((value) => (random() < 0.3 ? at : value)))];
    for (const point of points) {
      const [r, r0] = [new Float64Array(system.rates), new Float64Array(system.rates)];
      const [d, d0] = [dr, dr].map(() => new Float64Array(dr.length));
      const [time, time0] = [new Float64Array(system.rates), new Float64Array(system.rates)];
      if (system.linearise === undefined) throw new Error('rates and partials are not found at once');
      system.linearise(t, point, r, d, time);
      plain.evaluate(t, point, r0);
      plain.differentiate(t, point, d0, time0);
      // Partials by time are small sums of large terms: their size is that of the rate, a day, as above.
      const nothing = new Float64Array(dr.length);
      for (const [fast, slow, size] of [
        [r, r0, nothing],
        [d, d0, nothing],
        [time, time0, r0],
      ] as const) {
        fast.forEach((value, i) => {
          // A crop without nitrogen has no rate: its partials stand alone.
          const of = Number.isFinite(size[i]) ? Math.abs(size[i]) : 0;
          // Terms of opposite sign and size 1 may cancel (by pH, by the load of a floor): they are known to a few of their last
          // places of 2^-52, and no better.
          const allowed = 1e-11 * Math.max(Math.abs(slow[i]), of) + 2 ** -48;
          if (!Number.isFinite(slow[i])) expect(value).not.toSatisfy(Number.isFinite);
          else expect(Math.abs(value - slow[i])).toBeLessThanOrEqual(allowed);
        });
      }
    }
  });
});

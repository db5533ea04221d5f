import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  allSeries,
  budgetsOf,
  compileModel,
  createParameters,
  readScenario,
  simulate,
  worstResidual,
  type Run,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { absoluteTolerances } from '../../../packages/core/src/run/tolerances.js';
import { integrators } from '../../support/integrators.js';

const folder = dirname(
  fileURLToPath(new URL('../../../packages/cli/scenarios/glasshouse.yaml', import.meta.url)),
);
const load = (path: string): string => readFileSync(path, 'utf8');

/** Series by name, as they are compared: an index is a logarithm that passes 0, so its power of ten is. */
function comparable(run: Run): readonly (readonly [name: string, values: Float64Array])[] {
  return allSeries(run).map(({ name, values }) => [
    name,
    name.startsWith('saturation-index') ? values.map((value) => 10 ** value) : values,
  ]);
}

describe.each(['glasshouse', 'start-up'])('the shipped system %s, at its full length', (name) => {
  const file = `${folder}/${name}.yaml`;
  const model = compileModel(readScenario(load(file), { file, load }), createParameters());
  // As much closer as two integrators need to agree to 1e-4.
  const run = simulate(model, { tolerance: 3e-7 });
  // At the edge of its stability the explicit method rings in solids that settle within minutes, and an output
  // may fall on the last long step before it shortens them (0.2 % at 3e-7, nothing an hour later): closer still.
  const explicit = simulate(model, { integrator: integrators.odex, tolerance: 3e-8 });

  it('is near enough at the default tolerance: every series within a thousandth and a millionth of its largest value', () => {
    const others = new Map(comparable(simulate(model)));
    for (const [series, values] of comparable(run)) {
      const other = others.get(series) ?? new Float64Array();
      const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
      values.forEach((value, i) => {
        expect(Math.abs(value - other[i]), series).toBeLessThanOrEqual(
          1e-3 * Math.abs(value) + 1e-6 * largest,
        );
      });
    }
  });

  it('finishes with either integrator', () => {
    expect([run.outcome.kind, explicit.outcome.kind]).toEqual(['done', 'done']);
  });

  it('closes nitrogen, oxygen demand, charge, chloride, carbon, calcium and water to 1e-9 of throughput', () => {
    for (const one of [run, explicit]) {
      const { budget, share } = worstResidual(budgetsOf(one));
      expect(share, `${budget.quantity} of ${budget.place}`).toBeLessThan(1e-9);
    }
  });

  it('gives the same series with both integrators, to 1e-4 and a millionth of the largest value', () => {
    const others = new Map(comparable(explicit));
    let worst = { gap: 0, where: 'nowhere' };
    for (const [series, values] of comparable(run)) {
      const other = others.get(series) ?? new Float64Array();
      const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
      values.forEach((value, i) => {
        if (value === other[i]) return;
        const gap = Math.abs(value - other[i]) / (1e-4 * Math.abs(other[i]) + 1e-6 * largest);
        if (gap > worst.gap || Number.isNaN(gap)) {
          worst = { gap, where: `${series} at day ${run.samples[i].time}: ${value} and ${other[i]}` };
        }
      });
    }
    expect(worst.gap, worst.where).toBeLessThan(1);
  });

  it('keeps every state above ten absolute tolerances under zero (alkalinity may be negative)', () => {
    const absolute = absoluteTolerances(model, 1e-6);
    const lowest = run.samples.flatMap(({ y }) =>
      Array.from(y, (value, state) =>
        model.layout.states[state].component === 'alkalinity' ? 0 : value / absolute[state],
      ),
    );
    expect(lowest.reduce((low, next) => Math.min(low, next), 0)).toBeGreaterThan(-10);
  });

  it('gives the same bytes when run again', () => {
    const again = simulate(compileModel(readScenario(load(file), { file, load }), createParameters()), {
      tolerance: 3e-7,
    });
    again.samples.forEach(({ y, x }, i) => {
      expect(Buffer.from(y.buffer).equals(Buffer.from(run.samples[i].y.buffer))).toBe(true);
      expect(Buffer.from(x.buffer).equals(Buffer.from(run.samples[i].x.buffer))).toBe(true);
    });
  });
});

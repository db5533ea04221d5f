import { describe, expect, it, vi } from 'vitest';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import type { Model } from '../../packages/core/src/model/model.js';
import { compileModel } from '../../packages/core/src/model/compile.js';
import { budgetsOf, relativeResidual } from '../../packages/core/src/result/budget.js';
import type { Run } from '../../packages/core/src/run/run.js';
import { simulate } from '../../packages/core/src/run/stepping.js';
import { absoluteTolerances } from '../../packages/core/src/run/tolerances.js';
import { readScenario } from '../../packages/core/src/scenario/read-scenario.js';
import { ShortStretch } from '../../packages/core/src/solve/short-stretch.js';
import { shippedText } from '../support/shipped-scenario.js';

/** A run that steps through every stretch, however short. */
function steppedRun(model: Model, tolerance?: number): Run {
  const pass = vi.spyOn(ShortStretch.prototype, 'pass').mockReturnValue(false);
  try {
    return simulate(model, tolerance === undefined ? {} : { tolerance });
  } finally {
    pass.mockRestore();
  }
}

const drained = (text: string): string =>
  text.replaceAll(/(media: \{ type: pumice.*\n)/g, '$1    drain: { to: 150 L, rate: 1.5 m3/h }\n');

describe.each([
  ['15 minutes on and off', '{ on: 15 min, off: 15 min }', (text: string) => text],
  ['15 minutes on, 45 off, over beds that drain', '{ on: 15 min, off: 45 min }', drained],
] as const)('a pump on a timer: %s', (_, timer, change) => {
  const text = change(shippedText('glasshouse')).replace('restart: 400 L\n', `$&    timer: ${timer}\n`);
  const scenario = readScenario(text, { file: 'timer.yaml', days: 2 });
  const model = compileModel(scenario, createParameters(scenario.overrides));
  const run = simulate(model);
  const stepped = steppedRun(model);
  const fine = steppedRun(model, 1e-9);

  /** Root mean square over all states of all days of what a run is off by, in tolerances of 1e-5. */
  const off = ({ samples }: Run): number => {
    const absolute = absoluteTolerances(model, 1e-5);
    const shares = samples.flatMap(({ y }, i) =>
      Array.from(y, (value, s) => {
        const right = fine.samples[i].y[s];
        return (value - right) / (absolute[s] + 1e-5 * Math.abs(right));
      }),
    );
    return Math.sqrt(shares.reduce((sum, share) => sum + share * share, 0) / shares.length);
  };

  it('passes what lies between the marks of vessels that fill, and is as exact as if it stepped', () => {
    expect(text).toContain('timer:');
    expect(run.outcome.kind).toBe('done');
    expect(stepped.work.passed).toBe(0);
    // As often as a pump starts, four vessels or more fill one after another.
    expect(run.work.passed).toBeGreaterThan(190);
    expect(run.work.steps).toBeLessThan(0.9 * stepped.work.steps);
    expect(off(stepped)).toBeGreaterThan(0);
    expect(off(run)).toBeLessThan(1.01 * off(stepped));
  });

  it('carries the same water to the last digit and closes its balances', () => {
    for (const [i, { carried, volume }] of run.samples.entries()) {
      expect([...carried]).toEqual([...stepped.samples[i].carried]);
      expect([...volume]).toEqual([...stepped.samples[i].volume]);
    }
    for (const budget of budgetsOf(run)) expect(relativeResidual(budget)).toBeLessThan(1e-9);
  });
});

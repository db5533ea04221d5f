import { describe, expect, it } from 'vitest';
import { compileModel } from '../../packages/core/src/model/compile.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import { budgetsOf, relativeResidual } from '../../packages/core/src/result/budget.js';
import { simulate } from '../../packages/core/src/run/stepping.js';
import { absoluteTolerances } from '../../packages/core/src/run/tolerances.js';
import { readScenario } from '../../packages/core/src/scenario/read-scenario.js';
import { integrators } from '../support/integrators.js';
import { full } from '../support/length.js';
import { concentration, doneRun, lastOf } from '../support/run-of.js';
import {
  gravity,
  pumped,
  scenarioOf,
  sourceWater,
  startOf,
  stillWater,
  vessel,
} from '../support/scenario-builder.js';
import { smallSystem } from '../support/small-text.js';

const small = readScenario(smallSystem.replace('days: 40', 'days: 10'), { file: 'small.yaml' });
const model = compileModel(small, createParameters(small.overrides));

describe('the stated floor', () => {
  const fine = simulate(model, { tolerance: 1e-10 });

  // Traces too: nitrite in the filter is 0.006 g there.
  it.each(
    (full ? [1e-4, 1e-5, 1e-6, 1e-7] : [1e-5]).flatMap((tolerance) =>
      (['rosenbrock', 'odex'] as const).map((name) => [name, tolerance] as const),
    ),
  )('is held by %s at %s: no state of any day is off by more than one tolerance', (name, tolerance) => {
    const run = simulate(model, { tolerance, integrator: integrators[name] });
    const absolute = absoluteTolerances(model, tolerance);
    expect(run.samples).toHaveLength(11);
    let most = 0;
    for (const [i, { y }] of run.samples.entries()) {
      for (const [s, value] of y.entries()) {
        const right = fine.samples[i].y[s];
        const off = Math.abs(value - right) / (absolute[s] + tolerance * Math.abs(right));
        expect(
          off,
          `${model.layout.states[s].component}@${model.layout.states[s].place} on day ${i}`,
        ).toBeLessThanOrEqual(1);
        most = Math.max(most, off);
      }
    }
    expect(most).toBeGreaterThan(0);
  });
});

describe('a pump that stops and starts', () => {
  /** m3 that a pump gives in two days out of a sump to which less comes back than it takes. */
  const given = (gap: number): { carried: number; starts: number } => {
    const high = vessel('tank', 2, { aeration: 60, leak: 2 });
    const low = vessel('sump', 1);
    const run = doneRun(
      scenarioOf([high, low], {
        pumps: [{ name: 'main', inlet: 0.5, restart: 0.5 + gap }],
        flows: [pumped('sump', 'tank', 5), gravity('tank', 'sump')],
        start: [startOf(high), startOf(low)],
        waters: [sourceWater('mains')],
        topUp: { level: 0.9, rate: 1, sources: [{ kind: 'mains', water: 'mains', dailyCap: Infinity }] },
        days: 2,
        every: 0.5,
      }),
    );
    for (const budget of budgetsOf(run)) expect(relativeResidual(budget)).toBeLessThan(1e-9);
    const starts = run.events.filter(({ kind, place }) => kind === 'pump' || place === 'main').length;
    return { carried: lastOf(run).carried[0], starts };
  };

  it('gives the same water however often it does: to within what lies between its two levels', () => {
    const [wide, ...finer] = [0.02, 0.01, 0.005, 0.002].map(given);
    for (const [i, { carried, starts }] of finer.entries()) {
      expect(Math.abs(carried - wide.carried)).toBeLessThanOrEqual(0.02 * 3);
      expect(starts).toBeGreaterThan([wide, ...finer][i].starts);
    }
  });
});

describe('a vessel that is nearly dry', () => {
  it('holds the water that flows through it, down to a thimble, and its budgets close', () => {
    for (const volume of [1, 1e-2, 1e-4, 1e-6]) {
      const tank = vessel('tank', 1);
      const cup = vessel('cup', volume, { open: 0, aeration: 0 });
      const low = vessel('sump', 1);
      const water = stillWater(2, 7.4, { nitrate: 20, chloride: 40 });
      const run = doneRun(
        scenarioOf([tank, cup, low], {
          pumps: [{ name: 'main', inlet: 0.1, restart: 0.2 }],
          flows: [pumped('sump', 'tank', 5), gravity('tank', 'cup'), gravity('cup', 'sump')],
          start: [
            startOf(tank, { water }),
            startOf(cup, { water: stillWater(2, 7.4, { nitrate: 80, chloride: 10 }) }),
            startOf(low, { water }),
          ],
          waters: [sourceWater('mains')],
          days: 3,
        }),
      );
      const last = lastOf(run);
      for (const component of ['nitrate', 'chloride'] as const) {
        const [before, through] = ['tank', 'cup'].map((name) => concentration(run, last, component, name));
        expect(Math.abs(through / before - 1), `${component} in ${volume} m3`).toBeLessThan(1e-4);
      }
      for (const budget of budgetsOf(run))
        expect(relativeResidual(budget), `${budget.quantity} at ${volume} m3`).toBeLessThan(1e-9);
    }
  });
});

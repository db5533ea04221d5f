import { describe, expect, it } from 'vitest';
import type { Run } from '../../packages/core/src/run/run.js';
import type { SimulateOptions } from '../../packages/core/src/run/driver.js';
import type { Scenario } from '../../packages/core/src/scenario/scenario.js';
import { courseOf, doneRun, lastOf } from '../support/run-of.js';
import {
  constant,
  gravity,
  pumped,
  scenarioOf,
  sourceWater,
  startOf,
  stillWater,
  vessel,
} from '../support/scenario-builder.js';
import { integrators } from '../support/integrators.js';

// Closed forms of the balance of water and salt: dV/dt = R - E - Q, dM/dt = R c - Q M / V, with E evaporating
// (no salt goes with it), R let in with c of chloride, Q discharged. Nothing here is fitted.
const days = 56;
const et0 = 0.005;
const open = 6;
const source = 35;
const start = 60;
const volume = 4;

/** One vessel under the sky, with a ration of top-up a day. */
function pond(other: Partial<Scenario>, exchange = 0, options: SimulateOptions = {}): Run {
  const sump = vessel('sump', volume, { open, exchange });
  return doneRun(
    scenarioOf([sump], {
      days,
      et0: constant(et0),
      waters: [sourceWater('mains', { chloride: source })],
      start: [startOf(sump, { water: stillWater(2, 7.5, { chloride: start }) })],
      ...other,
    }),
    options,
  );
}

/** What evaporates, m3 d-1. */
const evaporating = (run: Run): number => et0 * open * run.model.parameters.value('water.open-coefficient');
const rationed = (dailyCap: number): Pick<Scenario, 'topUp'> => ({
  topUp: { level: volume, rate: 50, sources: [{ kind: 'mains', water: 'mains', dailyCap }] },
});

describe('chloride under rationed top-up', () => {
  const free = pond(rationed(Infinity));
  const loss = evaporating(free);

  it.each([0, 1 / 3, 0.8])(
    'rises by (1 + R c t / V0 c0) / (1 - (E - R) t / V0) with R = %s of what evaporates',
    (share) => {
      const ration = share * loss;
      const run = pond(rationed(ration));
      courseOf(run, 'chloride', 'sump').forEach((chloride, day) => {
        const salt = 1 + (ration * source * day) / (volume * start);
        const water = 1 - ((loss - ration) * day) / volume;
        expect(Math.abs(chloride / (start * (salt / water)) - 1)).toBeLessThan(1e-9);
      });
    },
  );

  it('a third of the water for eight weeks leaves it higher than free top-up by exactly what is not let in', () => {
    const third = courseOf(pond(rationed(loss / 3)), 'chloride', 'sump')[days];
    const all = courseOf(free, 'chloride', 'sump')[days];
    const salt = (share: number): number => volume * start + share * loss * source * days;
    const ratio = (salt(1 / 3) / salt(1)) * (volume / (volume - (2 / 3) * loss * days));
    expect(Math.abs(third / all / ratio - 1)).toBeLessThan(1e-9);
    expect(third).toBeGreaterThan(all);
  });

  it.each(['rosenbrock', 'odex'] as const)(
    'with a discharge Q follows M = R c V / (R - E) + K V^(Q / (E + Q - R)) by %s',
    (integrator) => {
      const ration = loss / 3;
      const discharge = 0.02;
      const topUp = {
        level: volume,
        rate: ration,
        sources: [{ kind: 'mains', water: 'mains', dailyCap: Infinity }],
      } as const;
      const run = pond({ topUp }, discharge, { integrator: integrators[integrator], tolerance: 1e-8 });
      const particular = (ration * source) / (ration - loss);
      const power = discharge / (loss + discharge - ration);
      const constantOf = (volume * start - particular * volume) / volume ** power;
      courseOf(run, 'chloride', 'sump').forEach((chloride, day) => {
        const left = volume - (loss + discharge - ration) * day;
        const exact = particular + constantOf * left ** (power - 1);
        expect(Math.abs(chloride / exact - 1)).toBeLessThan(1e-6);
      });
    },
  );
});

describe('the sump of a system that evaporates more than it is let have', () => {
  const second = 1 / 86_400;
  const pump = { name: 'main', inlet: 0.31, restart: 0.6 };
  const run = (options: SimulateOptions): Run => {
    const tank = vessel('tank', 2, { open });
    const sump = vessel('sump', 1, { open: 1 });
    return doneRun(
      scenarioOf([tank, sump], {
        days: 40,
        et0: constant(et0),
        pumps: [pump],
        flows: [pumped('sump', 'tank', 30), gravity('tank', 'sump')],
        topUp: { level: 1, rate: 0.01, sources: [{ kind: 'mains', water: 'mains', dailyCap: 1 }] },
      }),
      options,
    );
  };
  const cases = (['rosenbrock', 'odex'] as const).flatMap((integrator) =>
    [1e-3, 1e-6, 1e-9].map((tolerance) => ({ integrator, tolerance })),
  );

  it.each(cases)(
    'trips its pump within a second of (V0 - inlet) / (E - R), tank and sump drawn down together: $integrator $tolerance',
    ({ integrator, tolerance }) => {
      const got = run({ integrator: integrators[integrator], tolerance });
      const loss = et0 * (open + 1) * got.model.parameters.value('water.open-coefficient');
      const trips = got.events.filter(({ kind }) => kind === 'pump-trip');
      expect(trips).toHaveLength(1);
      expect(Math.abs(trips[0].time - (1 - pump.inlet) / (loss - 0.01))).toBeLessThan(second);
    },
  );

  it('leaves the tank alone from then on: it falls by what evaporates from it', () => {
    const got = run({});
    const each = et0 * got.model.parameters.value('water.open-coefficient');
    const [trip] = got.events.filter(({ kind }) => kind === 'pump-trip');
    expect(lastOf(got).volume[0]).toBeCloseTo(2 - each * open * (40 - trip.time), 9);
  });
});

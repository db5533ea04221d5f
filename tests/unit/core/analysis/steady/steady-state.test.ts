import { allSeries, steadyState, type Run, type Scenario, type SteadyState } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../../../packages/core/src/model/compile.js';
import { doneRun } from '../../../../support/run-of.js';
import {
  constant,
  float,
  gravity,
  mainPump,
  pumped,
  scenarioOf,
  sourceWater,
  startOf,
  tilapia,
  vessel,
} from '../../../../support/scenario-builder.js';

const steady = (scenario: Scenario, options = {}): SteadyState =>
  steadyState(compileModel(scenario, createParameters(scenario.overrides)), options);

const strong = sourceWater('mains', { ammonia: 8, alkalinity: 3, carbon: 3.2, chloride: 40 });

/** Water with ammonium runs through a filter, a settler and a sump, so that everything settles without fish. */
function throughFlow(other: Partial<Scenario> = {}): Scenario {
  const temperature = constant(25);
  const vessels = [
    vessel('filter', 0.5, { surface: 40, aeration: 100, open: 0.5, temperature }),
    vessel('settler', 0.6, { capture: 0.5, floor: 0.5, temperature }),
    vessel('sump', 1.2, { open: 1, exchange: 0.3, temperature }),
  ];
  return scenarioOf(vessels, {
    et0: constant(0.004),
    pumps: [mainPump],
    flows: [pumped('sump', 'filter', 20), gravity('filter', 'settler'), gravity('settler', 'sump')],
    waters: [strong],
    topUp: float(1.1),
    start: vessels.map((each) => startOf(each, { aob: 0.2, nob: 0.1, volume: each.volume })),
    ...other,
  });
}

/** The largest difference of any series from those at the end of a run, by the larger of the two and 1e-3. */
function apart(state: SteadyState, run: Run): { name: string; by: number } {
  const last = run.samples.length - 1;
  const there = new Map(allSeries(run).map(({ name, values }) => [name, values[last]]));
  return allSeries(state.course)
    .filter(({ name }) => !/^(discharge|top-up|rain-tank)/.test(name))
    .map(({ name, values }) => {
      const end = there.get(name) ?? Number.NaN;
      const by = Math.abs(values[0] - end) / Math.max(Math.abs(end), 1e-3);
      return { name, by: Number.isNaN(by) && Number.isNaN(end) ? 0 : by };
    })
    .reduce((a, b) => (b.by > a.by ? b : a));
}

describe('a steady state', () => {
  it('equals the end of a long march within 1e-6', () => {
    const scenario = throughFlow();
    const state = steady(scenario);
    const run = doneRun({ ...scenario, days: 8000, every: 8000 }, { tolerance: 1e-9 });
    expect(state).toMatchObject({ kind: 'constant', stable: true });
    expect(apart(state, run).by).toBeLessThan(1e-6);
  });

  it.each([
    ['a pump on a clock', { pumps: [{ ...mainPump, timer: { on: 0.5, off: 0.5, offset: 0 } }] }],
    [
      'a ration that is spent by noon, then other water',
      {
        waters: [strong, sourceWater('well', { ammonia: 1 })],
        topUp: {
          level: 1.1,
          rate: 5,
          sources: [
            { kind: 'mains', water: 'mains', dailyCap: 0.15 },
            { kind: 'mains', water: 'well', dailyCap: Infinity },
          ],
        },
      },
    ],
  ] as const)('that repeats each day, by %s, equals the end of a long march within 1e-6', (_, other) => {
    // What hardly breaks down takes half a year for its e-th part: here a week, so that 300 days are long. With the number
    // of the tables 3000 days end within 2e-7 of the same state.
    const scenario = throughFlow({
      ...other,
      overrides: [{ id: 'solids.refractory-hydrolysis', value: 0.1 }],
    });
    const state = steady(scenario);
    const run = doneRun({ ...scenario, days: 300, every: 300 }, { tolerance: 1e-9 });
    expect(state).toMatchObject({ kind: 'periodic', period: 1 });
    expect(apart(state, run).by).toBeLessThan(1e-6);
  });

  it('comes back to itself in the course that it gives', () => {
    const scenario = throughFlow({
      pumps: [{ ...mainPump, timer: { on: 0.25, off: 0.25, offset: 0 } }],
    });
    const { course } = steady(scenario);
    const last = course.samples.length - 1;
    // The search ends at 1e-9 of a state or of a usual concentration, whichever is more.
    for (const { name, values } of allSeries(course).filter((each) => /^(tan|pH|oxygen)@/.test(each.name))) {
      const apart = Math.abs(values[last] - values[0]) / Math.max(1, Math.abs(values[0]));
      expect([name, apart < 1e-9]).toEqual([name, true]);
    }
    expect(course.samples[last].time).toBe(30);
  });

  it('is periodic with hours of feeding, fish held', () => {
    const fish = tilapia('fish', 'filter', { number: 10, hours: { from: 0.3, to: 0.7 } });
    const state = steady(throughFlow({ fish: [fish] }));
    const tan = allSeries(state.course).find(({ name }) => name === 'tan@filter');
    expect(state.kind).toBe('periodic');
    expect(Math.max(...(tan?.values ?? []))).toBeGreaterThan(1.05 * Math.min(...(tan?.values ?? [])));
  });

  it('spreads doses that repeat, and names what it leaves out', () => {
    const dose = { kind: 'dose', vessel: 'sump', product: 'potassium-bicarbonate', mass: 20 } as const;
    const cut = { kind: 'clean', vessel: 'filter', biofilm: 0.5, solids: 0 } as const;
    const actions = [1, 3, 5, 7, 9].map((at) => ({ at, action: dose }));
    const stops = { kind: 'dose', vessel: 'sump', product: 'potassium-bicarbonate', mass: 5 } as const;
    const early = [1, 2, 3].map((at) => ({ at, action: stops }));
    const plain = steady(throughFlow());
    const dosed = steady(throughFlow({ actions: [...actions, ...early, { at: 4, action: cut }] }));
    const alkalinity = ({ course }: SteadyState): number =>
      allSeries(course).find(({ name }) => name === 'alkalinity@sump')?.values[0] ?? Number.NaN;
    expect(dosed.spread).toEqual([{ action: dose, every: 2 }]);
    expect(dosed.leftOut).toEqual(['dose', 'clean']);
    expect(alkalinity(dosed)).toBeGreaterThan(alkalinity(plain) + 0.2);
  });

  it('holds what it is asked to hold, and says what it would gain', () => {
    const state = steady(throughFlow(), { hold: ['nitrate'] });
    const nitrate = state.held.find(({ component }) => component === 'nitrate');
    expect(nitrate).toMatchObject({ place: 'sump', reason: 'held as asked' });
    expect(nitrate?.drift).toBeGreaterThan(0.1);
  });

  it('refuses a component that is not in the water, with the nearest', () => {
    expect(() => steady(throughFlow(), { hold: ['nitrat'] })).toThrow(
      /no such component.*did you mean nitrate/,
    );
  });

  it('refuses beds that drain by a siphon, which keeps no time, and names what stands for it', () => {
    const bed = vessel('bed', 1, { drain: { rate: 30, to: 0.4, by: 'siphon' } });
    const siphoned = scenarioOf([bed, vessel('sump', 3)], {
      pumps: [mainPump],
      flows: [pumped('sump', 'bed', 10), gravity('bed', 'sump')],
    });
    expect(() => steady(siphoned)).toThrow(/no day repeats itself.*bed.*`flood`/);
  });

  it('refuses water that never settles, with how fast it falls', () => {
    const rationed = { level: 1.1, rate: 1, sources: [{ kind: 'mains', water: 'mains', dailyCap: 0.001 }] };
    const leaky = throughFlow({ topUp: rationed as Scenario['topUp'] & object, days: 1 });
    const vast = { ...leaky, vessels: leaky.vessels.map((each) => ({ ...each, exchange: 0, open: 0 })) };
    const slow = { ...vast, vessels: [...vast.vessels.slice(0, 2), { ...vast.vessels[2], leak: 0.00101 }] };
    expect(() => steady(slow)).toThrow(/water never settles.*sump changes by -0.01 L\/d/);
  });
});

import { describe, expect, it } from 'vitest';
import type { TimedAction, Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { courseOf, doneRun, extentOf, lastOf } from '../../../support/run-of.js';
import { linearSolution } from '../../../support/matrix-exponential.js';
import {
  constant,
  float,
  gravity,
  mainPump,
  pumped,
  scenarioOf,
  sourceWater,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../../support/scenario-builder.js';
import { integrators } from '../../../support/integrators.js';

const names = ['rosenbrock', 'odex'] as const;

const power = (at: number, running: boolean): TimedAction => ({
  at,
  action: { kind: 'pump', pump: 'main', running },
});

/** A tank of 10 m3 with 200 g m-3 of chloride and a sump of 2 m3, 1 m3 a day round, the sump exchanged by clean mains. */
function twoVessels(rest: {
  readonly exchange: number;
  readonly sumpChloride: number;
  readonly days: number;
  readonly every: number;
  readonly actions: readonly TimedAction[];
}): Scenario {
  const { exchange, sumpChloride, ...run } = rest;
  const tank = vessel('tank', 10);
  const sump = vessel('sump', 2, { exchange });
  return scenarioOf([tank, sump], {
    waters: [sourceWater('mains', { chloride: 0 })],
    topUp: float(2),
    pumps: [mainPump],
    flows: [pumped('sump', 'tank', 1), gravity('tank', 'sump')],
    start: [
      startOf(tank, { water: stillWater(2, 7.5, { chloride: 200 }) }),
      startOf(sump, { water: stillWater(2, 7.5, { chloride: sumpChloride }) }),
    ],
    ...run,
  });
}

describe('a pump off for 0.02 d in a run of 60 d', () => {
  const scenario = (actions: readonly TimedAction[]): Scenario =>
    twoVessels({ exchange: 0.2, sumpChloride: 0, days: 60, every: 60, actions });
  // The stop is over [30.31, 30.33).
  const on = [
    [-1 / 10, 1 / 10],
    [1 / 2, -1.2 / 2],
  ];
  const off = [
    [0, 0],
    [0, -0.2 / 2],
  ];
  const none = [0, 0];
  const before = linearSolution(on, none, [200, 0], 30.31);
  const exact = linearSolution(on, none, linearSolution(off, none, before, 0.02), 60 - 30.33);
  const unbroken = linearSolution(on, none, [200, 0], 60);

  it.each(names)('is not stepped over by %s (exact solution in three pieces)', (integrator) => {
    const options = { integrator: integrators[integrator], tolerance: 1e-9 };
    const stopped = doneRun(scenario([power(30.31, false), power(30.33, true)]), options);
    const running = doneRun(scenario([]), options);
    const end = courseOf(stopped, 'chloride', 'tank').at(-1) ?? Number.NaN;
    const gap = exact[0] - unbroken[0];
    expect(gap).toBeGreaterThan(1e-3);
    expect(end / exact[0]).toBeCloseTo(1, 7);
    expect((end - (courseOf(running, 'chloride', 'tank').at(-1) ?? Number.NaN)) / gap).toBeCloseTo(1, 2);
    expect(lastOf(stopped).carried[0]).toBeCloseTo(60 - 0.02, 10);
  });
});

describe('a pump off for 0.02 d in a run of 365 d', () => {
  const scenario = (actions: readonly TimedAction[]): Scenario =>
    twoVessels({ exchange: 0.02, sumpChloride: 200, days: 365, every: 1, actions });
  const on = [
    [-1 / 10, 1 / 10],
    [1 / 2, -1.02 / 2],
  ];
  const off = [
    [0, 0],
    [0, -0.02 / 2],
  ];
  const none = [0, 0];
  // The stop is over [200.31, 200.33); read on day 201.
  const before = linearSolution(on, none, [200, 200], 200.31);
  const stopped = linearSolution(on, none, linearSolution(off, none, before, 0.02), 201 - 200.33);
  const exact = stopped[0] - linearSolution(on, none, [200, 200], 201)[0];

  it.each(names.flatMap((integrator) => [1e-4, 1e-6, 1e-8].map((tolerance) => ({ integrator, tolerance }))))(
    'changes the result by the exact amount with $integrator at $tolerance',
    ({ integrator, tolerance }) => {
      const options = { integrator: integrators[integrator], tolerance };
      const [one, other] = [[power(200.31, false), power(200.33, true)], []].map(
        (actions) => courseOf(doneRun(scenario(actions), options), 'chloride', 'tank')[201],
      );
      expect(Math.abs(exact)).toBeGreaterThan(1e-3);
      expect((one - other) / exact).toBeGreaterThan(0.9);
      expect((one - other) / exact).toBeLessThan(1.1);
    },
  );
});

describe('feed', () => {
  it.each(names)('given in hours of the day amounts to the ration (%s)', (integrator) => {
    const cohorts = [
      tilapia('fish', 'sump', { ration: { kind: 'mass', gramsPerDay: 90 }, hours: { from: 0.3, to: 0.4 } }),
    ];
    const run = doneRun(
      scenarioOf([vessel('sump', 5, { aeration: 100 })], { fish: cohorts, days: 3, every: 0.1 }),
      {
        integrator: integrators[integrator],
      },
    );
    const given = run.samples.map(
      (sample) => extentOf(run, sample, 'feeding@fish') + extentOf(run, sample, 'uneaten-feed@fish'),
    );
    given.forEach((amount, i) => {
      const day = Math.floor(i / 10);
      const share = i % 10 <= 3 ? 0 : 1;
      expect(amount).toBeCloseTo(90 * (day + share), 6);
    });
  });

  it('given in ten hours is eaten as over the day: fish leave no more than they leave of any ration under their appetite', () => {
    const ration = { kind: 'share', perDay: 0.01 } as const;
    const tenHours = { from: 8 / 24, to: 18 / 24 };
    const [day, hours] = [{ ration }, { ration, hours: tenHours }].map((fed) => {
      const cohorts = [tilapia('fish', 'sump', fed)];
      const run = doneRun(
        scenarioOf([vessel('sump', 500, { aeration: 100 })], { fish: cohorts, days: 4, every: 1 }),
      );
      const end = run.samples[run.samples.length - 1];
      const eaten = extentOf(run, end, 'feeding@fish');
      return { eaten, left: extentOf(run, end, 'uneaten-feed@fish') / eaten };
    });
    expect(Math.abs(hours.eaten / day.eaten - 1)).toBeLessThan(0.02);
    expect(hours.left).toBeCloseTo(day.left, 3);
    expect(day.left).toBeLessThan(0.06);
  });
});

describe('an aerator that stops as a pump starts', () => {
  it('leaves no coefficient of the time before: what is caught follows the new flow', () => {
    const settler = vessel('settler', 0.3, { capture: 0.6, aeration: 10 });
    const sump = vessel('sump', 1);
    const run = doneRun(
      scenarioOf([settler, sump], {
        pumps: [mainPump],
        flows: [pumped('sump', 'settler', 10), gravity('settler', 'sump')],
        start: [settler, sump].map((each) =>
          startOf(each, { water: stillWater(2, 7.5, { solids: 10, oxygen: 0 }) }),
        ),
        actions: [
          { at: 0, action: { kind: 'pump', pump: 'main', running: false } },
          { at: 1, action: { kind: 'pump', pump: 'main', running: true } },
          { at: 1, action: { kind: 'aeration', vessel: 'settler', running: false } },
        ],
        days: 2,
      }),
    );
    expect(extentOf(run, run.samples[1], 'capture@settler')).toBe(0);
    expect(extentOf(run, lastOf(run), 'capture@settler')).toBeGreaterThan(5);
  });
});

describe('the record', () => {
  it('has one sample per output time and the end, each before the actions of its instant', () => {
    const sump = vessel('sump', 1);
    const dose = { kind: 'dose', vessel: 'sump', product: 'sodium-chloride', mass: 100 } as const;
    const run = doneRun(
      scenarioOf([sump], { days: 2.5, every: 1, et0: constant(0), actions: [{ at: 1, action: dose }] }),
    );
    expect(run.samples.map(({ time }) => time)).toEqual([0, 1, 2, 2.5]);
    expect(courseOf(run, 'chloride', 'sump').slice(0, 2)).toEqual([50, 50]);
    expect(courseOf(run, 'chloride', 'sump')[2]).toBeGreaterThan(100);
  });
});

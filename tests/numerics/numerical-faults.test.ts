import { describe, expect, it } from 'vitest';
import {
  allSeries,
  budgetsOf,
  compileModel,
  createParameters,
  endStateOf,
  limitsOf,
  relativeResidual,
  worstResidual,
  type ResumableRun,
  type Run,
} from '@leat/core';
import { endingOf } from '../../packages/cli/src/commands/shared/simulated.js';
import { csv } from '@leat/view/documents';
import { simulateWith } from '../../packages/core/src/run/stepping.js';
import type { Action, Scenario } from '../../packages/core/src/scenario/scenario.js';
import type { RateSystem } from '../../packages/core/src/solve/contract.js';
import { integrators } from '../support/integrators.js';
import { rosenbrock, rosenbrockWith } from '../../packages/core/src/solve/rosenbrock.js';
import { sparseLu } from '../../packages/core/src/solve/sparse-lu.js';
import { doneRun, lastOf, runOf } from '../support/run-of.js';
import {
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
} from '../support/scenario-builder.js';

/** When the trouble begins, d. */
const AT = 5.3;

const tank = vessel('tank', 2, { aeration: 60 });
const sump = vessel('sump', 1);
const scenario = scenarioOf([tank, sump], {
  pumps: [mainPump],
  flows: [pumped('sump', 'tank', 20), gravity('tank', 'sump')],
  fish: [tilapia('fish', 'tank')],
  start: [startOf(tank), startOf(sump)],
  days: 10,
  every: 0.5,
});
const model = compileModel(scenario, createParameters());

/** A run whose system of rates is led astray. */
function ledAstray(
  astray: (system: RateSystem) => Partial<RateSystem>,
  name: 'rosenbrock' | 'odex',
): ResumableRun {
  return simulateWith(model, {}, ({ system }, tolerance) => {
    const { states, rates, stoichiometry, dependence } = system;
    return integrators[name](
      {
        ...{ states, rates, stoichiometry, dependence },
        evaluate: (t, y, r) => {
          system.evaluate(t, y, r);
        },
        differentiate: (t, y, dr, rt) => {
          system.differentiate(t, y, dr, rt);
        },
        ...astray(system),
      },
      tolerance,
    );
  });
}

/** What must hold of a run that broke off: its part can be told, saved and drawn, and nothing in it is lost. */
function expectUsable(run: ResumableRun, from: number, to: number): void {
  const { outcome, samples } = run;
  expect(outcome.time).toBeGreaterThanOrEqual(from);
  expect(outcome.time).toBeLessThanOrEqual(to);
  expect(outcome.advice).toMatch(/^[a-z].{20,}$/);
  const times = samples.map(({ time }) => time);
  expect(times.at(-1)).toBe(outcome.time);
  expect([...times].sort((a, b) => a - b)).toEqual(times);
  expect(samples.length).toBeGreaterThan(Math.floor(from / scenario.every));
  for (const { y, x } of samples) expect([...y, ...x].every(Number.isFinite)).toBe(true);
  const worst = worstResidual(budgetsOf(run));
  expect(relativeResidual(worst.budget)).toBeLessThan(1e-9);
  expect(endingOf(run, worst.budget)).toMatchObject({ code: 3 });
  expect(endingOf(run, worst.budget).text).toContain(`not finished: ${outcome.kind} on day`);
  const series = allSeries(run);
  expect(csv(times, series).split('\n').length).toBeGreaterThan(samples.length);
  expect(limitsOf(run).length).toBeGreaterThan(0);
  expect(JSON.parse(JSON.stringify(endStateOf(run)))).toMatchObject({});
}

describe('a rate that is not a finite number', () => {
  it.each(['rosenbrock', 'odex'] as const)('is named and leaves what was reached (%s)', (name) => {
    const run = ledAstray(
      (system) => ({
        evaluate: (t, y, r) => {
          system.evaluate(t, y, r);
          if (t > AT) r[3] = Number.NaN;
        },
      }),
      name,
    );
    expect(run.outcome.kind).toBe('not-finite');
    expectUsable(run, AT - 0.01, AT + 0.001);
  });

  it('that is infinite in the partials is named too', () => {
    const run = ledAstray(
      (system) => ({
        differentiate: (t, y, dr, rt) => {
          system.differentiate(t, y, dr, rt);
          if (t > AT) dr.fill(Infinity);
        },
      }),
      'rosenbrock',
    );
    expect(run.outcome.kind).toBe('not-finite');
    // Partials are asked for at the beginning of a step: the step that passes the time is still made.
    expectUsable(run, AT, 6.5);
  });

  it('comes of water outside pH 0-14, by a dose in a scenario', () => {
    // As much as the sump may be given: 3.6 mol/L.
    const lye: Action = { kind: 'dose', vessel: 'sump', product: 'potassium-hydroxide', mass: 200_000 };
    const run = runOf({ ...scenario, actions: [{ at: 5, action: lye }] });
    expect(run.outcome.kind).toBe('not-finite');
    expect(run.outcome.advice).toContain('outside pH 0-14');
    expectUsable(run, 5, 5.1);
  });
});

describe('a step that is too small', () => {
  it.each(['rosenbrock', 'odex'] as const)('is named with the state that limits it (%s)', (name) => {
    // A huge rate that jumps at every look: no step is short enough for two looks to agree.
    let looks = 0;
    const run = ledAstray(
      (system) => ({
        evaluate: (t, y, r) => {
          system.evaluate(t, y, r);
          if (t > AT) r[0] += looks++ % 3 === 0 ? 1e12 : -1e12;
        },
      }),
      name,
    );
    expect(run.outcome.kind).toBe('step-too-small');
    expect(run.outcome.worst).toMatch(/@(tank|sump|fish)$/);
    expectUsable(run, 5, AT + 1e-6);
  });
});

describe('a matrix that is singular', () => {
  it('is named and leaves what was reached', () => {
    let now = 0;
    const run = simulateWith(model, {}, (rates, tolerance) => {
      const integrator = rosenbrockWith((pattern) => {
        const solver = sparseLu(pattern);
        return {
          entries: solver.entries,
          values: solver.values,
          failedRow: 2,
          place: (i, j) => solver.place(i, j),
          factor: () => now < 5 && solver.factor(),
          solve: (b) => {
            solver.solve(b);
          },
        };
      })(rates.system, tolerance);
      return {
        name: integrator.name,
        work: integrator.work,
        advance: (from, to, y, x, sampling) => {
          now = from;
          return integrator.advance(from, to, y, x, sampling);
        },
        restart: () => {
          integrator.restart();
        },
      };
    });
    expect(run.outcome).toMatchObject({ kind: 'singular', time: 5 });
    expect(run.outcome.worst).toContain('@');
    expectUsable(run, 5, 5);
  });
});

describe('too many steps', () => {
  it('are named and leave what was reached', () => {
    const run = simulateWith(model, {}, (rates, tolerance) => {
      const quick = rosenbrock(rates.system, tolerance);
      const slow = rosenbrock(rates.system, tolerance, { maxSteps: 2, firstStep: 1e-9 });
      return {
        name: quick.name,
        work: quick.work,
        advance: (from, to, y, x, sampling) => (from < 5 ? quick : slow).advance(from, to, y, x, sampling),
        restart: () => {
          quick.restart();
        },
      };
    });
    expect(run.outcome.kind).toBe('too-many-steps');
    expectUsable(run, 5, 5.01);
  });
});

describe('an event at the time where a segment stops', () => {
  it.each(['rosenbrock', 'odex'] as const)('happens once, and no time is told twice (%s)', (integrator) => {
    // The float is reached, a timer switches, feed begins and ends, and actions are due at the same instants.
    const exchanged = vessel('sump', 1, { leak: 0.1 });
    const stop = (at: number, running: boolean) =>
      ({ at, action: { kind: 'pump', pump: 'main', running } }) as const;
    const run = doneRun(
      {
        ...scenarioOf([tank, exchanged], {
          waters: [sourceWater('mains')],
          topUp: float(0.9, 0.1),
          pumps: [mainPump],
          flows: [pumped('sump', 'tank', 20), gravity('tank', 'sump')],
          fish: [tilapia('fish', 'tank', { hours: { from: 0.25, to: 0.5 } })],
          start: [startOf(tank), startOf(exchanged)],
          days: 4,
          every: 0.25,
        }),
        actions: [
          stop(0, true),
          stop(1, false),
          stop(1, true),
          stop(1.25, false),
          stop(1.25 + 1e-12, true),
          { at: 2.5, action: { kind: 'feed', cohort: 'fish', factor: 0.5 } },
        ],
      },
      { integrator: integrators[integrator] },
    );
    expect(run.outcome).toEqual({ kind: 'done', time: 4 });
    expect(run.samples.map(({ time }) => time)).toEqual(Array.from({ length: 17 }, (_, i) => i / 4));
    const pump = run.events.filter(({ kind, place }) => kind === 'pump' || place === 'main');
    expect(new Set(run.events.map((event) => JSON.stringify(event))).size).toBe(run.events.length);
    expect(pump.length).toBeLessThanOrEqual(6);
    expect(relativeResidual(worstResidual(budgetsOf(run)).budget)).toBeLessThan(1e-9);
    // 20 m3 a day, standing still at no time longer than an instant.
    expect(lastOf(run).carried[0]).toBeCloseTo(80, 6);
  });
});

describe('what turns itself on and off', () => {
  it('is a pump whose two levels are next to each other: chattering, told with what was reached', () => {
    // A tank that leaks lets less come back than the pump takes.
    const high = vessel('tank', 2, { aeration: 60, leak: 2 });
    const low = vessel('sump', 1);
    const run = runOf(
      scenarioOf([high, low], {
        pumps: [{ name: 'main', inlet: 0.5, restart: 0.5 + 1e-7 }],
        flows: [pumped('sump', 'tank', 5), gravity('tank', 'sump')],
        start: [startOf(high), startOf(low)],
        waters: [sourceWater('mains')],
        topUp: float(0.9, 1),
        days: 10,
        every: 0.5,
      }),
    );
    expect(run.outcome.kind).toBe('chattering');
    expect(run.outcome.advice).toContain('restart level is too near its inlet');
    expectUsable(run, 0, 10);
  });

  const chattering = (until?: number): Scenario => ({
    ...scenarioOf([tank], {
      fish: [tilapia('fish', 'tank', { number: 0 })],
      start: [startOf(tank, { water: stillWater(2, 7.5, { chloride: 100 }) })],
      waters: [sourceWater('low', { chloride: 0 }), sourceWater('high', { chloride: 100 })],
      actions: Array.from({ length: 11 }, (_, day) => ({
        at: day,
        action: {
          kind: 'change-water',
          vessel: 'tank',
          share: 1,
          water: day % 2 === 0 ? 'low' : 'high',
        },
      })),
      days: 12,
    }),
    rules: [
      {
        read: 'chloride',
        vessel: 'tank',
        side: 'above',
        level: 50,
        ...(until === undefined ? {} : { until }),
        kit: { every: 1 },
        doing: [{ kind: 'feed', cohort: 'fish', factor: 0.5 }],
        undoing: [{ kind: 'feed', cohort: 'fish', factor: 1 }],
        stands: true,
        wait: 0,
        most: Infinity,
      },
    ],
  });
  const said = (run: Run): string[] =>
    run.events.filter(({ text }) => text.includes('chatters')).map(({ time, text }) => `${time} ${text}`);

  it('is a rule that acts and lets go at every reading: named once, with what to do, and the run goes on', () => {
    const run = doneRun(chattering());
    expect(said(run)).toEqual([
      '5 chloride above 50 mg/L: chatters, turned on and off at each of the last 6 readings; set its two levels further apart, read less often, or do less at once',
    ]);
    expect(lastOf(run).time).toBe(12);
  });

  it('is no rule that holds', () => {
    expect(said(doneRun(chattering(0)))).toEqual([]);
  });
});

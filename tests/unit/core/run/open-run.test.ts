import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compileModel,
  createParameters,
  InputError,
  openRun,
  seriesOf,
  simulate,
  type Run,
  type Scenario,
  type SteppedRun,
} from '@leat/core';
import type { Action } from '../../../../packages/core/src/scenario/scenario.js';
import { networks } from '../../../support/random-system.js';
import { scenarioOf, startOf, stillWater, tilapia, vessel } from '../../../support/scenario-builder.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';

const modelOf = (scenario: Scenario) => compileModel(scenario, createParameters(scenario.overrides));

const told = ({ samples, postings, events, doses, outcome, ages, work }: Run) => ({
  ...{ samples, postings, events, doses, outcome, ages, work },
});

/** A tank with fish and a film, on a supply. */
function tank(other: Partial<Scenario> = {}): Scenario {
  const one = vessel('tank', 2, { surface: 60, aeration: 100 });
  const start = startOf(one, { water: stillWater(2, 7.5, { nitrate: 5 }), aob: 0.1, nob: 0.1 });
  return scenarioOf([one], { days: 8, start: [start], fish: [tilapia('fish', 'tank')], ...other });
}

const halved: Action = { kind: 'feed', cohort: 'fish', factor: 0.5 };

function toTheEnd(run: SteppedRun, stops: readonly number[] = []): Run {
  for (const stop of stops) run.advance(stop);
  run.advance(Infinity);
  return run.finish();
}

function problemsOf(attempt: () => unknown): readonly string[] {
  try {
    attempt();
  } catch (error) {
    if (error instanceof InputError) return error.faults.map(({ key, problem }) => `${key}: ${problem}`);
    throw error;
  }
  return [];
}

describe('openRun', () => {
  it('makes the run of simulate to the byte, whatever whole days it stops at', () => {
    const stops = fc.array(fc.integer({ min: 0, max: 4 }), { maxLength: 4 });
    fc.assert(
      fc.property(networks, stops, (scenario, days) => {
        const model = modelOf(scenario);
        const sorted = [...days].sort((a, b) => a - b);
        expect(told(toTheEnd(openRun(model), sorted))).toEqual(told(simulate(model)));
      }),
      { numRuns: 25 },
    );
  });

  it('is the same to the tolerance where it stops within a day', () => {
    const model = modelOf(shippedScenario('backyard', 4));
    const whole = seriesOf(simulate(model), 'tan@tank').values;
    const cut = seriesOf(toTheEnd(openRun(model), [0.3, 1.77, 2.5]), 'tan@tank').values;
    whole.forEach((value, i) => {
      expect(Math.abs(cut[i] - value)).toBeLessThan(1e-4 * Math.max(value, 0.1));
    });
  });

  it.each([0, 3, 3.4])('does at day %d what the scenario would have done', (at) => {
    const other: Action = { kind: 'lose-fish', cohort: 'fish', share: 0.1 };
    const stop: Action = { kind: 'aeration', vessel: 'tank', running: false };
    const actions = [{ at, action: stop }];
    const planned = modelOf(tank({ actions: [...actions, { at, action: halved }, { at, action: other }] }));
    const run = openRun(modelOf(tank({ actions })));
    run.advance(at);
    run.do(halved);
    run.do(other);
    expect(told(toTheEnd(run))).toEqual(told(simulate(planned)));
  });

  it('reads what the samples say, before what is due', () => {
    const model = modelOf(shippedScenario('backyard', 6));
    const whole = simulate(model);
    const run = openRun(model);
    for (const day of [0, 2, 5]) {
      run.advance(day);
      expect(run.day).toBe(day);
      for (const name of ['tan@tank', 'pH@tank', 'top-up@system', 'fish-mass@tilapia']) {
        expect([day, name, run.read(name)]).toEqual([day, name, seriesOf(whole, name).at(day)]);
      }
    }
    expect(() => run.read('tn@tank')).toThrow(/no such series.*did you mean tan@tank/);
  });

  it('keeps runs of one model apart', () => {
    const model = modelOf(tank());
    const [one, two] = [openRun(model), openRun(model)];
    one.advance(4);
    two.advance(2);
    two.do(halved);
    one.advance(6);
    two.advance(8);
    expect(two.read('tan@tank')).toBeLessThan(seriesOf(simulate(model), 'tan@tank').at(8));
    expect(told(toTheEnd(one))).toEqual(told(simulate(model)));
  });

  it('gives a state to go on from, which is that of a run that ends there', () => {
    const run = openRun(modelOf(tank()));
    run.advance(5);
    const rest = simulate(modelOf(tank({ saved: run.state() })));
    const whole = simulate(modelOf(tank()));
    expect(rest.samples.at(-1)?.y).toEqual(whole.samples.at(-1)?.y);
    run.do(halved);
    expect(() => run.state()).toThrow(/no state at day 5: an action waits/);
    run.advance(6);
    expect(run.state().operation.factors).toEqual({ fish: 0.5 });
  });

  it('ends where it stands when it is finished early', () => {
    const run = openRun(modelOf(tank()));
    run.advance(2.5);
    const { outcome, samples } = run.finish();
    expect(outcome).toEqual({ kind: 'done', time: 2.5 });
    expect(samples.map(({ time }) => time)).toEqual([0, 1, 2, 2.5]);
    const never = openRun(modelOf(tank())).finish();
    expect([never.samples.length, never.samples[0].fed[0]]).toEqual([1, 150]);
  });

  it('says how it ended', () => {
    const run = openRun(modelOf(tank()));
    expect([run.outcome, run.advance(3), run.outcome]).toEqual([undefined, true, undefined]);
    expect([run.advance(9), run.day, run.outcome]).toEqual([false, 8, { kind: 'done', time: 8 }]);
  });

  it('refuses an action with every fault, at its path', () => {
    const run = openRun(modelOf(tank()));
    expect(problemsOf(() => run.do({ kind: 'feed', cohort: 'fsh', factor: -1 }))).toEqual([
      'action.factor: out of range',
      'action.cohort: unknown cohort',
    ]);
    expect(problemsOf(() => run.do({ kind: 'fed' } as unknown as Action))).toEqual([
      'action.kind: unknown word',
    ]);
    expect(() => run.do({ kind: 'feed', cohort: 'fsh', factor: 1 })).toThrow(/"fsh".*did you mean fish/);
  });

  it('refuses the past, and what comes after its end', () => {
    const run = openRun(modelOf(tank()));
    run.advance(3);
    expect(() => run.advance(2)).toThrow(/cannot run to day 2: the run stands at day 3/);
    expect(() => run.advance(Number.NaN)).toThrow(RangeError);
    run.advance(8);
    expect(() => run.do(halved)).toThrow(/the run is over at day 8/);
    run.finish();
    expect(() => run.advance(9)).toThrow(/was finished/);
    expect(() => run.finish()).toThrow(/was finished/);
  });
});

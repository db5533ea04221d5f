import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createParameters } from '@leat/core';
import { compileModel } from '../../../../packages/core/src/model/compile.js';
import { Driver, integratorOf, type SimulateOptions } from '../../../../packages/core/src/run/driver.js';
import type { RunState } from '../../../../packages/core/src/run/run-state.js';
import type { Run, Sample } from '../../../../packages/core/src/run/run.js';
import type { Rule, Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { networks } from '../../../support/random-system.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';
import { integrators } from '../../../support/integrators.js';

type Told = Pick<Run, 'samples' | 'postings' | 'events' | 'outcome' | 'ages'>;

function modelOf(scenario: Scenario) {
  return compileModel(scenario, createParameters(scenario.overrides));
}

/** The run in one go, and the state it ends in. */
function inOneGo(scenario: Scenario, options: SimulateOptions): { told: Told; end: RunState } {
  const driver = new Driver(modelOf(scenario), options, integratorOf(options));
  driver.start();
  while (driver.advance());
  return { told: driver.finish(), end: driver.state };
}

/** The same, but each segment in a driver of its own that knows nothing but a copy of the state. */
function pieceByPiece(
  scenario: Scenario,
  options: SimulateOptions,
): { told: Told; end: RunState; pieces: number } {
  const model = modelOf(scenario);
  const samples: Sample[] = [];
  const [postings, events]: [Run['postings'][number][], Run['events'][number][]] = [[], []];
  let driver = new Driver(model, options, integratorOf(options));
  driver.start();
  for (let pieces = 1; ; pieces++) {
    const goesOn = driver.advance();
    const last = goesOn ? undefined : driver.finish();
    const { record } = driver;
    samples.push(...record.samples.map((sample) => ({ ...sample, posted: sample.posted + postings.length })));
    postings.push(...record.postings);
    events.push(...record.events);
    if (last !== undefined)
      return { told: { ...last, samples, postings, events }, end: driver.state, pieces };
    driver = new Driver(model, options, integratorOf(options), structuredClone(driver.state));
  }
}

const outcomeOf = ({ samples, postings, events, outcome, ages }: Told): Told => ({
  samples,
  postings,
  events,
  outcome,
  ages,
});

/** Feeds less while ammonia reads high, and doses against acid, by a kit that errs. */
const rules: readonly Rule[] = [
  {
    read: 'ammonia',
    vessel: 'tank',
    side: 'above',
    level: 0.4,
    until: 0.3,
    kit: { every: 1, resolution: 0.05, error: { kind: 'relative', deviation: 0.3 } },
    doing: [{ kind: 'feed', cohort: 'tilapia', factor: 0.5 }],
    undoing: [{ kind: 'feed', cohort: 'tilapia', factor: 1 }],
    stands: true,
    wait: 0,
    most: Infinity,
  },
  {
    read: 'alkalinity',
    vessel: 'sump',
    side: 'below',
    level: 5,
    kit: { every: 2, error: { kind: 'absolute', deviation: 0.5 } },
    doing: [{ kind: 'dose', vessel: 'sump', product: 'potassium-bicarbonate', mass: 20 }],
    undoing: [],
    stands: false,
    wait: 3,
    most: 3,
  },
];

/** Timers, hours of feeding, rain, a cap of the week, rules and actions. */
function busy(): Scenario {
  const scenario = shippedScenario('backyard');
  return {
    ...scenario,
    days: 16,
    every: 0.5,
    seed: 7,
    rules,
    pumps: scenario.pumps.map((pump) => ({ ...pump, timer: { on: 0.37, off: 0.2, offset: 0.05 } })),
    fish: scenario.fish.map((cohort) => ({ ...cohort, hours: { from: 0.3, to: 0.6 } })),
    actions: [
      { at: 1, action: { kind: 'top-up', weeklyCap: 0.02 } },
      {
        at: 2.5,
        action: { kind: 'change-water', vessel: 'tank', share: 0.2, water: scenario.waters[0].name },
      },
      { at: 4, action: { kind: 'clean', vessel: 'bed', biofilm: 0.3, solids: 0.9 } },
      { at: 9.25, action: { kind: 'aeration', vessel: 'tank', running: false } },
      { at: 9.5, action: { kind: 'aeration', vessel: 'tank', running: true } },
    ],
  };
}

describe('the state of a run', () => {
  it.each(['rosenbrock', 'odex'] as const)(
    'is all that it goes on from: a run of pieces is the run in one go, to the last bit (%s)',
    (integrator) => {
      const scenario = busy();
      const whole = inOneGo(scenario, { integrator: integrators[integrator] });
      const pieces = pieceByPiece(scenario, { integrator: integrators[integrator] });
      expect(whole.told.outcome.kind).toBe('done');
      expect(pieces.pieces).toBeGreaterThan(70);
      expect(new Set(whole.told.events.map(({ kind }) => kind))).toContain('rule');
      expect(outcomeOf(pieces.told)).toEqual(outcomeOf(whole.told));
      expect(pieces.end).toEqual(whole.end);
    },
  );

  it('is so of any network, whatever its pumps and floats come to', () => {
    fc.assert(
      fc.property(networks, (scenario) => {
        const whole = inOneGo(scenario, {});
        const pieces = pieceByPiece(scenario, {});
        expect(outcomeOf(pieces.told)).toEqual(outcomeOf(whole.told));
        expect(pieces.end).toEqual(whole.end);
      }),
      { numRuns: 12 },
    );
  });

  it('goes on from a moment as often as wanted', () => {
    const scenario = busy();
    const model = modelOf(scenario);
    const driver = new Driver(model, {}, integratorOf({}));
    driver.start();
    while (driver.state.time < 5) driver.advance();
    const moment = structuredClone(driver.state);
    const ends = [1, 2].map(() => {
      const again = new Driver(model, {}, integratorOf({}), structuredClone(moment));
      while (again.advance());
      return again.state;
    });
    while (driver.advance());
    expect(ends).toEqual([driver.state, driver.state]);
  });
});

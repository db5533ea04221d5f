import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { compileModel } from '../../../../packages/core/src/model/compile.js';
import { openModel } from '../../../../packages/core/src/model/open-model.js';
import { checkScenario } from '../../../../packages/core/src/scenario/check-scenario.js';
import { readScenario } from '../../../../packages/core/src/scenario/read-scenario.js';
import { endStateOf } from '../../../../packages/core/src/run/saved.js';
import type { SavedState } from '../../../../packages/core/src/scenario/saved-state.js';
import type { Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { doneRun } from '../../../support/run-of.js';
import { teachingSystem } from '../../../support/teaching-system.js';
import { smallSystem } from '../../../product/faults/small-system.js';
import { messageOf } from '../../../support/message-of.js';
import { type Free, saidOf, sound } from '../../../support/scenario-faults.js';

describe('a scenario built in code', () => {
  it('that is sound passes', () => {
    expect(saidOf(() => undefined)).toBe('no fault');
  });

  it('tells all its faults at once, each at its path', () => {
    const faults = saidOf((s) => {
      s.vessels[0].volume = -1;
      s.flows[2].to = 'setler';
      s.fish[0].species = 'nile-tilapa';
      s.actions[0].at = 99;
    });
    expect(faults.split('\n')).toEqual([
      'vessels.tank-1.volume: negative; got -1; expected a number of m3, more than 0',
      'flows[2].to: unknown vessel; got "setler"; did you mean settler?',
      'fish.grown.species: unknown species; got "nile-tilapa"; did you mean nile-tilapia?',
      'actions[0].at: not before the end of the run; got 99; expected day 0 to before day 30',
    ]);
  });

  it('is checked when it is compiled and when it is opened, so that none gets past', () => {
    const lost = { ...sound, flows: sound.flows.map((flow) => ({ ...flow, pump: 'pump-9' })) };
    const said = saidOf((s) => {
      s.flows = lost.flows;
    });
    expect(said).toContain('flows[0].pump: unknown pump; got "pump-9"; expected one of main');
    expect(messageOf(() => compileModel(lost, createParameters()))).toBe(said);
    expect(messageOf(() => openModel({ scenario: lost, notes: [], used: [] }))).toBe(said);
  });

  it('made of one that was read is checked again: only the very one is not', () => {
    const read = readScenario(smallSystem, { file: 'small.yaml' });
    const other = { ...read, reservoir: 'smup' };
    expect(messageOf(() => openModel({ scenario: read, notes: [], used: [] }))).toBe('no fault');
    expect(messageOf(() => openModel({ scenario: other, notes: [], used: [] }))).toMatch(
      /^reservoir: unknown vessel; got "smup"; did you mean sump\?/,
    );
  });
});

describe('names', () => {
  it.each<[string, (s: Free<Scenario>) => void, string]>([
    [
      'a vessel of fish',
      (s) => (s.fish[0].vessel = 'tank-3'),
      'fish.grown.vessel: unknown vessel; got "tank-3"; did you mean tank-1?',
    ],
    [
      'a vessel of crops',
      (s) => (s.plantings[1].vessel = 'raft-9'),
      'plantings.lettuce.vessel: unknown vessel; got "raft-9"; did you mean raft-1?',
    ],
    [
      'a vessel at the start',
      (s) => (s.start[7].vessel = 'sumps'),
      'start[7].vessel: unknown vessel; got "sumps"; did you mean sump?\nstart.sump: missing; expected what the vessel holds at the start',
    ],
    [
      'a pump',
      (s) => (s.flows[0] = { ...s.flows[0], pump: 'mian' } as Free<Scenario['flows'][number]>),
      'flows[0].pump: unknown pump; got "mian"; did you mean main?',
    ],
    [
      'a crop',
      (s) => (s.plantings[0].crop = 'bazil'),
      'plantings.basil.crop: unknown crop; got "bazil"; did you mean basil?',
    ],
    [
      'a feed',
      (s) => (s.fish[1].feed.name = 'grower-33'),
      'fish.young.feed.name: unknown feed; got "grower-33"; did you mean grower-32?',
    ],
    [
      'a water of the float',
      (s) => (s.topUp = { level: 1, rate: 2, sources: [{ kind: 'mains', water: 'main', dailyCap: 1 }] }),
      'topUp.sources[0].water: unknown water; got "main"; did you mean mains?',
    ],
    [
      'a water of the rain tank',
      (s) => (s.rainTank = { ...s.rainTank, water: 'rein' } as Free<Scenario['rainTank'] & object>),
      'rainTank.water: unknown water; got "rein"; did you mean rain?',
    ],
    ['two alike', (s) => (s.vessels[1].name = 'tank-1'), 'vessels[1].name: a name given twice; got "tank-1"'],
    [
      'one that is none',
      (s) => (s.waters[0].name = '2 mains'),
      'waters[0].name: not a name; got "2 mains"; expected a letter, then letters, digits, - and _, at most 64',
    ],
  ])('%s', (_what, change, said) => {
    expect(saidOf(change).startsWith(said)).toBe(true);
  });

  it('a species of the numbers that it is compiled with is known', () => {
    const own = { ...sound, overrides: [{ id: 'fish.nile-tilapia.body-nitrogen', value: -1 }] };
    expect(
      messageOf(() => {
        checkScenario(own);
      }),
    ).toBe(
      'fish.nile-tilapia.body-nitrogen: fish.nile-tilapia.body-nitrogen is below zero; got -1; expected zero or more',
    );
  });
});

describe('numbers', () => {
  it.each<[string, (s: Free<Scenario>) => void, string]>([
    [
      'of no size',
      (s) => (s.vessels[7].volume = Number.NaN),
      'vessels.sump.volume: not a finite number; got NaN; expected a number of m3, more than 0',
    ],
    [
      'that must be above zero',
      (s) => (s.vessels[7].volume = 0),
      'vessels.sump.volume: must be more than zero; got 0; expected a number of m3, more than 0',
    ],
    [
      'a share',
      (s) => (s.vessels[2].capture = 1),
      'vessels.settler.capture: out of range; got 1; expected a share from 0 to below 1',
    ],
    [
      'a count',
      (s) => (s.fish[0].number = 1.5),
      'fish.grown.number: out of range; got 1.5; expected a whole number from 0 to 10000000',
    ],
    [
      'a temperature',
      (s) =>
        (s.vessels[0].temperature = {
          kind: 'monthly',
          values: [20, 20, 50, 20, 20, 20, 20, 20, 20, 20, 20, 20],
        }),
      'vessels.tank-1.temperature.values[2]: out of range; got 50; expected 0 degC to 45 degC',
    ],
    [
      'too few months',
      (s) => (s.et0 = { kind: 'monthly', values: [0.001] }),
      'et0.values: not twelve values; got 1; expected January to December',
    ],
    [
      'too few days',
      (s) => (s.et0 = { kind: 'daily', values: [0.001] }),
      'et0.values: fewer days than the run; got 1; expected at least 30',
    ],
    [
      'of water',
      (s) => (s.waters[0].carbon = -1),
      'waters.mains.carbon: out of range; got -1; expected a number of 0 or more',
    ],
    [
      'at the start',
      (s) => (s.start[0].water.ammonia = Infinity),
      'start.tank-1.water.ammonia: not a finite number; got Infinity; expected a number of g N/m3, 0 or more',
    ],
    [
      'of both groups',
      (s) => (s.start[0].aob = 0.95),
      'start.tank-1: the shares of the room pass 1; got aob 0.95 and nob 0.12; expected shares that sum to 1 or less',
    ],
    [
      'of a ration',
      (s) =>
        (s.fish[0].ration = {
          kind: 'table',
          rows: [
            { mass: 5, perDay: 0.1 },
            { mass: 5, perDay: 0.2 },
          ],
        }),
      'fish.grown.ration.rows[1].mass: masses of a table must rise; got 5',
    ],
    [
      'of hours',
      (s) => (s.fish[0].hours = { from: 0.8, to: 0.4 }),
      'fish.grown.hours: not hours of one day; got 0.8 to 0.4; expected shares of a day from 0 to 1, the second later',
    ],
    ['of the run', (s) => (s.days = 0), 'days: out of range; got 0; expected a number from 0.001 to 36525'],
    [
      'a date',
      (s) => (s.startDate = '2026-02-30'),
      'startDate: no such date; got "2026-02-30"; expected a date such as 2026-03-01',
    ],
    [
      'not there',
      (s) => delete (s.vessels[7] as { volume?: number }).volume,
      'vessels.sump.volume: missing; expected a number of m3, more than 0',
    ],
  ])('%s', (_what, change, said) => {
    expect(saidOf(change).split('\n')).toContain(said);
  });
});

describe('the network and its levels', () => {
  it.each<[string, (s: Free<Scenario>) => void, string]>([
    [
      'no way out',
      (s) => (s.flows = s.flows.filter(({ from }) => from !== 'media')),
      'vessels.media: no way out; expected a flow by gravity, so that its standpipe can pass what flows in',
    ],
    [
      'a loop',
      (s) => (s.flows[8] = { kind: 'gravity', from: 'media', to: 'settler', share: 1 }),
      'flows[5]: a loop without a pump; got biofilter > media > settler > biofilter',
    ],
    [
      'shares',
      (s) => (s.flows[5] = { kind: 'gravity', from: 'biofilter', to: 'media', share: 0.3 }),
      'flows[7].share: shares of what leaves biofilter do not sum to 1; got a sum of 0.9',
    ],
    [
      'a vessel of its own',
      (s) => (s.flows[4].to = 'settler'),
      'flows[4].to: a flow from a vessel to itself; got "settler"',
    ],
    [
      'drawn out',
      (s) => (s.vessels[0].leak = 50),
      'vessels.tank-1: more drawn out than flows in with everything running; got 50 m3/d out, 48 m3/d in',
    ],
    [
      'an idle pump',
      (s) => s.pumps.push({ name: 'spare', inlet: 0, restart: 1 }),
      'pumps.spare: no flow names this pump',
    ],
    [
      'an inlet',
      (s) => (s.pumps[0].inlet = 1.5),
      'pumps.main.inlet: inlet above the water of sump; got 1.5; expected less than 1.2 m3',
    ],
    [
      'a restart',
      (s) => (s.pumps[0].restart = 0.2),
      'pumps.main.restart: not above the inlet; got 0.2; expected between inlet and 1.2 m3',
    ],
    [
      'a drain',
      (s) => (s.vessels[4].drain = { rate: 10, to: 0.6 }),
      'vessels.media.drain.to: not below the volume; got 0.6; expected less than the volume of the vessel',
    ],
    [
      'a float',
      (s) => (s.topUp = { level: 2, rate: 2, sources: [{ kind: 'rain-tank' }] }),
      'topUp.level: above the overflow of sump; got 2; expected at most 1.2 m3',
    ],
    [
      'no rain tank',
      (s) => delete s.rainTank,
      'topUp.sources[0]: no rain tank in this scenario; expected a rainTank',
    ],
    [
      'a full rain tank',
      (s) => (s.rainTank = { ...s.rainTank, volume: 3 } as Free<Scenario['rainTank'] & object>),
      'rainTank.volume: more than the tank holds; got 3; expected at most 2 m3',
    ],
    [
      'a low tank',
      (s) => (s.start[0].volume = 1),
      'start.tank-1.volume: only the reservoir may start below its full volume; got 1; expected 1.8 m3',
    ],
    [
      'a bed',
      (s) => (s.plantings[1].area = 9),
      'plantings.lettuce.area: larger than raft-1; got 9; expected at most 6 m2',
    ],
    [
      'an age',
      (s) => (s.plantings[1].age = 40),
      'plantings.lettuce.age: older than at harvest; got 40; expected at most 32 d',
    ],
  ])('%s', (_what, change, said) => {
    expect(saidOf(change).split('\n')).toContain(said);
  });
});

describe('a state to go on from', () => {
  const kept: SavedState = endStateOf(doneRun(teachingSystem({ days: 2 })));
  const going =
    (change: (saved: Free<SavedState>) => void) =>
    (scenario: Free<Scenario>): void => {
      const saved = structuredClone(kept) as Free<SavedState>;
      change(saved);
      scenario.saved = saved;
    };

  it('that is sound passes, and tells what its vessels start with', () => {
    const said = saidOf((s) => {
      going(() => undefined)(s);
      s.start = [];
    });
    expect(said).toBe('no fault');
  });

  it.each<[string, (saved: Free<SavedState>) => void, string]>([
    [
      'of a place that is not there',
      (saved) => (saved.states[0].place = 'tank-3'),
      'saved: unknown place; got "tank-3"; did you mean tank-1?',
    ],
    [
      'of no size',
      (saved) => (saved.states[0].amount = Number.NaN),
      'saved.states[0].amount: not a finite number; got NaN; expected a number',
    ],
    [
      'of more water than there can be',
      (saved) => (saved.volumes['sump'] = 5),
      'saved: sump is saved with more water than it holds; got 5 m3; expected at most 1.2 m3',
    ],
    [
      'of other fish',
      (saved) => (saved.species['grown'] = 'common-carp'),
      'saved: grown is of another species than was saved; got nile-tilapia; expected common-carp',
    ],
    [
      'from after the run',
      (saved) => (saved.time = 40),
      'saved.time: the run ends before it begins: the state is of day 40; got 40; expected days above 40',
    ],
    [
      'without its operation',
      (saved) => delete (saved as { operation?: unknown }).operation,
      'saved.operation: missing; expected an object',
    ],
  ])('%s', (_what, change, said) => {
    expect(saidOf(going(change)).split('\n')).toContain(said);
  });
});

describe('what is no scenario', () => {
  it('is told by what is missing, never by a crash', () => {
    expect(
      messageOf(() => {
        checkScenario({} as Scenario);
      }).split('\n')[0],
    ).toBe('waters: missing; expected a list without gaps');
    expect(saidOf((s) => (s.vessels[0] = null as unknown as Free<Scenario['vessels'][number]>))).toBe(
      'vessels[0]: wrong kind of value; got null; expected an object',
    );
  });
});

import { describe, expect, it } from 'vitest';
import { readScenario, readScenarioFully } from '../../../../packages/core/src/scenario/read-scenario.js';
import { edited } from '../../../product/faults/small-system.js';

const small = edited();
const over = (text: string) => (path: string) => {
  if (path !== 'small.yaml') throw new Error('no such file');
  return text;
};
const laid = (text: string) =>
  readScenarioFully(`include: small.yaml\n${text}`, { file: 'over.yaml', load: over(small) });

describe('a list of an included file', () => {
  it('is added to with + behind its key, the other items in their place', () => {
    const before = readScenario(small, { file: 'small.yaml' }).actions;
    const { scenario } = laid('actions+:\n  - { at: 3 d, lose-fish: { cohort: tilapia, number: 1 } }\n');
    expect(scenario.actions.length).toBe(before.length + 1);
    expect(scenario.actions.map(({ action }) => action.kind)).toContain('lose-fish');
    const replaced = laid('actions:\n  - { at: 3 d, lose-fish: { cohort: tilapia, number: 1 } }\n').scenario;
    expect(replaced.actions.length).toBeLessThan(scenario.actions.length);
  });

  it('is opened where there is none yet, and is refused where the key holds no list', () => {
    const { scenario } = laid(
      'rules+: []\nactions+:\n  - { at: 3 d, lose-fish: { cohort: tilapia, number: 1 } }\n',
    );
    expect(scenario.rules).toEqual(readScenario(small, { file: 'small.yaml' }).rules);
    expect(() => laid('fish+:\n  - { at: 3 d }\n')).toThrow(/fish: wrong kind of value/);
  });
});

describe('an action past the end of the run', () => {
  it('is left out with a note that names it, its day and the end', () => {
    const { scenario, notes } = laid(
      'actions+:\n  - { at: 300 d, lose-fish: { cohort: tilapia, number: 1 } }\n',
    );
    expect(scenario.actions.every(({ at }) => at < 300)).toBe(true);
    expect(notes.filter((note) => note.includes('left out'))).toEqual([
      expect.stringMatching(
        /^over\.yaml:\d+: actions\[\d+\] is left out: day 300 is past the end of the run, day \d+$/,
      ),
    ]);
  });

  it('before the start is a fault still', () => {
    expect(() =>
      laid('actions+:\n  - { at: 2000-01-01, lose-fish: { cohort: tilapia, number: 1 } }\n'),
    ).toThrow(/before the start of the run/);
  });
});

describe('cohort: all', () => {
  const two =
    'fish: { perch: { in: tank, species: silver-perch, number: 5, mass: 50 g, feed: grower-32, ration: 5 g/d } }\n';

  it('feeds, harvests and loses of every cohort', () => {
    const { scenario } = laid(
      `${two}actions+:\n  - { at: 3 d, feed: { cohort: all, factor: 0.5 } }\n  - { at: 4 d, harvest-fish: { cohort: all, share: 20 % } }\n`,
    );
    const of = (kind: string) =>
      scenario.actions.flatMap(({ action }) =>
        action.kind === kind && 'cohort' in action ? [action.cohort] : [],
      );
    expect(of('feed').slice(-2)).toEqual(['tilapia', 'perch']);
    expect(of('harvest-fish').slice(-2)).toEqual(['tilapia', 'perch']);
  });

  it('is undone for each at the end of an interval', () => {
    const { scenario } = laid(
      `${two}actions+:\n  - { at: 3 d, for: 2 d, feed: { cohort: all, factor: 0 } }\n`,
    );
    const back = scenario.actions.filter(({ at, action }) => at === 5 && action.kind === 'feed');
    expect(back.map(({ action }) => action)).toMatchObject([
      { cohort: 'tilapia', factor: 1 },
      { cohort: 'perch', factor: 1 },
    ]);
  });
});

describe('depth of water a month', () => {
  it('is the same as depth a day, month by month', () => {
    const climate = (text: string) => laid(`climate: { et0: ${text} }\n`).scenario.et0;
    const perDay = climate('{ unit: mm/d, monthly: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1] }');
    const perMonth = climate(
      '{ unit: mm/month, monthly: [31, 28.2425, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] }',
    );
    expect(perMonth).toEqual(perDay);
    const written = climate(
      '{ monthly: [31 mm/month, 28.2425 mm/month, 31 mm/month, 30 mm/month, 31 mm/month, 30 mm/month, 31 mm/month, 3.1 cm/month, 30 mm/month, 31 mm/month, 30 mm/month, 31 mm/month] }',
    );
    expect(written.kind === 'monthly' && perDay.kind === 'monthly').toBe(true);
    if (written.kind !== 'monthly' || perDay.kind !== 'monthly') return;
    written.values.forEach((value, i) => {
      expect(value).toBeCloseTo(perDay.values[i], 12);
    });
    expect(() => climate('30 mm/month')).toThrow(/et0/);
  });
});

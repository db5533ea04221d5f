import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { compileChecked } from '../../../../packages/core/src/model/compile.js';
import { simulate } from '../../../../packages/core/src/run/stepping.js';
import { seriesOf } from '../../../../packages/core/src/result/series.js';
import { manifestOf } from '../../../../packages/core/src/result/record.js';
import type { Run } from '../../../../packages/core/src/run/run.js';
import type { TimedAction, Action, Rule, Scenario } from '../../../../packages/core/src/scenario/scenario.js';
import { concentration, doneRun, lastOf } from '../../../support/run-of.js';
import {
  scenarioOf,
  sourceWater,
  startOf,
  stillWater,
  tilapia,
  vessel,
} from '../../../support/scenario-builder.js';

const sump = vessel('sump', 2);
const half: Action = { kind: 'feed', cohort: 'fish', factor: 0.5 };
const whole: Action = { kind: 'feed', cohort: 'fish', factor: 1 };
const base: Action = { kind: 'dose', vessel: 'sump', product: 'sodium-bicarbonate', mass: 10 };

/** Chloride above 20 mg/L: a dose, with nothing that holds it back for as long as these runs are, unless stated. */
function rule(other: Partial<Rule> = {}): Rule {
  return {
    read: 'chloride',
    vessel: 'sump',
    side: 'above',
    level: 20,
    kit: { every: 1 },
    doing: [base],
    undoing: [],
    stands: false,
    wait: 0,
    most: 100_000,
    ...other,
  };
}

/** Still water whose chloride is the given one on each day: all of it is changed after each day's readings. */
function runOn(chloride: readonly number[], rules: readonly Rule[], seed = 1): Run {
  const later = chloride.slice(1);
  return doneRun(
    scenarioOf([sump], {
      days: chloride.length,
      waters: later.map((value, day) => sourceWater(`w${day}`, { chloride: value })),
      fish: [tilapia('fish', 'sump', { number: 0 })],
      start: [startOf(sump, { water: stillWater(2, 7.5, { chloride: chloride[0] }) })],
      actions: later.map((_, at): TimedAction => ({
        at,
        action: { kind: 'change-water', vessel: 'sump', share: 1, water: `w${at}` },
      })),
      rules,
      seed,
    }),
  );
}

const daysOf = (run: Run, kind: string): number[] =>
  run.events.filter((event) => event.kind === kind).map(({ time }) => time);
const textsOf = (run: Run): string[] =>
  run.events.filter(({ kind }) => kind === 'rule').map(({ time, text }) => `${time} ${text}`);
/** Readings in the log of a rule that fires on every reading day. */
const shownBy = (run: Run): number[] => textsOf(run).map((text) => Number(/reads ([^ ,]+)/.exec(text)?.[1]));

describe('a rule on a setting', () => {
  const feeding = rule({ doing: [half], undoing: [whole], stands: true });

  it('acts once and stands until the reading is past the release level, not merely past the level', () => {
    const run = runOn([10, 25, 30, 15, 11, 9, 15, 21, 5], [{ ...feeding, until: 10 }]);
    expect(daysOf(run, 'feed')).toEqual([1, 5, 7, 8]);
    expect(textsOf(run)).toEqual([
      '1 chloride reads 25 mg/L, above 20 mg/L: feed',
      '5 chloride reads 9 mg/L, below 10 mg/L: released, feed',
      '7 chloride reads 21 mg/L, above 20 mg/L: feed',
      '8 chloride reads 5 mg/L, below 10 mg/L: released, feed',
    ]);
  });

  it('without a release level lets go as soon as the reading is back at the level', () => {
    const run = runOn([25, 30, 20, 21], [feeding]);
    expect(textsOf(run)).toEqual([
      '0 chloride reads 25 mg/L, above 20 mg/L: feed',
      '2 chloride reads 20 mg/L, no longer above 20 mg/L: released, feed',
      '3 chloride reads 21 mg/L, above 20 mg/L: feed',
    ]);
  });

  it('waits between one doing and the next, while letting go at once', () => {
    const run = runOn([25, 15, 25, 25, 25, 15], [{ ...feeding, wait: 4 }]);
    expect(daysOf(run, 'feed')).toEqual([0, 1, 4, 5]);
  });

  it('changes what the fish are offered from that day on', () => {
    const run = doneRun(
      scenarioOf([sump], {
        days: 4,
        fish: [tilapia('fish', 'sump', { ration: { kind: 'mass', gramsPerDay: 100 } })],
        start: [startOf(sump, { water: stillWater(5, 7.5, { oxygen: 200, chloride: 50 }) })],
        rules: [{ ...feeding, read: 'ammonia', level: 0.5 }],
      }),
    );
    const first = run.events.find(({ kind }) => kind === 'rule')?.time;
    expect(first).toBe(1);
    expect(run.samples.map(({ fed }) => fed[0])).toEqual([100, 100, 50, 50, 50]);
  });
});

describe('a feed that only a rule gives', () => {
  it('is eaten as the same feed given by a dated action is', () => {
    const richer: Action = { kind: 'feed', cohort: 'fish', feed: { name: 'grower-32', protein: 0.5 } };
    const tanAfter = (other: Partial<Scenario>): number => {
      const cohorts = [tilapia('fish', 'sump')];
      const start = [startOf(sump, { water: stillWater(5, 7.5, { oxygen: 200, chloride: 50 }) })];
      const run = doneRun(scenarioOf([sump], { days: 2, fish: cohorts, start, ...other }));
      return concentration(run, lastOf(run), 'tan', 'sump');
    };
    const byRule = tanAfter({ rules: [rule({ doing: [richer], stands: true })] });
    expect(byRule).toBe(tanAfter({ actions: [{ at: 0, action: richer }] }));
    expect(byRule).toBeGreaterThan(1.2 * tanAfter({}));
  });
});

describe('a rule that acts at a moment', () => {
  const high = Array.from({ length: 10 }, () => 30);

  it('acts at every reading past the level, at least `wait` apart', () => {
    expect(daysOf(runOn(high, [rule({ wait: 3 })]), 'dose')).toEqual([0, 3, 6, 9]);
    expect(daysOf(runOn(high, [rule({ wait: 2.5 })]), 'dose')).toEqual([0, 3, 6, 9]);
  });

  it('acts at most so often', () => {
    expect(daysOf(runOn(high, [rule({ most: 2 })]), 'dose')).toEqual([0, 1]);
    expect(daysOf(runOn(high, [rule({ most: 2, wait: 4 })]), 'dose')).toEqual([0, 4]);
  });

  it('acts on reading days only', () => {
    const run = runOn([10, ...high], [rule({ kit: { every: 4 } })]);
    expect(daysOf(run, 'dose')).toEqual([4, 8]);
  });

  it('with a release level and no wait acts once until it lets go', () => {
    const run = runOn([30, 30, 15, 5, 30], [rule({ stands: true, until: 10 })]);
    expect(daysOf(run, 'dose')).toEqual([0, 4]);
  });

  it('with a release level and a wait goes on in between, and says so', () => {
    const run = runOn([30, 30, 15, 15, 5, 30], [rule({ until: 10, wait: 2 })]);
    expect(textsOf(run)).toEqual([
      '0 chloride reads 30 mg/L, above 20 mg/L: dose',
      '2 chloride reads 15 mg/L, not yet below 10 mg/L: dose',
      '5 chloride reads 30 mg/L, above 20 mg/L: dose',
    ]);
  });

  it('may act below a level; alkalinity is told in degrees too', () => {
    const low = rule({ read: 'alkalinity', side: 'below', level: 3, most: 1 });
    expect(textsOf(runOn([10, 10], [low]))).toEqual([
      '0 alkalinity reads 2 meq/L (5.608 dKH), below 3 meq/L (8.412 dKH): dose',
    ]);
  });
});

describe('a test kit', () => {
  const always = rule({ level: 0 });

  it('shows whole multiples of its resolution, and a rule goes by what it shows', () => {
    const run = runOn([22.4, 22.6, 24.9], [rule({ level: 22.5, kit: { every: 1, resolution: 5 } })]);
    expect(textsOf(run)).toEqual([
      '1 chloride reads 25 mg/L, above 22.5 mg/L: dose',
      '2 chloride reads 25 mg/L, above 22.5 mg/L: dose',
    ]);
  });

  it('at a level that its resolution can show is not beyond it by rounding', () => {
    expect(
      daysOf(runOn([2.31, 2.42], [rule({ level: 2.3, kit: { every: 1, resolution: 0.1 } })]), 'dose'),
    ).toEqual([1]);
  });

  const many = Array.from({ length: 200 }, () => 40);
  const noisy = (kind: 'relative' | 'absolute', deviation: number): Rule => ({
    ...always,
    kit: { every: 1, error: { kind, deviation } },
  });

  it.each([
    ['relative', 0.1, 4],
    ['absolute', 3, 3],
  ] as const)('has a %s error of the standard deviation stated', (kind, deviation, expected) => {
    const shown = shownBy(runOn(many, [noisy(kind, deviation)]));
    const mean = shown.reduce((sum, value) => sum + value, 0) / 200;
    const spread = Math.sqrt(shown.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 199);
    // Of 200 draws the mean is within 4 standard errors, the deviation within a fifth (4 of its standard errors).
    expect(Math.abs(mean - 40)).toBeLessThan((4 * expected) / Math.sqrt(200));
    expect(Math.abs(spread / expected - 1)).toBeLessThan(0.2);
  });

  it('gives the same readings for the same seed, others for another', () => {
    const readings = (seed: number): number[] =>
      shownBy(runOn(many.slice(0, 20), [noisy('relative', 0.1)], seed));
    expect(readings(7)).toEqual(readings(7));
    expect(readings(7)).not.toEqual(readings(8));
  });

  it('is not disturbed by rules that come after it', () => {
    const few = many.slice(0, 20);
    const alone = textsOf(runOn(few, [noisy('relative', 0.1)]));
    const beside = textsOf(runOn(few, [noisy('relative', 0.1), { ...noisy('absolute', 1), level: 1e6 }]));
    expect(beside).toEqual(alone);
  });

  it('without error draws nothing: the seed is in the manifest only where it matters', () => {
    const few = many.slice(0, 3);
    expect(manifestOf(runOn(few, [always], 9)).seed).toBe(null);
    expect(manifestOf(runOn(few, [noisy('relative', 0.1)], 9)).seed).toBe(9);
  });
});

describe('readings and the order of an instant', () => {
  it.each(['pH', 'temperature', 'volume', 'alkalinity', 'oxygen', 'chloride'] as const)(
    'a true reading of %s is what the run recorded that day',
    (read) => {
      const run = runOn([10, 20, 30], [rule({ read, level: 0 })]);
      const recorded = [...seriesOf(run, `${read}@sump`).values.slice(1, 3)];
      expect(shownBy(run).slice(1)).toEqual(recorded.map((value) => Number(value.toPrecision(4))));
    },
  );

  it('all rules read before any acts, and act before dated actions', () => {
    const salt = rule({
      side: 'below',
      level: 50,
      doing: [{ ...base, product: 'sodium-chloride', mass: 100 }],
    });
    const run = runOn([10, 10], [salt, { ...salt, doing: [base] }]);
    expect(shownBy(run).slice(0, 2)).toEqual([10, 10]);
    expect(run.events.filter(({ time }) => time === 0).map(({ kind }) => kind)).toEqual([
      'rule',
      'rule',
      'dose',
      'dose',
      'change-water',
    ]);
  });

  it('of one instant act in the order of actions, not of the file', () => {
    const leave: Action = { kind: 'lose-fish', cohort: 'fish', share: 1 };
    const run = runOn([30], [rule(), rule({ doing: [leave] })]);
    expect(run.events.map(({ kind }) => kind)).toEqual(['rule', 'rule', 'lose-fish', 'dose']);
  });

  it('a reading that cannot be taken is logged and changes nothing', () => {
    // Water that no scenario may start with, and a run may come to.
    const acid = scenarioOf([sump], {
      days: 2,
      start: [startOf(sump, { water: { ...stillWater(2, 7.5), alkalinity: -2000 } })],
      rules: [rule({ read: 'pH', side: 'below', level: 7 })],
    });
    const sour = simulate(compileChecked(acid, createParameters()));
    expect(textsOf(sour)).toEqual(['0 pH cannot be read']);
    expect(daysOf(sour, 'dose')).toEqual([]);
  });

  it('the same input gives the same events, postings and states to the last bit', () => {
    const rules = [
      rule({ wait: 2, kit: { every: 1, resolution: 0.5, error: { kind: 'relative', deviation: 0.3 } } }),
    ];
    const [a, b] = [1, 2].map(() => runOn([19, 20, 21, 20, 19, 22], rules, 5));
    expect(b.events).toEqual(a.events);
    expect(b.postings).toEqual(a.postings);
    expect(b.samples).toEqual(a.samples);
  });
});

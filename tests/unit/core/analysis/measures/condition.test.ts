import { describe, expect, it } from 'vitest';
import { conditionOf, InputError, limitsOf, measureOf, NoAnswerError } from '@leat/core';
import { doneRun } from '../../../../support/run-of.js';
import { teachingSystem } from '../../../../support/teaching-system.js';

const run = doneRun(teachingSystem({ days: 20 }));
const { model } = run;
const limits = limitsOf(run);

function fault(text: string): string {
  try {
    conditionOf(text, model, '--keep');
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error(`${text} was taken`);
}

describe('a condition on a measure', () => {
  const highest = measureOf('highest nitrate@sump', model).of(run);

  it('holds by its margin, in the unit of the measure', () => {
    const below = conditionOf(`highest nitrate@sump below ${highest + 1}`, model);
    expect(below.margin(run)).toBeCloseTo(1, 9);
    expect([below.unit, below.holds(run)]).toEqual(['mg N/L', true]);
    const above = conditionOf(`highest nitrate@sump above ${highest + 1} mg N/L`, model);
    expect(above.margin(run)).toBeCloseTo(-1, 9);
    expect(above.holds(run)).toBe(false);
    expect(conditionOf(`highest nitrate@sump < ${highest}`, model).holds(run)).toBe(false);
  });

  it('takes other units, and numbers of the tables as the run has them', () => {
    const ion = conditionOf('highest nitrate@sump below 200 mg/L as NO3', model);
    expect(ion.margin(run)).toBeCloseTo((200 * 14.007) / 62.004 - highest, 9);
    const changed = doneRun({
      ...model.scenario,
      overrides: [{ id: 'fish.nile-tilapia.limit-nitrate', value: highest + 2 }],
    });
    const kept = conditionOf('highest nitrate@sump below fish.nile-tilapia.limit-nitrate', model);
    expect(kept.margin(changed)).toBeCloseTo(2, 6);
  });

  it('may be on days, shares, changes and temperatures', () => {
    expect(conditionOf('days nitrate@sump above 1e6 below 1 h', model).margin(run)).toBeCloseTo(1 / 24, 12);
    expect(conditionOf('share nitrogen sludge below 200 %', model).holds(run)).toBe(true);
    expect(conditionOf('change nitrate@sump above -5e3', model).holds(run)).toBe(true);
    expect(conditionOf('highest temperature@sump below 87 degF', model).holds(run)).toBe(true);
    expect(conditionOf('change temperature@sump below 1 degC', model).holds(run)).toBe(true);
  });
});

describe('a condition on limits', () => {
  it('says what limitsOf says, for each limit that was judged', () => {
    for (const { id, place, judged, passed } of limits) {
      const condition = conditionOf(`keeps ${id}@${place}`, model);
      const same = limits.filter((limit) => limit.id === id && limit.place === place && limit.judged);
      if (!judged) continue;
      expect(condition.holds(run), `${id}@${place}`).toBe(!same.some((limit) => limit.passed));
      if (passed) expect(condition.margin(run)).toBeLessThan(0);
    }
    expect(limits.some(({ passed }) => passed)).toBe(true);
  });

  it('takes all places of a limit, and all limits', () => {
    const all = conditionOf('keeps limits', model);
    expect(all.holds(run)).toBe(!limits.some(({ passed }) => passed));
    const each = limits
      .filter(({ judged }) => judged)
      .map(({ id, place }) => conditionOf(`keeps ${id}@${place}`, model).margin(run));
    expect(all.margin(run)).toBe(Math.min(...each));
    expect(all.unit).toBe('1');
  });

  it('is not answered by a run that cannot be judged', () => {
    const short = doneRun(teachingSystem({ days: 2 }));
    const weekly = limitsOf(short).find(({ judged }) => !judged);
    const condition = conditionOf(`keeps ${weekly?.id}`, short.model);
    expect(() => condition.margin(short)).toThrow(NoAnswerError);
    const broken = { ...run, outcome: { kind: 'singular', time: 1 } as const };
    expect(() => conditionOf('keeps limits', model).holds(broken)).toThrow(
      'the run broke off on day 1: singular',
    );
  });
});

describe('a condition that cannot be', () => {
  it.each([
    [
      'highest tan@tank-1',
      /^--keep: highest tan@tank-1: a condition ends with .*; got nothing; expected such as/,
    ],
    ['highest tan@tank-1 below', /not a value; got nothing; expected an ammonia nitrogen/],
    ['highest tan@tank-1 below many', /not a value; got many/],
    ['highest tan@tank-1 below 1 m3', /wrong dimension: this is a volume/],
    ['highest tan@tank-1 below 1 from 3 d', /ends with .*; got from 3 d/],
    ['highest pH@sump below 7 mg/L', /wrong unit; got mg\/L; expected a number in pH/],
    ['change temperature@sump below 2 degF', /wrong unit; got degF; expected a difference in degC/],
    ['highest tan@tank-1 <= 1', /a condition ends with/],
    ['highest tan@tank-1 below 1e999', /not a finite number/],
    ['keeps', /no such limit .*; got nothing/],
    ['keeps fish.nile-tilapia.limit-nitrit', /did you mean fish.nile-tilapia.limit-nitrite\?$/],
    ['keeps limits averaged 3 d', /does not belong here; got averaged 3 d$/],
  ])('%s', (text, message) => {
    expect(fault(text)).toMatch(message);
  });
});

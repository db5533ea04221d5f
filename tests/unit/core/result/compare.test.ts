import { describe, expect, it } from 'vitest';
import { budgetOf } from '../../../../packages/core/src/result/budget.js';
import { compareRuns } from '../../../../packages/core/src/result/compare.js';
import type { LimitResult } from '../../../../packages/core/src/result/limits.js';
import type { RunAccount } from '../../../../packages/core/src/result/compare.js';
import { smallRun } from './small-run.js';

const nitrogen = budgetOf(smallRun(), 'nitrogen', 'system');
const water = budgetOf(smallRun(), 'water', 'system');

/** An account of four days with these courses, all of them key quantities. */
function account(
  courses: Readonly<Record<string, readonly number[]>>,
  more: Partial<RunAccount> = {},
): RunAccount {
  return {
    title: 'By hand',
    outcome: { kind: 'done', time: 3 },
    time: [0, 1, 2, 3],
    series: Object.entries(courses).map(([name, values]) => ({ name, unit: 'mg/L', values })),
    keys: Object.keys(courses),
    limits: [],
    verdict: { water: { state: 'enough', lowDays: 0, perDay: 0, capDays: 0, pumps: [], dry: [] } },
    startDate: '2027-03-01',
    nitrogen,
    water,
    ...more,
  };
}

const base = { near: [10, 10, 10, 10], far: [1, 2, 8, 4], none: [0, 0, 0, 0] };

function limit(
  place: string,
  verdict: Pick<LimitResult, 'judged' | 'passed' | 'total'> & { first?: number },
): LimitResult {
  return {
    id: 'limit.tan',
    quantity: 'tan',
    unit: 'mg N/L',
    direction: 'above',
    value: 2,
    averaging: 0,
    whom: 'tilapia',
    source: 'made-up',
    page: '',
    mark: 'P',
    harm: 'harmful',
    place,
    resolved: true,
    ...verdict,
  };
}

describe('key quantities', () => {
  const other = account({ near: [10, 10, 10, 9], far: [1, 2, 4, 6], none: [0, 0, 0, 0] });
  const { quantities } = compareRuns([account(base), other], 0.01);

  it('stand with the largest relative difference first', () => {
    expect(quantities.map(({ name }) => name)).toEqual(['far', 'near', 'none']);
  });

  it('give end and highest of each run and the difference as a share of the largest size', () => {
    expect(quantities[0].runs).toEqual([
      { end: 4, highest: 8, highestAt: 2 },
      { end: 6, highest: 6, highestAt: 3 },
    ]);
    expect([quantities[0].end, quantities[0].highest]).toEqual([0.25, -0.25]);
    expect([quantities[1].end, quantities[1].highest]).toEqual([-0.1, 0]);
    expect([quantities[2].end, quantities[2].highest]).toEqual([0, 0]);
  });

  it('take the farthest of several others', () => {
    const third = account({ far: [1, 2, 8, 0] });
    const [far] = compareRuns([account({ far: base.far }), other, third], 0.01).quantities;
    expect(far.end).toBe(-0.5);
  });

  it('come last where a run lacks them or has no value', () => {
    const lone = account({ only: [1, 1, 1, 1], near: [10, 10, 10, 10], far: [NaN, NaN, NaN, NaN] });
    const found = compareRuns([account(base), lone], 0.01).quantities;
    expect(found.map(({ name }) => name)).toEqual(['near', 'far', 'none', 'only']);
    expect(found[1]).toMatchObject({ end: NaN, highest: NaN });
    expect(found[1].runs[1]).toBeNull();
    expect(found[3].runs[0]).toBeNull();
  });
});

describe('the day of parting', () => {
  const parting = (far: readonly number[], apart: number, more: Partial<RunAccount> = {}) =>
    compareRuns([account(base), account({ ...base, far }, more)], apart).partings;

  it('is the first with a difference beyond the share of the highest in either', () => {
    expect(parting([1, 2.5, 4, 4], 0.1)).toEqual([{ day: 2, quantity: 'far', first: 8, other: 4 }]);
    expect(parting([1, 2.5, 4, 4], 0.05)).toEqual([{ day: 1, quantity: 'far', first: 2, other: 2.5 }]);
  });

  it('is none where the difference is no larger than the share', () => {
    expect(parting([1, 2, 4, 4], 0.5)).toEqual([null]);
    expect(parting(base.far, 0)).toEqual([null]);
  });

  it('looks only at times that both have', () => {
    expect(parting([1, 3, 8, 4], 0.1, { time: [0, 1.5, 2, 3] })).toEqual([null]);
  });

  it('takes a value against none as apart', () => {
    expect(parting([1, NaN, 8, 4], 1)).toEqual([{ day: 1, quantity: 'far', first: 2, other: NaN }]);
  });
});

describe('limits', () => {
  const kept = { judged: true, passed: false, total: 0 };
  const passed = (first: number) => ({ judged: true, passed: true, first, total: 1 });

  it('are those passed in some and not in all, the earliest first', () => {
    const a = account(base, {
      limits: [limit('tank', passed(2)), limit('sump', kept), limit('bed', passed(1))],
    });
    const b = account(base, {
      limits: [limit('tank', kept), limit('sump', passed(1)), limit('bed', passed(2))],
    });
    const { limits } = compareRuns([a, b], 0.01);
    expect(limits.map(({ place }) => place)).toEqual(['sump', 'tank']);
    expect(limits[0].runs).toEqual([kept, passed(1)]);
  });

  it('count as kept where nobody could judge, and are null where there is no such limit', () => {
    const a = account(base, { limits: [limit('tank', passed(2)), limit('sump', passed(3))] });
    const b = account(base, { limits: [limit('tank', { ...kept, judged: false })] });
    const { limits } = compareRuns([a, b], 0.01);
    expect(limits.map(({ runs }) => runs[1])).toEqual([{ ...kept, judged: false }, null]);
  });
});

describe('budgets', () => {
  it('stand side by side, 0 where a run has no such part', () => {
    const dry = { ...nitrogen, lines: nitrogen.lines.filter(({ beyond }) => beyond !== 'source water') };
    const found = compareRuns([account(base), account(base, { nitrogen: dry })], 0.01).nitrogen;
    const source = found.from.find(({ name }) => name === 'source water');
    expect(source?.runs[0].amount).toBeGreaterThan(0);
    expect(source?.runs[1]).toEqual({ amount: 0, share: 0 });
    expect(found.totals[0] - found.totals[1]).toBeCloseTo(source?.runs[0].amount ?? 0, 12);
    for (const i of [0, 1]) {
      const amount = found.from.reduce((total, { runs }) => total + runs[i].amount, 0);
      expect(amount).toBeCloseTo(found.totals[i], 12);
    }
  });
});

describe('what cannot be compared', () => {
  it('one run alone, and a share that is none', () => {
    expect(() => compareRuns([account(base)], 0.01)).toThrow(RangeError);
    expect(() => compareRuns([account(base), account(base)], 1.5)).toThrow('1.5 is no share from 0 to 1');
  });
});

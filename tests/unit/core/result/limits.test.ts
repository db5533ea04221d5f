import { describe, expect, it } from 'vitest';
import { limitsOf, type LimitResult } from '../../../../packages/core/src/result/limits.js';
import type { Run } from '../../../../packages/core/src/run/run.js';
import { waterState } from '../../../../packages/core/src/model/layout.js';
import { smallRun } from './small-run.js';

/** A run whose water holds so much of one component, g m-3, all the time. */
function holding(component: 'tan' | 'nitrite' | 'chloride', amount: number): Run {
  const run = smallRun();
  const samples = run.samples.map((sample) => {
    const y = sample.y.slice();
    [0, 1].forEach((vessel) => (y[waterState(vessel, component)] = amount * sample.volume[vessel]));
    return { ...sample, y };
  });
  return { ...run, samples };
}

const find = (run: Run, quantity: string, place: string, direction = 'above'): LimitResult => {
  const found = limitsOf(run).find(
    (limit) => limit.quantity === quantity && limit.place === place && limit.direction === direction,
  );
  if (found === undefined) throw new Error(`no limit on ${quantity} at ${place}`);
  return found;
};

describe('limitsOf', () => {
  it('carries value, averaging, for whom, and the source with its mark', () => {
    expect(find(smallRun(), 'un-ionised-ammonia', 'tank')).toMatchObject({
      id: 'fish.nile-tilapia.limit-ammonia',
      value: 0.05,
      averaging: 1,
      whom: 'nile-tilapia',
      source: 'timmons-ebeling',
      mark: 'M',
    });
  });

  it('finds ammonia above what the species stands from the first full day on', () => {
    const limit = find(holding('tan', 12), 'un-ionised-ammonia', 'tank');
    expect(limit).toMatchObject({ judged: true, passed: true, resolved: true });
    expect(limit.worst).toBeGreaterThan(0.05);
    expect(limit.total).toBeGreaterThan(0);
  });

  it('wants ten times the nitrite (as NO2) of chloride', () => {
    const sparse = find(holding('nitrite', 2), 'chloride-shortage', 'tank');
    const enough = find(holding('nitrite', 1), 'chloride-shortage', 'tank');
    // 2 mg N/L is 6.57 mg/L of NO2: wants 65.7 of chloride where there are 40.
    expect(sparse.passed).toBe(true);
    expect(sparse.worst).toBeCloseTo(65.69 - 40, 1);
    expect(enough.passed).toBe(false);
  });

  it('marks an averaging time shorter than the output step as not resolved', () => {
    expect(find(smallRun(), 'oxygen', 'tank', 'below').resolved).toBe(false);
    expect(find(smallRun(), 'nitrite', 'tank').resolved).toBe(true);
  });

  it('does not judge the 30-day criterion by a run of ten days, but the acute one', () => {
    expect(find(smallRun(), 'ammonia-chronic-ratio', 'sump').judged).toBe(false);
    expect(find(smallRun(), 'ammonia-acute-ratio', 'sump')).toMatchObject({
      judged: true,
      passed: false,
    });
  });

  it('holds feed against planted area, and salt against the crop', () => {
    // 80 g/d on 2 m2 is 40: just at the lower end for leafy crops.
    expect(find(smallRun(), 'feed-per-planted-area', 'system', 'below')).toMatchObject({
      value: 40,
      passed: false,
    });
    expect(find(holding('chloride', 400), 'chloride', 'sump')).toMatchObject({
      passed: true,
      whom: 'lettuce-butterhead',
    });
  });

  it('does not count limits of fish where no fish are', () => {
    const run = holding('tan', 50);
    const empty = run.samples.map((sample) => {
      const y = sample.y.slice();
      y[run.model.layout.fish[0].number] = 0;
      return { ...sample, y };
    });
    expect(find({ ...run, samples: empty }, 'un-ionised-ammonia', 'tank').judged).toBe(false);
  });
});

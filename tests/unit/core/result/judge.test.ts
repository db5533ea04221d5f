import { describe, expect, it } from 'vitest';
import { judge } from '../../../../packages/core/src/result/judge.js';

const times = [0, 1, 2, 3, 4];
const above = { value: 2, direction: 'above' } as const;

describe('judge', () => {
  it('tells when first, how long and how far, on straight lines between output times', () => {
    expect(judge(times, [0, 4, 4, 0, 0], above, 0)).toEqual({
      judged: true,
      passed: true,
      first: 0.5,
      total: 2,
      worst: 4,
      worstAt: 1,
    });
  });

  it('counts a limit of the other direction', () => {
    const verdict = judge(times, [6, 6, 4, 6, 6], { value: 5, direction: 'below' }, 0);
    expect(verdict).toMatchObject({ passed: true, first: 1.5, total: 1, worst: 4, worstAt: 2 });
  });

  it('does not count a value that is just at the limit', () => {
    expect(judge(times, [2, 2, 2, 2, 2], above, 0)).toMatchObject({ passed: false, total: 0, worst: 2 });
  });

  it('compares means, so that a short peak may pass', () => {
    expect(judge(times, [0, 3, 0, 0, 0], above, 0).passed).toBe(true);
    expect(judge(times, [0, 3, 0, 0, 0], above, 2)).toMatchObject({
      judged: true,
      passed: false,
      worst: 1.5,
      worstAt: 2,
    });
  });

  it('does not judge by a mean longer than the run', () => {
    expect(judge(times, [9, 9, 9, 9, 9], above, 30)).toEqual({ judged: false, passed: false, total: 0 });
  });

  it('knows when it was first passed where nobody is there at the next time', () => {
    const verdict = judge(times, [9, 9, 9, 0, 0], above, 0, (i) => i !== 1);
    expect(verdict).toMatchObject({ passed: true, first: 0, worst: 9, worstAt: 0 });
  });

  it('looks away while nobody is there', () => {
    const verdict = judge(times, [9, 9, 0, 0, 3], above, 0, (i) => i >= 2);
    expect(verdict.first).toBeCloseTo(3 + 2 / 3, 12);
    expect(verdict.total).toBeCloseTo(1 / 3, 12);
    expect(judge(times, [9, 9, 9, 9, 9], above, 0, () => false).judged).toBe(false);
  });
});

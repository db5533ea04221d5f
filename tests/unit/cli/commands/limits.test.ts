import { describe, expect, it, vi } from 'vitest';
import type { LimitResult } from '@leat/core';
import { limitLines } from '../../../../packages/cli/src/commands/run/text.js';

const passed: LimitResult = {
  id: 'fish.nile-tilapia.limit-ammonia',
  quantity: 'un-ionised-ammonia',
  unit: 'mg N/L',
  direction: 'above',
  value: 0.05,
  averaging: 1,
  whom: 'nile-tilapia',
  source: 'timmons-ebeling',
  page: 'A4',
  mark: 'M',
  harm: 'harmful',
  place: 'tank-1',
  resolved: true,
  judged: true,
  passed: true,
  first: 12.25,
  total: 8.5,
  worst: 0.081,
  worstAt: 17,
};

const plan = { every: 1, startDate: '2025-10-01' };

describe('limitLines', () => {
  it('says what, how far, where, when first, how long, for whom and by which source', () => {
    const [, line, source] = limitLines([passed], plan);
    expect(line.split(/ {2,}/)).toEqual([
      'un-ionised ammonia',
      '> 0.05 mg N/L',
      '0.081 d 17',
      'tank-1',
      'd 12.3',
      '8.5 d',
      'nile tilapia',
      '[1]',
    ]);
    expect(source).toBe('[1] timmons-ebeling M');
  });

  it('puts dates beside days where the screen is wide enough for them', () => {
    vi.stubEnv('LEAT_WIDTH', '120');
    const [, line] = limitLines([passed], plan);
    vi.unstubAllEnvs();
    expect(line).toMatch(/0\.081 d 17 \(18 Oct\) +tank-1 +d 12\.3 \(13 Oct\) /);
  });

  it('puts places together under the worst', () => {
    const lines = limitLines([passed, { ...passed, place: 'tank-2', worst: 0.2, first: 3 }], plan);
    expect(lines[1]).toMatch(/0\.2 d 17 +tank-2 \+1 +d 3 /);
    expect(lines).toHaveLength(3);
  });

  it('says what could not be judged or resolved, and when none was passed', () => {
    const never = { ...passed, passed: false, total: 0 };
    const lines = limitLines(
      [
        { ...never, judged: false },
        { ...never, resolved: false },
      ],
      plan,
    );
    expect(lines).toEqual([
      'limits passed: none of those that could be judged',
      '1 not judged: run shorter than their mean, or nobody there; means over less than the output step (1',
      '  d) are resolved for a day after events alone',
    ]);
  });
});

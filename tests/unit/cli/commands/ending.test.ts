import { describe, expect, it } from 'vitest';
import type { Budget } from '@leat/core';
import { endingOf } from '../../../../packages/cli/src/commands/shared/simulated.js';

const budget = (residual: number): Budget => ({
  quantity: 'nitrogen',
  place: 'biofilter',
  in: 100,
  out: 60,
  stored: 40 - residual,
  residual,
  throughput: 200,
  lines: [],
  stores: [],
});

const done = { outcome: { kind: 'done', time: 10 } } as const;

describe('endingOf', () => {
  it('is 0 and silent when done and closed', () => {
    expect(endingOf(done, budget(1e-8))).toEqual({ code: 0, text: '' });
  });

  it('is 4 and names quantity and vessel when a balance is broken by more than 1e-9 of throughput', () => {
    expect(endingOf(done, budget(-3e-7))).toEqual({
      code: 4,
      text: 'balance broken: nitrogen of biofilter: residual -3.000e-7 is 1.5e-9 of its throughput (at most 1e-9)',
    });
    expect(endingOf(done, budget(Number.NaN)).code).toBe(4);
  });

  it('is 3 with the reasons and the worst component when broken off, whatever the balance', () => {
    const run = {
      outcome: { kind: 'too-many-steps', time: 3.5, worst: 'tan@sump', advice: 'a timer of seconds' },
    } as const;
    expect(endingOf(run, budget(1))).toEqual({
      code: 3,
      text: 'not finished: too-many-steps on day 3.5 at tan@sump: a timer of seconds',
    });
  });
});

import { describe, expect, it } from 'vitest';
import { nextSwitch, within } from '../../../../packages/core/src/run/segments.js';

describe('a repeating clock', () => {
  const timer = { on: 0.25, off: 0.5, offset: 0.125 };

  it('is on over [on, off): the start belongs to it, the end does not', () => {
    expect(within(timer, 0.125)).toBe(true);
    expect(within(timer, 0.374999)).toBe(true);
    expect(within(timer, 0.375)).toBe(false);
    expect(within(timer, 0.874999)).toBe(false);
    expect(within(timer, 0.875)).toBe(true);
  });

  it('names the next switch, never the present one', () => {
    expect(nextSwitch(timer, 0.125)).toBeCloseTo(0.375, 14);
    expect(nextSwitch(timer, 0.375)).toBeCloseTo(0.875, 14);
    expect(nextSwitch(timer, 0.3)).toBeCloseTo(0.375, 14);
  });

  it('visits every switch once over a year of quarter hours', () => {
    const clock = { on: 15 / 1440, off: 45 / 1440, offset: 0 };
    let time = 0;
    let switches = 0;
    let on = 0;
    while (time < 365) {
      const next = nextSwitch(clock, time);
      if (within(clock, time)) on += next - time;
      time = next;
      switches++;
    }
    expect(switches).toBe(365 * 24 * 2);
    expect(on).toBeCloseTo(365 / 4, 6);
  });

  it('without a clock is always on', () => {
    expect(within(undefined, 12.3)).toBe(true);
    expect(nextSwitch(undefined, 12.3)).toBe(Infinity);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StepControl } from '../../../../packages/core/src/solve/step-control.js';

const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

describe('StepControl', () => {
  it('fits steps to the end: never beyond it, never a sliver before it', () => {
    fc.assert(
      fc.property(size, size, (remaining, natural) => {
        const step = new StepControl().fit(remaining, natural);
        expect(step).toBeGreaterThan(0);
        expect(step).toBeLessThanOrEqual(Math.min(remaining, 1.05 * natural));
        const left = remaining - step;
        if (left > 0) expect(left).toBeGreaterThanOrEqual(step * (1 - 1e-12));
      }),
    );
  });

  it.each([
    ['stretches the last step by 5 %', 1.05, 1.05],
    ['halves what is little more than that', 1.06, 0.53],
    ['halves what is just short of two steps', 1.98, 0.99],
    ['takes the natural step with two or more to go', 2, 1],
    ['takes the natural step far from the end', 7, 1],
    ['takes what is left', 0.3, 0.3],
  ])('%s', (_case, remaining, wanted) => {
    expect(new StepControl().fit(remaining, 1)).toBeCloseTo(wanted, 14);
  });

  it('does not shrink the natural step for one cut short by the end', () => {
    const control = new StepControl();
    control.natural = 10;
    control.accept(0.01, 0.9);
    expect(control.natural).toBe(10);
  });

  it('grows by at most 6 and lessens after a full step with an error near 1', () => {
    const control = new StepControl();
    control.accept(1, 0);
    expect(control.natural).toBeCloseTo(6, 12);
    control.beginSegment();
    control.natural = 1;
    control.accept(1, 1);
    expect(control.natural).toBeCloseTo(0.9, 12);
  });

  it('sees an error on the rise: the step is smaller than the last error alone would give', () => {
    const control = new StepControl();
    control.accept(1, 0.05);
    control.natural = 1;
    control.accept(1, 0.5);
    expect(control.natural).toBeCloseTo((0.9 * 0.05 ** 0.25) / 0.5 ** 0.5, 12);
    expect(control.natural).toBeLessThan(0.9 / 0.5 ** 0.25);
  });

  it('predicts from two steps: (h0/h1) (err1^2/err0)^(1/4) / 0.9 (Hairer & Wanner II, IV.8 [R]), by hand', () => {
    const after = (first: readonly [number, number], second: readonly [number, number]): number => {
      const control = new StepControl();
      control.accept(...first);
      control.natural = second[0];
      control.accept(...second);
      return control.natural;
    };
    // (2/1) (0.25/0.04)^(1/4) / 0.9 = 3.51364, above 0.5^(1/4) / 0.9 = 0.93434.
    expect(after([2, 0.04], [1, 0.5])).toBeCloseTo(1 / 3.5136418446, 9);
    // An error below 0.01 counts as 0.01: (1/1) (0.25/0.01)^(1/4) / 0.9 = 2.48452.
    expect(after([1, 1e-6], [1, 0.5])).toBeCloseTo(1 / 2.484519975, 9);
    // An error on the fall: 0.0625^(1/4) / 0.9 = 0.55556 alone decides, not (1/2)(0.00390625/0.5)^(1/4) / 0.9.
    expect(after([1, 0.5], [2, 0.0625])).toBeCloseTo(2 * 1.8, 9);
  });

  it('shrinks by at least the safety factor when refused: 1 / (1.5^(1/4) / 0.9)', () => {
    const control = new StepControl();
    control.reject(1, 1.5);
    expect(control.retry).toBeCloseTo(0.9 / 1.5 ** 0.25, 14);
    expect(control.natural).toBe(control.retry);
  });

  it('shrinks by the error when refused, by at most 5, and does not grow at once after it', () => {
    const control = new StepControl();
    control.reject(1, 16);
    expect(control.retry).toBeCloseTo(0.45, 12);
    control.accept(0.45, 1e-8);
    expect(control.natural).toBe(0.45);
    control.reject(1, 1e12);
    expect(control.retry).toBeCloseTo(0.2, 12);
    control.fail(1);
    expect(control.natural).toBe(0.25);
  });

  it('halves at least a step refused twice in a row, and starts over with what is accepted', () => {
    const control = new StepControl();
    control.reject(1, 1.5);
    control.reject(1, 1.5);
    expect(control.retry).toBe(0.5);
    control.reject(1, 81);
    expect(control.retry).toBeCloseTo(0.3, 12);
    control.accept(0.3, 0.5);
    control.reject(1, 1.5);
    expect(control.retry).toBeCloseTo(0.9 / 1.5 ** 0.25, 14);
  });

  it('begins a segment as the last began, once the natural step has been refused at two beginnings in a row', () => {
    const control = new StepControl();
    const day = (): number => {
      control.beginSegment();
      const first = control.fit(100, control.natural ?? 10);
      // Each day allows a step of 1 at its beginning and of 10 later.
      if (first > 1) control.reject(first, (first / 1) ** 4);
      control.accept(Math.min(first, 0.9), 0.5);
      for (let step = 0; step < 5; step++) control.accept(control.natural ?? 0, 1e-4);
      control.natural = 10;
      return first;
    };
    expect(day()).toBe(10);
    expect(day()).toBe(10);
    expect(day()).toBeLessThan(1.5);
    control.restart(10);
    expect(day()).toBe(10);
  });

  it('keeps a habit of beginnings through a segment too short to show it, and drops it at a longer beginning', () => {
    const control = new StepControl();
    const begin = (): number => {
      control.beginSegment();
      return control.natural ?? NaN;
    };
    control.natural = 10;
    for (let day = 0; day < 2; day++) {
      begin();
      control.reject(10, 1e4);
      control.accept(1, 0.9 ** 4);
      control.natural = 10;
    }
    // An error of 0.9^4 at a step of 1 asks for a step of 1.
    expect(begin()).toBeCloseTo(1, 12);
    control.accept(1e-3, 0.9 ** 4);
    control.natural = 10;
    expect(begin()).toBeCloseTo(1, 12);
    // A beginning whose whole step goes well teaches a longer one.
    control.accept(1, 0.45 ** 4);
    control.natural = 10;
    expect(begin()).toBeCloseTo(2, 12);
  });
});

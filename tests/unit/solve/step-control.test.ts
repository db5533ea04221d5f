import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StepControl } from '../../../packages/core/src/solve/step-control.js';

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
    control.beginStretch();
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

  it('begins a stretch as the last began, once the natural step has been refused at two beginnings in a row', () => {
    const control = new StepControl();
    const day = (): number => {
      control.beginStretch();
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
});

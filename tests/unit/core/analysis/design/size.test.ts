import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findSize, type SizeSearch, type Trial } from '@leat/core';

const trial = (value: number, ...margins: number[]): Trial => ({
  value,
  margins,
  holds: margins.every((margin) => margin > 0),
});

/** A search over 1..100 for margins given by functions of the value. */
function search(
  margins: readonly ((value: number) => number)[],
  other: Partial<SizeSearch> = {},
): SizeSearch & {
  readonly tried: number[];
} {
  const tried: number[] = [];
  return {
    ...{ from: 1, to: 100, want: 'smallest', within: 0.01, tried },
    judge: (value) => {
      tried.push(value);
      return trial(value, ...margins.map((margin) => margin(value)));
    },
    ...other,
  };
}

describe('findSize', () => {
  it('finds the smallest value that holds, with one that fails within 1 % of it', () => {
    const asked = search([(value) => 1 - 37.3 / value]);
    const { kind, value = 0, fails = 0, binding } = findSize(asked);
    expect(kind).toBe('found');
    expect(value).toBeGreaterThanOrEqual(37.3);
    expect(fails).toBeLessThan(37.3);
    expect(value - fails).toBeLessThanOrEqual(0.01 * value);
    expect(binding).toEqual([0]);
    expect(asked.tried.length).toBeLessThan(20);
  });

  it('finds the largest value that holds', () => {
    const { kind, value = 0, fails = 0 } = findSize(search([(value) => 60.7 - value], { want: 'largest' }));
    expect(kind).toBe('found');
    expect([value < 60.7, fails >= 60.7, fails - value <= 0.01 * value]).toEqual([true, true, true]);
  });

  it('brackets any threshold to the width asked, whatever the shape of the margin', () => {
    const shapes = [
      (x: number) => x,
      (x: number) => Math.sign(x) * Math.sqrt(Math.abs(x)),
      (x: number) => x ** 3,
      (x: number) => Math.sign(x),
      (x: number) => (x > 0 ? 1e6 * x : x),
    ];
    fc.assert(
      fc.property(
        fc.double({ min: 1.1, max: 99, noNaN: true }),
        fc.constantFrom(...shapes),
        fc.constantFrom('smallest', 'largest'),
        (threshold, shape, want) => {
          const sign = want === 'smallest' ? 1 : -1;
          const asked = search([(value) => shape(sign * (value - threshold))], { want });
          const { kind, value = Number.NaN, fails = Number.NaN } = findSize(asked);
          expect(kind).toBe('found');
          expect(sign * (value - threshold)).toBeGreaterThan(0);
          expect(sign * (fails - threshold)).toBeLessThanOrEqual(0);
          expect(Math.abs(value - fails)).toBeLessThanOrEqual(0.01 * value);
          expect(asked.tried.length).toBeLessThan(40);
        },
      ),
    );
  });

  it('says which of several conditions binds', () => {
    const { value = 0, binding } = findSize(search([(value) => value - 20, (value) => (value - 50) / 1000]));
    expect(value).toBeGreaterThan(50);
    expect(binding).toEqual([1]);
  });

  it('takes only whole numbers where only they make sense', () => {
    const asked = search([(value) => 17.5 - value], { want: 'largest', whole: true });
    expect(findSize(asked)).toMatchObject({ kind: 'found', value: 17, fails: 18 });
    expect(asked.tried.every(Number.isInteger)).toBe(true);
  });

  it('tries no value twice, and only values that can be written in a few digits', () => {
    const { tried } = ((asked) => {
      findSize(asked);
      return asked;
    })(search([(value) => value - 33.333333]));
    expect(new Set(tried).size).toBe(tried.length);
    expect(tried.every((value) => String(value).length <= 6)).toBe(true);
  });

  it('says that conditions hold everywhere, and gives the wanted end', () => {
    expect(findSize(search([() => 1]))).toMatchObject({ kind: 'holds-everywhere', value: 1 });
    expect(findSize(search([() => 1], { want: 'largest' }))).toMatchObject({ value: 100 });
  });

  it('says that they hold nowhere, and which fails where it comes nearest', () => {
    const answer = findSize(search([() => 1, (value) => -value]));
    expect(answer).toMatchObject({ kind: 'holds-nowhere', binding: [1], stretches: [] });
    expect(answer.value).toBeUndefined();
  });

  it('says that they hold at the wanted end and fail further on', () => {
    expect(findSize(search([(value) => 30 - value]))).toMatchObject({
      kind: 'at-the-end',
      value: 1,
      binding: [0],
    });
  });

  it('gives the edge of a band, and says where it fails again', () => {
    const answer = findSize(search([(value) => value - 30, (value) => 70 - value]));
    expect(answer).toMatchObject({ kind: 'found', binding: [0] });
    expect(answer.value).toBeGreaterThan(30);
    expect(answer.failsAgain).toBeGreaterThan(70);
  });

  it('says that they hold, fail and hold again, where, and refines the first', () => {
    const wave = (value: number): number => Math.sin(value / 10);
    const { kind, value = 0, stretches } = findSize(search([wave], { from: 35, to: 200 }));
    expect(kind).toBe('not-monotone');
    expect(value).toBeGreaterThanOrEqual(20 * Math.PI);
    expect(value).toBeLessThan(20 * Math.PI * 1.02);
    expect(stretches.length).toBeGreaterThan(1);
  });

  it('counts a run that broke off as one that fails, and keeps the reason', () => {
    const judge = (value: number): Trial =>
      value < 40
        ? { value, holds: false, margins: [Number.NaN], broke: 'not finite on day 3' }
        : trial(value, value);
    const { kind, value = 0, trials, binding } = findSize({ ...search([]), judge });
    expect([kind, binding]).toEqual(['found', [0]]);
    expect(value).toBeGreaterThanOrEqual(40);
    expect(trials[0].broke).toBe('not finite on day 3');
  });

  it.each([1.5, 20, 99])('walks from a guess of 20 to a threshold of %d with few runs', (threshold) => {
    const asked = search([(value) => value - threshold], { near: 20 });
    const { kind, value = 0 } = findSize(asked);
    expect(kind).toBe('found');
    expect(value).toBeGreaterThan(threshold);
    expect(value).toBeLessThanOrEqual(1.02 * threshold);
    expect(asked.tried.length).toBeLessThan(14);
  });

  it.each([
    [{ from: 5, to: 5 }, 'not below'],
    [{ within: 0 }, 'within is 0'],
  ])('refuses %j', (wrong, message) => {
    expect(() => findSize(search([() => 1], wrong))).toThrow(message);
  });
});

import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { acuteCriterion, chronicCriterion } from '../../../../packages/core/src/result/limits-for-release.js';

const parameters = createParameters();

/**
 * US EPA 2013 (EPA-822-R-13-001). Two significant figures computed from the formulas [C]; at pH 7 they equal
 * the printed table (24/17/11/7.3 and 1.9/1.4/0.99 [M]); the value at pH 7 and 20 degC is quoted by EPA [R].
 */
const table: readonly (readonly [
  pH: number,
  trout: readonly number[],
  none: readonly number[],
  chronic: readonly number[],
])[] = [
  [6.5, [33, 33, 23, 15, 9.9], [51, 34, 23, 15, 9.9], [4.9, 4.1, 2.9, 2.1, 1.5, 1.1]],
  [7.0, [24, 24, 17, 11, 7.3], [38, 25, 17, 11, 7.3], [4.4, 3.6, 2.6, 1.9, 1.4, 0.99]],
  [7.5, [13, 13, 9.2, 6.1, 4.0], [21, 14, 9.2, 6.1, 4.0], [3.2, 2.7, 1.9, 1.4, 1.0, 0.73]],
  [8.0, [5.6, 5.6, 3.9, 2.6, 1.7], [8.8, 5.9, 3.9, 2.6, 1.7], [1.8, 1.5, 1.1, 0.78, 0.56, 0.41]],
  [8.5, [2.1, 2.1, 1.5, 0.98, 0.65], [3.3, 2.3, 1.5, 0.98, 0.65], [0.8, 0.66, 0.48, 0.35, 0.25, 0.18]],
  [9.0, [0.88, 0.88, 0.62, 0.41, 0.27], [1.4, 0.93, 0.62, 0.41, 0.27], [0.36, 0.3, 0.21, 0.16, 0.11, 0.081]],
];

const twoFigures = (value: number): number => Number(value.toPrecision(2));

describe('acuteCriterion', () => {
  it.each(table)('at pH %d equals the table [C] with and without Oncorhynchus', (pH, trout, none) => {
    // The published columns: 0-10, 15, 20, 25, 30 degC; the first at 10, where the caps still hold.
    const at = [10, 15, 20, 25, 30];
    expect(at.map((t) => twoFigures(acuteCriterion(parameters, pH, t, true)))).toEqual(trout);
    expect(at.map((t) => twoFigures(acuteCriterion(parameters, pH, t, false)))).toEqual(none);
  });

  it('is 17 mg N/L at pH 7 and 20 degC [R], 16.7602 to six figures [C]', () => {
    expect(acuteCriterion(parameters, 7, 20, true)).toBeCloseTo(16.7602, 4);
  });
});

describe('chronicCriterion', () => {
  it.each(table)('at pH %d equals the table [C]', (pH, _trout, _none, chronic) => {
    const at = [7, 10, 15, 20, 25, 30];
    expect(at.map((t) => twoFigures(chronicCriterion(parameters, pH, t)))).toEqual(chronic);
  });

  it('is 1.9 mg N/L at pH 7 and 20 degC [R], 1.88702 to six figures [C]', () => {
    expect(chronicCriterion(parameters, 7, 20)).toBeCloseTo(1.88702, 5);
  });

  it('does not rise below 7 degC', () => {
    expect(chronicCriterion(parameters, 7, 0)).toBe(chronicCriterion(parameters, 7, 7));
  });
});

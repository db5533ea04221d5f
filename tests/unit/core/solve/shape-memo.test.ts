import { describe, expect, it } from 'vitest';
import { ShapeMemo } from '../../../../packages/core/src/solve/shape-memo.js';

const shape = (...parts: readonly number[][]): Int32Array[] => parts.map((part) => Int32Array.from(part));

/** A memo whose things are numbered in the order in which they are made. */
function counting(): (...parts: readonly number[][]) => number {
  const memo = new ShapeMemo<number>();
  let made = 0;
  return (...parts) => memo.get(shape(...parts), () => ++made);
}

describe('ShapeMemo', () => {
  it('makes a thing once for arrays of the same numbers', () => {
    const get = counting();
    expect(get([1, 2, 3], [4])).toBe(1);
    expect(get([1, 2, 3], [4])).toBe(1);
    expect(get([], [])).toBe(2);
    expect(get([], [])).toBe(2);
  });

  it.each([
    ['first number', [[9, 2, 3], [4]]],
    ['last number', [[1, 2, 9], [4]]],
    ['number of the last array', [[1, 2, 3], [9]]],
    ['length', [[1, 2, 3, 0], [4]]],
    ['shorter length', [[1, 2], [4]]],
    ['count of arrays', [[1, 2, 3], [4], []]],
    ['lower count of arrays', [[1, 2, 3]]],
    [
      'split into arrays',
      [
        [1, 2],
        [3, 4],
      ],
    ],
  ])('takes a shape that differs in one %s for another', (_part, other) => {
    const get = counting();
    expect(get([1, 2, 3], [4])).toBe(1);
    expect(get(...other)).toBe(2);
    expect(get([1, 2, 3], [4])).toBe(1);
    expect(get(...other)).toBe(2);
  });

  it('keeps a shape as it was, whatever becomes of the arrays that were given', () => {
    const memo = new ShapeMemo<string>();
    const given = shape([1, 2]);
    expect(memo.get(given, () => 'first')).toBe('first');
    given[0][0] = 7;
    expect(memo.get(given, () => 'second')).toBe('second');
    expect(memo.get(shape([1, 2]), () => 'third')).toBe('first');
  });

  it('keeps the 16 shapes used last', () => {
    const get = counting();
    for (let n = 1; n <= 16; n++) expect(get([n])).toBe(n);
    // Used again, the first is now the last to go; the 17th shape takes the place of the second.
    expect(get([1])).toBe(1);
    expect(get([17])).toBe(17);
    for (const n of [1, 17, ...Array.from({ length: 14 }, (_, i) => i + 3)]) expect(get([n])).toBe(n);
    expect(get([2])).toBe(18);
  });
});

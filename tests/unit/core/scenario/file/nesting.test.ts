import { describe, expect, it } from 'vitest';
import { nestingBound } from '../../../../../packages/core/src/scenario/file/read-tree.js';
import { smallSystem } from '../../../../product/faults/small-system.js';

describe('nestingBound', () => {
  it.each([
    ['', 0],
    ['a: 1\nb: 2', 1],
    ['a:\n  b:\n    c: 1\nd: 2', 3],
    ['a: [[1], [2]]', 3],
    ['- - - a', 4],
    ['a: [\n[\n1\n]]', 3],
    ['a: 1 ]]] [', 2],
  ])('of %j is %i', (text, bound) => {
    expect(nestingBound(text)).toBe(bound);
  });

  it('is small for a system', () => {
    expect(nestingBound(smallSystem)).toBeLessThan(6);
  });
});

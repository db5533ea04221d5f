import { describe, expect, it } from 'vitest';
import { finite } from '../../../../packages/core/src/solve/loops.js';
import { firstNotFinite } from '../../../../packages/core/src/solve/rodas-step.js';

const sizes = Array.from({ length: 14 }, (_, size) => size);
const allFinite = (v: Float64Array): boolean => finite(v, v.length) === 1;
const numbers = (size: number): Float64Array => Float64Array.from({ length: size }, (_, i) => i - 3.5);

describe('finite and firstNotFinite', () => {
  it.each(sizes)('find %d finite numbers finite', (size) => {
    expect(allFinite(numbers(size))).toBe(true);
    expect(firstNotFinite(numbers(size))).toBe(-1);
  });

  it.each(sizes.slice(1))('see one that is not, at each of %d places', (size) => {
    for (let at = 0; at < size; at++) {
      for (const odd of [NaN, Infinity, -Infinity]) {
        const v = numbers(size);
        v[at] = odd;
        expect(allFinite(v), `${String(odd)} at ${String(at)}`).toBe(false);
        expect(firstNotFinite(v)).toBe(at);
      }
    }
  });

  it('are not misled by infinities that would cancel, and name the first of several', () => {
    const v = Float64Array.from([1, Infinity, 2, -Infinity, 3]);
    expect(allFinite(v)).toBe(false);
    expect(firstNotFinite(v)).toBe(1);
  });
});

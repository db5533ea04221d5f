import { afterEach, describe, expect, it, vi } from 'vitest';
import { sparseLu } from '../../../packages/core/src/solve/sparse-lu.js';
import { StraightLine } from '../../../packages/core/src/solve/straight-line.js';
import { groupProducts, SumsOfProducts } from '../../../packages/core/src/solve/sums-of-products.js';
import { createRandom } from '../../../packages/core/src/library/random.js';
import type { SparsePattern } from '../../../packages/core/src/solve/contract.js';

/** More often than it takes for code to be made. */
const OFTEN = 400;

/** A pattern of so many rows with a few entries in each, different for each seed. */
function patternOf(seed: number, size: number): SparsePattern {
  const random = createRandom(seed);
  const rows = Array.from({ length: size }, (_, i) => [
    ...new Set([i, ...Array.from({ length: 3 }, () => Math.floor(size * random()))]),
  ]);
  const start = new Int32Array(size + 1);
  rows.forEach((row, i) => (start[i + 1] = start[i] + row.length));
  return { start, column: Int32Array.from(rows.flat()) };
}

/** Solutions of one system, factorised again each time. */
function solutions(seed: number, size: number): readonly string[] {
  const pattern = patternOf(seed, size);
  const solver = sparseLu(pattern);
  return Array.from({ length: OFTEN }, () => {
    const random = createRandom(seed + 1);
    solver.values.fill(0);
    for (let i = 0; i < size; i++) {
      for (let p = pattern.start[i]; p < pattern.start[i + 1]; p++) {
        const diagonal = pattern.column[p] === i ? 4 : 0;
        solver.values[solver.place(i, pattern.column[p])] = diagonal + random() - 0.5;
      }
    }
    const b = Float64Array.from({ length: size }, (_, i) => Math.sin(i));
    expect(solver.factor()).toBe(true);
    solver.solve(b);
    return b.join();
  });
}

/** Sums of products with and over what was there. */
function sums(seed: number, mode: 'set' | 'add' | 'negate'): readonly string[] {
  const random = createRandom(seed);
  const draw = (below: number): number[] => Array.from({ length: 900 }, () => Math.floor(below * random()));
  const places = groupProducts(draw(150), draw(40), draw(60), 151);
  const product = new SumsOfProducts(places, mode);
  const a = Float64Array.from({ length: 40 }, () => random() - 0.5);
  const b = Float64Array.from({ length: 60 }, () => random() - 0.5);
  return Array.from({ length: OFTEN }, () => {
    const out = new Float64Array(151).fill(1);
    product.apply(a, b, out);
    return out.join();
  });
}

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('code written out for a shape', () => {
  it('is made after some calls, of every statement in order, in pieces', () => {
    const line = new StraightLine(['a'], 1200, (writer) => {
      for (let i = 1; i <= 3; i++) writer.add(`a[0]=a[0]*10+${i};`, 400);
    });
    const a = new Float64Array(1);
    expect(line.code()).toBeUndefined();
    for (let call = 0; call < OFTEN; call++) line.code();
    expect(line.code()).toHaveLength(3);
    for (const piece of line.code() ?? []) piece(a);
    expect([...a]).toEqual([123]);
  });

  it('is not made when it would be very long', () => {
    const line = new StraightLine([], 1e6, () => {
      throw new Error('never written');
    });
    for (let call = 0; call < OFTEN; call++) expect(line.code()).toBeUndefined();
  });

  it('solves to the last bit as the loops do', () => {
    expect(new Set(solutions(5, 120)).size).toBe(1);
  });

  it.each(['set', 'add', 'negate'] as const)('sums to the last bit as the loops do (%s)', (mode) => {
    expect(new Set(sums(6, mode)).size).toBe(1);
  });

  it('is done without where making code from text is forbidden', () => {
    const wanted = { solved: solutions(7, 60)[0], summed: sums(8, 'add')[0] };
    const forbidden = vi.fn(function refuse() {
      throw new EvalError('refused by the content security policy');
    });
    vi.stubGlobal('Function', forbidden);
    // Other shapes than before, so that no code is at hand.
    expect(new Set(solutions(9, 61)).size).toBe(1);
    expect(new Set(sums(10, 'add')).size).toBe(1);
    expect(forbidden).toHaveBeenCalled();
    vi.unstubAllGlobals();
    expect(solutions(7, 60)[0]).toBe(wanted.solved);
    expect(sums(8, 'add')[0]).toBe(wanted.summed);
  });
});

import { afterEach, describe, expect, it, vi } from 'vitest';
import { sparseLu } from '../../../../packages/core/src/solve/sparse-lu.js';
import { StraightLine } from '../../../../packages/core/src/solve/straight-line.js';
import { groupProducts, SumsOfProducts } from '../../../../packages/core/src/solve/sums-of-products.js';
import { createRandom } from '../../../../packages/core/src/base/random.js';
import type { SparsePattern } from '../../../../packages/core/src/solve/contract.js';

/** More often than it takes for code of a few hundred products to be made and always used. */
const OFTEN = 60_000;

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

/** The different solutions of one system, factorised again each time. */
function solutions(seed: number, size: number): ReadonlySet<string> {
  const pattern = patternOf(seed, size);
  const solver = sparseLu(pattern);
  const random = createRandom(seed + 1);
  const values = new Float64Array(solver.values.length);
  for (let i = 0; i < size; i++) {
    for (let p = pattern.start[i]; p < pattern.start[i + 1]; p++) {
      const diagonal = pattern.column[p] === i ? 4 : 0;
      values[solver.place(i, pattern.column[p])] = diagonal + random() - 0.5;
    }
  }
  const right = Float64Array.from({ length: size }, (_, i) => Math.sin(i));
  const found = new Set<string>();
  for (let time = 0; time < OFTEN; time++) {
    solver.values.set(values);
    const b = right.slice();
    if (!solver.factor()) throw new Error('singular');
    solver.solve(b);
    found.add(b.join());
  }
  return found;
}

/** The different sums of products with and over what was there. */
function sums(seed: number, mode: 'set' | 'add' | 'negate'): ReadonlySet<string> {
  const random = createRandom(seed);
  const draw = (below: number): number[] => Array.from({ length: 900 }, () => Math.floor(below * random()));
  const places = groupProducts(draw(150), draw(40), draw(60), 151);
  const product = new SumsOfProducts(places, mode);
  const a = Float64Array.from({ length: 40 }, () => random() - 0.5);
  const b = Float64Array.from({ length: 60 }, () => random() - 0.5);
  const found = new Set<string>();
  for (let time = 0; time < OFTEN; time++) {
    const out = new Float64Array(151).fill(1);
    product.apply(a, b, out);
    found.add(out.join());
  }
  return found;
}

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

/** Calls until the code is at hand in every call. */
function settle(line: StraightLine): void {
  for (let call = 0; call < OFTEN; call++) line.code();
}

describe('code written out for a shape', () => {
  it('is made after much work, of every statement in order, in pieces; first used now and then, later always', () => {
    const line = new StraightLine(['a'], 1200, (writer) => {
      for (let i = 1; i <= 3; i++) writer.add(`a[0]=a[0]*10+${i};`, 400);
    });
    const used = Array.from({ length: OFTEN }, () => line.code() !== undefined);
    expect(used.indexOf(true)).toBeGreaterThan(1000);
    expect(used.filter(Boolean).length).toBeLessThan(OFTEN);
    expect(used[used.indexOf(true) + 1]).toBe(false);
    expect(used.slice(-5000).every(Boolean)).toBe(true);
    const a = new Float64Array(1);
    expect(line.code()).toHaveLength(3);
    for (const piece of line.code() ?? []) piece(a);
    expect([...a]).toEqual([123]);
  });

  it('keeps its schedule: loops for 40 million products, then every 32nd of 2,048 calls, then always', () => {
    const line = new StraightLine(['a'], 1000, (writer) => {
      writer.add('a[0]=1;', 1000);
    });
    const used = Array.from({ length: 43_000 }, () => line.code() !== undefined);
    const first = 40_000_000 / 1000 - 1;
    const wanted = used.map((_, call) => {
      const warm = call - first + 1;
      return warm >= 2048 || (warm > 0 && warm % 32 === 0);
    });
    expect(used).toEqual(wanted);
  });

  it.each([
    ['two of 125 fit into one piece of 250', [125, 125], 1],
    ['one product more does not', [126, 125], 2],
    ['a piece begins anew at 0', [200, 125, 125], 2],
    ['a statement is never cut', [999, 1], 2],
    ['without statements there is one empty piece', [], 1],
  ])('is cut into pieces by their products: %s', (_case, products, pieces) => {
    const line = new StraightLine(['a'], 40_000, (writer) => {
      for (const count of products) writer.add('a[0]++;', count);
    });
    for (let call = 0; call < 3100; call++) line.code();
    const a = new Float64Array(1);
    for (const piece of line.code() ?? []) piece(a);
    expect(line.code()).toHaveLength(pieces);
    expect(a[0]).toBe(products.length);
  });

  it.each([
    [40_000, true],
    [40_001, false],
  ])('of %d products is made: %s', (products, made) => {
    const line = new StraightLine([], products, (writer) => {
      writer.add('', products);
    });
    for (let call = 0; call < 3100; call++) line.code();
    expect(line.code() !== undefined).toBe(made);
  });

  it('is not made when it would be very long', () => {
    const write = vi.fn();
    const line = new StraightLine([], 1e6, write);
    settle(line);
    expect(line.code()).toBeUndefined();
    expect(write).not.toHaveBeenCalled();
  });

  it('solves to the last bit as the loops do', () => {
    const made = vi.spyOn(globalThis, 'Function');
    expect(solutions(5, 90).size).toBe(1);
    expect(made.mock.calls.length).toBeGreaterThanOrEqual(2);
  });

  it.each(['set', 'add', 'negate'] as const)('sums to the last bit as the loops do (%s)', (mode) => {
    const made = vi.spyOn(globalThis, 'Function');
    expect(sums(6, mode).size).toBe(1);
    expect(made).toHaveBeenCalled();
  });

  it('holds nothing but indices, operators and names of its arrays', () => {
    const made = vi.spyOn(globalThis, 'Function');
    expect(solutions(11, 70).size).toBe(1);
    expect(sums(12, 'set').size).toBe(1);
    for (const call of made.mock.calls) {
      expect(call.at(-1)).toMatch(
        /^"use strict";[{}();=+*/\-\d[\]]*((let )?(a|b|v|w|out|x\d+)[{}();=+*/,\-\d[\]]*)*$/,
      );
    }
  });

  it('is done without where making code from text is forbidden', () => {
    const wanted = { solved: [...solutions(7, 80)], summed: [...sums(8, 'add')] };
    const forbidden = vi.fn(function refuse() {
      throw new EvalError('refused by the content security policy');
    });
    vi.stubGlobal('Function', forbidden);
    // Other shapes than before, so that no code is at hand.
    expect(solutions(9, 81).size).toBe(1);
    expect(sums(10, 'add').size).toBe(1);
    expect(forbidden).toHaveBeenCalledTimes(3);
    vi.unstubAllGlobals();
    expect([...solutions(7, 80)]).toEqual(wanted.solved);
    expect([...sums(8, 'add')]).toEqual(wanted.summed);
  });
});

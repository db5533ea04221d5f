import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { denseLu } from '../../../support/dense-lu.js';
import type { LinearSolverFactory } from '../../../../packages/core/src/solve/contract.js';
import { sparseLu } from '../../../../packages/core/src/solve/sparse-lu.js';
import { largestDeviation } from '../../../support/deviation.js';
import { sparseRows } from '../../../support/plain-system.js';
import { drawsFrom } from '../../../support/random-network.js';

/** A random matrix whose diagonal outweighs its row, as rows of (column, value). */
function dominant(size: number, density: number, seed: number): [number, number][][] {
  const draw = drawsFrom(seed);
  return Array.from({ length: size }, (_, i) => {
    const row: [number, number][] = [];
    for (let j = 0; j < size; j++) if (j !== i && draw() < density) row.push([j, 2 * draw() - 1]);
    const weight = row.reduce((sum, [, value]) => sum + Math.abs(value), 0.1 + draw());
    row.push([i, draw() < 0.5 ? weight : -weight]);
    return row;
  });
}

function solveWith(
  make: LinearSolverFactory,
  rows: readonly [number, number][][],
  b: Float64Array,
): Float64Array {
  const solver = make(sparseRows(rows));
  solver.values.fill(0);
  rows.forEach((row, i) => row.forEach(([j, value]) => (solver.values[solver.place(i, j)] = value)));
  expect(solver.factor()).toBe(true);
  const x = b.slice();
  solver.solve(x);
  return x;
}

/** A x. */
function product(rows: readonly [number, number][][], x: Float64Array): number[] {
  return rows.map((row) => row.reduce((sum, [j, value]) => sum + value * x[j], 0));
}

describe('sparseLu', () => {
  it('solves random sparse systems as the dense LU of ml-matrix does, and with no residual', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.nat(1e6),
        (size, density, seed) => {
          const rows = dominant(size, density, seed);
          const draw = drawsFrom(seed + 7);
          const b = Float64Array.from({ length: size }, () => 2 * draw() - 1);
          const wanted = solveWith(denseLu, rows, b);
          const got = solveWith(sparseLu, rows, b);
          const scale = Math.max(1, ...wanted.map(Math.abs));
          expect(largestDeviation(got, wanted)).toBeLessThan(1e-11 * scale);
          expect(largestDeviation(product(rows, got), b)).toBeLessThan(1e-12 * scale);
          expect(largestDeviation(product(rows, wanted), b)).toBeLessThan(1e-12 * scale);
        },
      ),
      { numRuns: 200 },
    );
  });

  it('keeps an arrow matrix free of fill by eliminating its tip last', () => {
    const size = 30;
    const rows = Array.from({ length: size }, (_, i): [number, number][] =>
      i === 0
        ? Array.from({ length: size }, (_v, j): [number, number] => [j, j === 0 ? size : 1])
        : [
            [0, 1],
            [i, 2],
          ],
    );
    expect(sparseLu(sparseRows(rows)).values.length).toBe(3 * size - 2);
  });

  it('factorises again after new values', () => {
    const solver = sparseLu(sparseRows([[[1, 0]], [[0, 0]]]));
    for (const scale of [1, 3]) {
      solver.values.fill(0);
      solver.values[solver.place(0, 0)] = 2 * scale;
      solver.values[solver.place(0, 1)] = scale;
      solver.values[solver.place(1, 0)] = scale;
      solver.values[solver.place(1, 1)] = 2 * scale;
      expect(solver.factor()).toBe(true);
      const b = Float64Array.from([3 * scale, 3 * scale]);
      solver.solve(b);
      expect(largestDeviation(b, [1, 1])).toBeLessThan(1e-15);
    }
  });
});

describe.each([
  ['sparseLu', sparseLu],
  ['denseLu', denseLu],
] as const)('%s', (_name, make) => {
  const square = sparseRows([
    [
      [0, 0],
      [1, 0],
    ],
    [
      [0, 0],
      [1, 0],
    ],
  ]);
  it.each([
    ['exactly singular', [1, 2, 0.5, 1]],
    ['singular but for round-off', [0.1, 0.3, 0.7, 2.1]],
    ['zero', [0, 0, 0, 0]],
    ['not a number', [1, NaN, 1, 1]],
    ['infinite', [1, 0, 0, Infinity]],
  ])('refuses a matrix that is %s and names a row', (_case, entries) => {
    const solver = make(square);
    entries.forEach((value, p) => (solver.values[solver.place(Math.floor(p / 2), p % 2)] = value));
    expect(solver.factor()).toBe(false);
    expect([0, 1]).toContain(solver.failedRow);
  });

  it.each([
    [1, 0],
    [3, 0],
    [3, 1],
    [3, 2],
  ])('of %d unlike diagonal entries names the one that is 0 (%d)', (size, zero) => {
    const solver = make(sparseRows(Array.from({ length: size }, (_, i) => [[i, 0]])));
    expect(solver.failedRow).toBe(-1);
    for (let i = 0; i < size; i++) solver.values[solver.place(i, i)] = i === zero ? 0 : 10 ** (3 * i);
    expect(solver.factor()).toBe(false);
    expect(solver.failedRow).toBe(zero);
    for (let i = 0; i < size; i++) solver.values[solver.place(i, i)] = 10 ** (3 * i);
    expect(solver.factor()).toBe(true);
    expect(solver.failedRow).toBe(-1);
    const b = Float64Array.from({ length: size }, (_, i) => 2 * 10 ** (3 * i));
    solver.solve(b);
    expect(largestDeviation(b, new Array(size).fill(2))).toBeLessThan(1e-14);
  });

  it('has no place outside its pattern', () => {
    expect(() => make(square).place(0, 2)).toThrow(RangeError);
  });

  it('keeps a badly scaled but regular matrix', () => {
    const solver = make(square);
    [1e-12, 1e4, 0, 1e4].forEach(
      (value, p) => (solver.values[solver.place(Math.floor(p / 2), p % 2)] = value),
    );
    expect(solver.factor()).toBe(true);
    const b = Float64Array.from([1e4, 1e4]);
    solver.solve(b);
    expect(largestDeviation(b, [0, 1])).toBeLessThan(1e-12);
  });
});

describe('a pivot that cancellation has left', () => {
  const last = (make: LinearSolverFactory, left: number): boolean => {
    const solver = make(
      sparseRows([
        [
          [0, 0],
          [1, 0],
        ],
        [
          [0, 0],
          [1, 0],
        ],
      ]),
    );
    [1, 1, 1, 1 + left].forEach(
      (value, p) => (solver.values[solver.place(Math.floor(p / 2), p % 2)] = value),
    );
    return solver.factor();
  };

  it('is lost in sparseLu up to 16 roundings of its own diagonal, and taken above', () => {
    expect(last(sparseLu, 16 * Number.EPSILON)).toBe(false);
    expect(last(sparseLu, 17 * Number.EPSILON)).toBe(true);
  });

  it('is lost in denseLu below 1e-14 of its scaled row and column, and taken above', () => {
    expect(last(denseLu, 32 * Number.EPSILON)).toBe(false);
    expect(last(denseLu, 64 * Number.EPSILON)).toBe(true);
  });
});

describe('sparseLu without a place', () => {
  it('names the entry', () => {
    expect(() => sparseLu(sparseRows([[], []])).place(0, 1)).toThrow('(0, 1)');
  });
});

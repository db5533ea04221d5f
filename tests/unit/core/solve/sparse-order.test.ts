import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SparsePattern } from '../../../../packages/core/src/solve/contract.js';
import { eliminate } from '../../../../packages/core/src/solve/sparse-order.js';

type Grid = boolean[][];

function patternOf(grid: Grid): SparsePattern {
  const rows = grid.map((row) => row.flatMap((there, j) => (there ? [j] : [])));
  const start = new Int32Array(rows.length + 1);
  rows.forEach((row, i) => (start[i + 1] = start[i] + row.length));
  return { start, column: Int32Array.from(rows.flat()) };
}

/** Gaussian elimination on a grid of places, the pivot each time the least (r - 1)(c - 1), ties by the lower number. */
function byTheBook(grid: Grid): { order: number[]; filled: Grid } {
  const places = grid.map((row, i) => row.map((there, j) => there || i === j));
  const left = new Set(places.keys());
  const order: number[] = [];
  while (left.size > 0) {
    const count = (i: number): number => {
      const [row, column] = [[...left].filter((j) => places[i][j]), [...left].filter((j) => places[j][i])];
      return (row.length - 1) * (column.length - 1);
    };
    const pivot = [...left].reduce((best, i) => (count(i) < count(best) ? i : best));
    left.delete(pivot);
    order.push(pivot);
    for (const i of left) for (const j of left) if (places[i][pivot] && places[pivot][j]) places[i][j] = true;
  }
  return { order, filled: order.map((i) => order.map((j) => places[i][j])) };
}

const grids = fc.integer({ min: 1, max: 9 }).chain((size) => {
  const place = fc.integer({ min: 0, max: 9 }).map((n) => n < 3);
  const row = fc.array(place, { minLength: size, maxLength: size });
  return fc.array(row, { minLength: size, maxLength: size });
});

describe('eliminate', () => {
  it('orders and fills as elimination on a grid does, with pivots of the least Markowitz count', () => {
    fc.assert(
      fc.property(grids, (grid) => {
        const wanted = byTheBook(grid);
        const { order, filled } = eliminate(patternOf(grid));
        expect([...order]).toEqual(wanted.order);
        expect(filled).toEqual(patternOf(wanted.filled));
      }),
      { numRuns: 400 },
    );
  });

  it('weighs a pivot by rows and columns both: (2 - 1)(4 - 1) = 3 goes after (3 - 1)(2 - 1) = 2', () => {
    const grid = [
      [1, 0, 0, 0, 0, 0, 1],
      [1, 1, 1, 1, 1, 1, 1],
      [1, 1, 1, 1, 1, 1, 1],
      [1, 1, 1, 1, 1, 1, 1],
      [0, 1, 1, 1, 1, 1, 1],
      [0, 0, 0, 1, 1, 1, 0],
      [0, 1, 1, 1, 1, 0, 1],
    ].map((row) => row.map((there) => there === 1));
    const { order, filled } = eliminate(patternOf(grid));
    const wanted = byTheBook(grid);
    expect(wanted.order[0]).toBe(0);
    expect([...order]).toEqual(wanted.order);
    expect([...filled.column]).toEqual([...patternOf(wanted.filled).column]);
  });
});

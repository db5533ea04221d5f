import { quantileSorted } from 'd3-array';
import type { Spreads } from './spreads.js';

/** Spreads of few members: every value is kept. */
export function exactSpreads(cells: number, members: number): Spreads {
  const values = new Float64Array(cells * members).fill(Number.NaN);
  let sortedOf = -1;
  let sorted: readonly number[] = [];
  const sort = (cell: number): readonly number[] => {
    if (sortedOf !== cell) {
      sorted = Array.from(values.subarray(cell * members, (cell + 1) * members))
        .filter(Number.isFinite)
        .sort((a, b) => a - b);
      sortedOf = cell;
    }
    return sorted;
  };
  return {
    kind: 'exact',
    add(member, each) {
      sortedOf = -1;
      for (let cell = 0; cell < cells; cell++) values[cell * members + member] = each[cell];
    },
    count: (cell) => sort(cell).length,
    quantile: (cell, p) => quantileSorted([...sort(cell)], p) ?? Number.NaN,
    width: () => 0,
    merge({ arrays: [others] }) {
      sortedOf = -1;
      others.forEach((value, i) => {
        if (!Number.isNaN(value)) values[i] = value;
      });
    },
    state: () => ({ kind: 'exact', arrays: [values] }),
  };
}

import type { SparsePattern, SparseRows } from '../solve/contract.js';

/** Packs rows of (column, value) pairs. */
export function packRows(rows: readonly (readonly (readonly [number, number])[])[]): SparseRows {
  const pattern = packPattern(rows.map((row) => row.map(([column]) => column)));
  return { ...pattern, value: Float64Array.from(rows.flatMap((row) => row.map(([, value]) => value))) };
}

/** Packs rows of columns. */
export function packPattern(rows: readonly (readonly number[])[]): SparsePattern {
  const start = new Int32Array(rows.length + 1);
  rows.forEach((row, index) => {
    start[index + 1] = start[index] + row.length;
  });
  return { start, column: Int32Array.from(rows.flat()) };
}

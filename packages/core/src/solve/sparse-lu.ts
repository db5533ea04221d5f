import type { SparsePattern } from './contract.js';
import type { LinearSolver } from './linear-solver.js';
import { eliminate } from './sparse-order.js';

/** A pivot below this share of its own diagonal entry is what cancellation left over. */
const LOST = 16 * Number.EPSILON;

/**
 * Sparse LU on a pattern fixed beforehand, row by row, without pivoting and without allocation. Meant for
 * I/(hγ) − J, which a smaller step h makes as diagonally dominant as need be: a refused factorisation is
 * answered by a smaller step.
 */
class SparseLu implements LinearSolver {
  readonly values: Float64Array;
  failedRow = -1;
  private readonly start: Int32Array;
  private readonly column: Int32Array;
  private readonly order: Int32Array;
  private readonly rank: Int32Array;
  private readonly diagonal: Int32Array;
  private readonly inverse: Float64Array;
  private readonly work: Float64Array;

  constructor(pattern: SparsePattern) {
    const { order, filled } = eliminate(pattern);
    const size = order.length;
    this.order = order;
    this.rank = new Int32Array(size);
    order.forEach((old, k) => (this.rank[old] = k));
    this.start = filled.start;
    this.column = filled.column;
    this.values = new Float64Array(filled.column.length);
    this.diagonal = new Int32Array(size);
    for (let i = 0; i < size; i++) this.diagonal[i] = filled.column.indexOf(i, filled.start[i]);
    this.inverse = new Float64Array(size);
    this.work = new Float64Array(size);
  }

  place(row: number, column: number): number {
    const i = this.rank[row];
    const j = this.rank[column];
    for (let p = this.start[i]; p < this.start[i + 1]; p++) if (this.column[p] === j) return p;
    throw new RangeError(`no place for entry (${String(row)}, ${String(column)})`);
  }

  factor(): boolean {
    const { values, start, column, diagonal, inverse, work } = this;
    const size = inverse.length;
    for (let i = 0; i < size; i++) {
      const first = start[i];
      const middle = diagonal[i];
      const last = start[i + 1];
      for (let p = first; p < last; p++) work[column[p]] = values[p];
      const before = values[middle];
      for (let p = first; p < middle; p++) {
        const k = column[p];
        const factor = work[k] * inverse[k];
        values[p] = factor;
        if (factor === 0) continue;
        const end = start[k + 1];
        for (let q = diagonal[k] + 1; q < end; q++) work[column[q]] -= factor * values[q];
      }
      for (let p = middle; p < last; p++) values[p] = work[column[p]];
      const pivot = values[middle];
      if (!(Math.abs(pivot) > LOST * Math.abs(before)) || !Number.isFinite(pivot)) {
        this.failedRow = this.order[i];
        return false;
      }
      inverse[i] = 1 / pivot;
    }
    this.failedRow = -1;
    return true;
  }

  solve(b: Float64Array): void {
    const { values, start, column, diagonal, inverse, work, order } = this;
    const size = inverse.length;
    for (let i = 0; i < size; i++) {
      let sum = b[order[i]];
      const middle = diagonal[i];
      for (let p = start[i]; p < middle; p++) sum -= values[p] * work[column[p]];
      work[i] = sum;
    }
    for (let i = size - 1; i >= 0; i--) {
      let sum = work[i];
      const end = start[i + 1];
      for (let p = diagonal[i] + 1; p < end; p++) sum -= values[p] * work[column[p]];
      sum *= inverse[i];
      work[i] = sum;
      b[order[i]] = sum;
    }
  }
}

/** Makes a sparse LU solver: the ordering and the places of the fill are found here, once. */
export function sparseLu(pattern: SparsePattern): LinearSolver {
  return new SparseLu(pattern);
}

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
  private readonly target: Int32Array;
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
    this.target = eliminationTargets(filled, this.diagonal);
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
    const { values, start, column, diagonal, inverse, target } = this;
    const size = inverse.length;
    let t = 0;
    for (let i = 0; i < size; i++) {
      const middle = diagonal[i];
      const before = values[middle];
      for (let p = start[i]; p < middle; p++) {
        const k = column[p];
        const factor = values[p] * inverse[k];
        const end = start[k + 1];
        let q = diagonal[k] + 1;
        values[p] = factor;
        if (factor === 0) {
          t += end - q;
          continue;
        }
        // By fours: the places of one row are all different, so the four do not wait for each other.
        for (; q + 3 < end; q += 4, t += 4) {
          const a = target[t];
          const b = target[t + 1];
          const c = target[t + 2];
          const d = target[t + 3];
          const first = values[a] - factor * values[q];
          const second = values[b] - factor * values[q + 1];
          const third = values[c] - factor * values[q + 2];
          const fourth = values[d] - factor * values[q + 3];
          values[a] = first;
          values[b] = second;
          values[c] = third;
          values[d] = fourth;
        }
        for (; q < end; q++, t++) values[target[t]] -= factor * values[q];
      }
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
      work[i] = b[order[i]] - dot(values, column, start[i], diagonal[i], work);
    }
    for (let i = size - 1; i >= 0; i--) {
      const value = (work[i] - dot(values, column, diagonal[i] + 1, start[i + 1], work)) * inverse[i];
      work[i] = value;
      b[order[i]] = value;
    }
  }
}

/** Σ values[p] v[column[p]] over from <= p < to, in two sums that do not wait for each other. */
function dot(values: Float64Array, column: Int32Array, from: number, to: number, v: Float64Array): number {
  let even = 0;
  let odd = 0;
  let p = from;
  for (; p + 1 < to; p += 2) {
    even += values[p] * v[column[p]];
    odd += values[p + 1] * v[column[p + 1]];
  }
  if (p < to) even += values[p] * v[column[p]];
  return even + odd;
}

/** Where each product of the elimination is subtracted, in the order in which `factor` comes to it. */
function eliminationTargets({ start, column }: SparsePattern, diagonal: Int32Array): Int32Array {
  const targets: number[] = [];
  for (let i = 0; i < diagonal.length; i++) {
    for (let p = start[i]; p < diagonal[i]; p++) {
      const k = column[p];
      let t = p;
      for (let q = diagonal[k] + 1; q < start[k + 1]; q++) {
        while (column[t] !== column[q]) t++;
        targets.push(t);
      }
    }
  }
  return Int32Array.from(targets);
}

/** Makes a sparse LU solver: the ordering and the places of the fill are found here, once. */
export function sparseLu(pattern: SparsePattern): LinearSolver {
  return new SparseLu(pattern);
}

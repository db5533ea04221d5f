import type { SparsePattern } from './contract.js';
import type { LinearSolver } from './linear-solver.js';
import { sparseLuPlan, type SparseLuPlan } from './sparse-lu-plan.js';

/** A pivot below this share of its own diagonal entry is what cancellation left over. */
const LOST = 16 * Number.EPSILON;

/**
 * Sparse LU on a pattern fixed beforehand, row by row, without pivoting and without allocation. Meant for
 * I/(hγ) − J, which a smaller step h makes as diagonally dominant as need be: a refused factorisation is
 * answered by a smaller step. Once a pattern has been worked often it runs by code of its own.
 */
class SparseLu implements LinearSolver {
  readonly values: Float64Array;
  failedRow = -1;
  private readonly plan: SparseLuPlan;
  private readonly inverse: Float64Array;
  private readonly before: Float64Array;
  private readonly work: Float64Array;

  constructor(pattern: SparsePattern) {
    this.plan = sparseLuPlan(pattern);
    const size = this.plan.order.length;
    this.values = new Float64Array(this.plan.column.length);
    this.inverse = new Float64Array(size);
    this.before = new Float64Array(size);
    this.work = new Float64Array(size);
  }

  place(row: number, column: number): number {
    const { rank, start, column: columns } = this.plan;
    const i = rank[row];
    const j = rank[column];
    for (let p = start[i]; p < start[i + 1]; p++) if (columns[p] === j) return p;
    throw new RangeError(`no place for entry (${String(row)}, ${String(column)})`);
  }

  factor(): boolean {
    const { values, inverse, before, plan } = this;
    const { diagonal, order } = plan;
    const size = inverse.length;
    for (let i = 0; i < size; i++) before[i] = values[diagonal[i]];
    const pieces = plan.factor.code();
    if (pieces === undefined) this.eliminate();
    else for (const piece of pieces) piece(values, inverse);
    for (let i = 0; i < size; i++) {
      const pivot = values[diagonal[i]];
      if (!(Math.abs(pivot) > LOST * Math.abs(before[i])) || !Number.isFinite(pivot)) {
        this.failedRow = order[i];
        return false;
      }
    }
    this.failedRow = -1;
    return true;
  }

  solve(b: Float64Array): void {
    const { values, inverse, work, plan } = this;
    const pieces = plan.solve.code();
    if (pieces !== undefined) {
      for (const piece of pieces) piece(values, inverse, b, work);
      return;
    }
    const { start, column, diagonal, order } = plan;
    const size = inverse.length;
    for (let i = 0; i < size; i++) {
      let value = b[order[i]];
      for (let p = start[i]; p < diagonal[i]; p++) value -= values[p] * work[column[p]];
      work[i] = value;
    }
    for (let i = size - 1; i >= 0; i--) {
      let value = work[i];
      for (let p = diagonal[i] + 1; p < start[i + 1]; p++) value -= values[p] * work[column[p]];
      value *= inverse[i];
      work[i] = value;
      b[order[i]] = value;
    }
  }

  /** Row by row: the row is spread out over `work`, then what the rows above take from it is taken. */
  private eliminate(): void {
    const { values, inverse, work, plan } = this;
    const { start, column, diagonal } = plan;
    const size = inverse.length;
    for (let i = 0; i < size; i++) {
      const begin = start[i];
      const middle = diagonal[i];
      const end = start[i + 1];
      for (let p = begin; p < end; p++) work[column[p]] = values[p];
      for (let p = begin; p < middle; p++) {
        const k = column[p];
        const factor = work[k] * inverse[k];
        work[k] = factor;
        const last = start[k + 1];
        for (let q = diagonal[k] + 1; q < last; q++) work[column[q]] -= factor * values[q];
      }
      for (let p = begin; p < end; p++) values[p] = work[column[p]];
      inverse[i] = 1 / work[i];
    }
  }
}

/** Makes a sparse LU solver: the ordering and the places of the fill are found once for a pattern. */
export function sparseLu(pattern: SparsePattern): LinearSolver {
  return new SparseLu(pattern);
}

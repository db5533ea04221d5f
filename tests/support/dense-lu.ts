import { LuDecomposition, Matrix } from 'ml-matrix';
import type { SparsePattern } from '../../packages/core/src/solve/contract.js';
import type { LinearSolver } from '../../packages/core/src/solve/contract.js';

/** After scaling rows and columns to 1, a pivot below this is round-off. */
const LOST = 1e-14;

/**
 * Dense LU with row exchanges (ml-matrix) on a matrix whose rows and columns are first scaled to a largest
 * entry of 1, so that the least pivot tells whether the matrix is singular in working precision. ml-matrix
 * itself refuses only exact zeros.
 */
class DenseLu implements LinearSolver {
  readonly entries: number;
  readonly values: Float64Array;
  failedRow = -1;
  private readonly size: number;
  private readonly rowScale: Float64Array;
  private readonly columnScale: Float64Array;
  private lu: LuDecomposition | undefined;

  constructor(pattern: SparsePattern) {
    this.size = pattern.start.length - 1;
    this.entries = this.size * this.size;
    this.values = new Float64Array(this.entries);
    this.rowScale = new Float64Array(this.size);
    this.columnScale = new Float64Array(this.size);
  }

  place(row: number, column: number): number {
    if (!(row >= 0 && row < this.size && column >= 0 && column < this.size)) {
      throw new RangeError(`no place for entry (${String(row)}, ${String(column)})`);
    }
    return row * this.size + column;
  }

  factor(): boolean {
    const { size } = this;
    if (!this.scale()) return false;
    const scaled = new Matrix(size, size);
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) {
        scaled.set(i, j, this.values[i * size + j] * this.rowScale[i] * this.columnScale[j]);
      }
    }
    this.lu = new LuDecomposition(scaled);
    const upper = this.lu.upperTriangularMatrix;
    for (let i = 0; i < size; i++) if (!(Math.abs(upper.get(i, i)) > LOST)) return this.fail(i);
    this.failedRow = -1;
    return true;
  }

  solve(b: Float64Array): void {
    if (this.lu === undefined) throw new Error('solve needs a factorisation');
    const right = Matrix.columnVector(Array.from(b, (value, i) => value * this.rowScale[i]));
    const solution = this.lu.solve(right);
    for (let i = 0; i < this.size; i++) b[i] = solution.get(i, 0) * this.columnScale[i];
  }

  private scale(): boolean {
    const { size, values, rowScale, columnScale } = this;
    columnScale.fill(0);
    for (let i = 0; i < size; i++) {
      let largest = 0;
      for (let j = 0; j < size; j++) largest = Math.max(largest, Math.abs(values[i * size + j]));
      if (!(largest > 0 && largest < Infinity)) return this.fail(i);
      rowScale[i] = 1 / largest;
      for (let j = 0; j < size; j++) {
        columnScale[j] = Math.max(columnScale[j], Math.abs(values[i * size + j]) * rowScale[i]);
      }
    }
    for (let j = 0; j < size; j++) {
      if (!(columnScale[j] > 0)) return this.fail(j);
      columnScale[j] = 1 / columnScale[j];
    }
    return true;
  }

  private fail(row: number): false {
    this.failedRow = row;
    this.lu = undefined;
    return false;
  }
}

/** Makes a dense LU solver; the pattern only gives the size. What the sparse LU is held against. */
export function denseLu(pattern: SparsePattern): LinearSolver {
  return new DenseLu(pattern);
}

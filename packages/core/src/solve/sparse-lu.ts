import type { LinearSolver, SparsePattern } from './contract.js';
import { eliminate } from './sparse-order.js';
import { ShapeMemo, StraightLine } from './straight-line.js';

/** All that a sparse LU needs besides its values: found once for a pattern and shared. */
interface SparseLuPlan {
  /** order[k]: the row and column eliminated as the k-th; rank is its inverse. */
  readonly order: Int32Array;
  readonly rank: Int32Array;
  /** Places of L and U together, in the new numbering, columns ascending. */
  readonly start: Int32Array;
  readonly column: Int32Array;
  /** Place of each diagonal entry. */
  readonly diagonal: Int32Array;
  /** Code of the elimination, of arrays (a: values, v: inverse pivots). */
  readonly factor: StraightLine;
  /** Code of the solution, of arrays (a, v, b: right side, w: work). */
  readonly solve: StraightLine;
}

const memo = new ShapeMemo<SparseLuPlan>();

/** The plan for a pattern. */
function sparseLuPlan(pattern: SparsePattern): SparseLuPlan {
  return memo.get([pattern.start, pattern.column], () => makePlan(pattern));
}

function makePlan(pattern: SparsePattern): SparseLuPlan {
  const { order, filled } = eliminate(pattern);
  const { start, column } = filled;
  const size = order.length;
  const rank = new Int32Array(size);
  order.forEach((old, k) => (rank[old] = k));
  const diagonal = Int32Array.from({ length: size }, (_, i) => column.indexOf(i, start[i]));
  const places = { order, rank, start, column, diagonal };
  return { ...places, factor: factorLine(places), solve: solveLine(places) };
}

type Places = Pick<SparseLuPlan, 'order' | 'start' | 'column' | 'diagonal'>;

/** Row by row: each entry is what the rows above leave of it, those left of the diagonal in variables of their own. */
function factorLine({ start, column, diagonal }: Places): StraightLine {
  let products = 0;
  for (let i = 0; i < diagonal.length; i++) {
    for (let p = start[i]; p < diagonal[i]; p++) products += start[column[p] + 1] - diagonal[column[p]] - 1;
  }
  return new StraightLine(['a', 'v'], products, (writer) => {
    for (let i = 0; i < diagonal.length; i++) {
      const sums = new Map<number, string>();
      for (let p = start[i]; p < start[i + 1]; p++) sums.set(column[p], `a[${p}]`);
      let text = '{';
      let count = 0;
      for (let p = start[i]; p < diagonal[i]; p++) {
        const k = column[p];
        text += `let x${k}=a[${p}]=(${sums.get(k)})*v[${k}];`;
        for (let q = diagonal[k] + 1; q < start[k + 1]; q++)
          sums.set(column[q], `${sums.get(column[q])}-x${k}*a[${q}]`);
        count += start[k + 1] - diagonal[k];
      }
      for (let p = diagonal[i] + 1; p < start[i + 1]; p++) {
        const sum = sums.get(column[p]);
        if (sum !== `a[${p}]`) text += `a[${p}]=${sum};`;
      }
      writer.add(`${text}v[${i}]=1/(a[${diagonal[i]}]=${sums.get(i)});}`, count);
    }
  });
}

/** Forward, then back. */
function solveLine({ order, start, column, diagonal }: Places): StraightLine {
  return new StraightLine(['a', 'v', 'b', 'w'], column.length, (writer) => {
    const minus = (from: number, to: number): string => {
      let text = '';
      for (let p = from; p < to; p++) text += `-a[${p}]*w[${column[p]}]`;
      return text;
    };
    for (let i = 0; i < diagonal.length; i++) {
      const sum = `b[${order[i]}]${minus(start[i], diagonal[i])}`;
      writer.add(`w[${i}]=${sum};`, diagonal[i] - start[i]);
    }
    for (let i = diagonal.length - 1; i >= 0; i--) {
      const sum = `w[${i}]${minus(diagonal[i] + 1, start[i + 1])}`;
      writer.add(`b[${order[i]}]=w[${i}]=(${sum})*v[${i}];`, start[i + 1] - diagonal[i]);
    }
  });
}

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

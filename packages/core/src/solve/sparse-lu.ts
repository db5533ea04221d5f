import type { LinearSolver, SparsePattern } from './contract.js';
import { eliminate } from './sparse-order.js';
import { type Bound, type Floats, Room } from './room.js';
import { ShapeMemo } from './shape-memo.js';

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
  return { order, rank, start, column, diagonal };
}

/**
 * Sparse LU on a pattern fixed beforehand, row by row, without pivoting and without allocation. Meant for
 * I/(hγ) − J, which a smaller step h makes as diagonally dominant as need be: a refused factorisation is
 * answered by a smaller step.
 */
class SparseLu implements LinearSolver {
  failedRow = -1;
  private readonly plan: SparseLuPlan;
  private readonly matrix: Floats;
  private readonly right: Floats;
  private readonly factors: Bound<number>;
  private readonly solution: Bound<void>;

  constructor(pattern: SparsePattern, room: Room) {
    this.plan = sparseLuPlan(pattern);
    const { order } = this.plan;
    const size = order.length;
    const [start, column, diagonal] = [this.plan.start, this.plan.column, this.plan.diagonal].map((part) =>
      room.ints(part),
    );
    const values = room.floats(this.entries);
    const [inverse, work, right] = [room.floats(size), room.floats(size), room.floats(size)];
    this.matrix = values;
    this.right = right;
    this.factors = room.bind('factor', values, inverse, work, start, column, diagonal, size);
    this.solution = room.bind(
      'solve',
      right,
      values,
      inverse,
      work,
      start,
      column,
      diagonal,
      room.ints(order),
      size,
    );
  }

  get entries(): number {
    return this.plan.column.length;
  }

  get values(): Float64Array {
    return this.matrix.array;
  }

  place(row: number, column: number): number {
    const { rank, start, column: columns } = this.plan;
    const i = rank[row];
    const j = rank[column];
    for (let p = start[i]; p < start[i + 1]; p++) if (columns[p] === j) return p;
    throw new RangeError(`no place for entry (${String(row)}, ${String(column)})`);
  }

  factor(): boolean {
    const failed = this.factors.run();
    this.failedRow = failed < 0 ? -1 : this.plan.order[failed];
    return failed < 0;
  }

  solve(b: Float64Array): void {
    const { array } = this.right;
    array.set(b);
    this.solution.run();
    b.set(array);
  }
}

/**
 * Makes a sparse LU solver: the ordering and the places of the fill are found once for a pattern.
 * @param room where its arrays lie; absent: in a room of its own, by JavaScript, which pays for a few small systems
 */
export function sparseLu(pattern: SparsePattern, room = new Room('javascript')): LinearSolver {
  return new SparseLu(pattern, room);
}

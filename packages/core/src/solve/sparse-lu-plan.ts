import type { SparsePattern } from './contract.js';
import { ShapeMemo } from './shape-memo.js';
import { eliminate } from './sparse-order.js';
import { StraightLine } from './straight-line.js';

/** All that a sparse LU needs besides its values: found once for a pattern and shared. */
export interface SparseLuPlan {
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
export function sparseLuPlan(pattern: SparsePattern): SparseLuPlan {
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

/** Row by row, the entries of the row in variables of their own. */
function factorLine({ start, column, diagonal }: Places): StraightLine {
  let products = 0;
  for (let i = 0; i < diagonal.length; i++) {
    for (let p = start[i]; p < diagonal[i]; p++) products += start[column[p] + 1] - diagonal[column[p]] - 1;
  }
  return new StraightLine(['a', 'v'], products, (writer) => {
    for (let i = 0; i < diagonal.length; i++) {
      let text = '{';
      let count = 0;
      for (let p = start[i]; p < start[i + 1]; p++) text += `let x${column[p]}=a[${p}];`;
      for (let p = start[i]; p < diagonal[i]; p++) {
        const k = column[p];
        text += `x${k}*=v[${k}];a[${p}]=x${k};`;
        for (let q = diagonal[k] + 1; q < start[k + 1]; q++) text += `x${column[q]}-=x${k}*a[${q}];`;
        count += start[k + 1] - diagonal[k];
      }
      for (let p = diagonal[i]; p < start[i + 1]; p++) text += `a[${p}]=x${column[p]};`;
      writer.add(`${text}v[${i}]=1/x${i};}`, count);
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

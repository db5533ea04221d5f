import type { Model } from '../../../packages/core/src/model/model.js';

/** The Jacobian by columns: each place is a sum of coefficient x partial of a rate. */
export interface JacobianTerms {
  /** Column j holds places columnStart[j] .. columnStart[j+1]-1, of rows `row`. */
  readonly columnStart: readonly number[];
  readonly row: readonly number[];
  /** Place e sums terms termStart[e] .. termStart[e+1]-1. */
  readonly termStart: readonly number[];
  readonly partial: readonly number[];
  readonly coefficient: readonly number[];
}

/** Finds the places of J = Sᵀ ∂r/∂y, the whole diagonal among them, and the terms of each. */
export function jacobianTerms({ layout, stoichiometry: s, dependence, rows }: Model): JacobianTerms {
  const states = layout.states.length;
  const columns = Array.from(
    { length: states },
    (_, j) => new Map<number, { partial: number; coefficient: number }[]>([[j, []]]),
  );
  rows.forEach((_, k) => {
    for (let p = dependence.start[k]; p < dependence.start[k + 1]; p++) {
      const column = columns[dependence.column[p]];
      for (let e = s.start[k]; e < s.start[k + 1]; e++) {
        if (s.value[e] === 0) continue;
        const terms = column.get(s.column[e]) ?? [];
        terms.push({ partial: p, coefficient: s.value[e] });
        column.set(s.column[e], terms);
      }
    }
  });
  const places = columns.map((column) => [...column].sort(([a], [b]) => a - b));
  const sums = (counts: readonly number[]): number[] => {
    let total = 0;
    return [0, ...counts.map((count) => (total += count))];
  };
  const flat = places.flat();
  const terms = flat.flatMap(([, list]) => list);
  return {
    columnStart: sums(places.map(({ length }) => length)),
    row: flat.map(([row]) => row),
    termStart: sums(flat.map(([, list]) => list.length)),
    partial: terms.map(({ partial }) => partial),
    coefficient: terms.map(({ coefficient }) => coefficient),
  };
}

/** Sᵀ by states: state i sums entries start[i] .. start[i+1]-1 of coefficient x rate. */
export function movesOf({ layout, stoichiometry: s, rows }: Model): {
  readonly start: readonly number[];
  readonly rate: readonly number[];
  readonly coefficient: readonly number[];
} {
  const moves = layout.states.map(() => [] as { rate: number; coefficient: number }[]);
  rows.forEach((_, k) => {
    for (let e = s.start[k]; e < s.start[k + 1]; e++)
      moves[s.column[e]].push({ rate: k, coefficient: s.value[e] });
  });
  let total = 0;
  return {
    start: [0, ...moves.map((list) => (total += list.length))],
    rate: moves.flat().map(({ rate }) => rate),
    coefficient: moves.flat().map(({ coefficient }) => coefficient),
  };
}

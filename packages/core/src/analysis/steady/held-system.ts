import { packPattern, packRows } from '../../model/sparse.js';
import type { RateSystem, SparseRows } from '../../solve/contract.js';
import type { EvenTerm } from './spread-deeds.js';

function rowOf(rows: SparseRows, row: number): readonly (readonly [number, number])[] {
  const entries: (readonly [number, number])[] = [];
  for (let e = rows.start[row]; e < rows.start[row + 1]; e++) entries.push([rows.column[e], rows.value[e]]);
  return entries;
}

/**
 * A rate system in which some states stay as they are, whatever the rates say, and in which others gain and
 * lose evenly besides. Rates of the original keep their places; those of the even terms follow.
 */
export function heldSystem(
  system: RateSystem,
  held: ReadonlySet<number>,
  even: readonly EvenTerm[],
): RateSystem {
  const moving = even.filter(({ state }) => !held.has(state));
  const stoichiometry = packRows([
    ...Array.from({ length: system.rates }, (_, row) =>
      rowOf(system.stoichiometry, row).filter(([state]) => !held.has(state)),
    ),
    ...moving.map(({ state }) => [[state, 1] as const]),
  ]);
  const { start, column } = system.dependence;
  const dependence = packPattern([
    ...Array.from({ length: system.rates }, (_, row) => [...column.subarray(start[row], start[row + 1])]),
    ...moving.map(({ state }) => [state]),
  ]);
  const partials = column.length;
  return {
    states: system.states,
    rates: system.rates + moving.length,
    stoichiometry,
    dependence,
    evaluate(t, y, r) {
      system.evaluate(t, y, r);
      moving.forEach(({ state, gain, loss }, i) => {
        r[system.rates + i] = gain - loss * y[state];
      });
    },
    differentiate(t, y, dr, rt) {
      system.differentiate(t, y, dr, rt);
      moving.forEach(({ loss }, i) => {
        dr[partials + i] = -loss;
        rt[system.rates + i] = 0;
      });
    },
  };
}

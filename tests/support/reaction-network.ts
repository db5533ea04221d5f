import type { RateSystem } from '../../packages/core/src/solve/contract.js';
import { sparseRows } from './plain-system.js';

/** A reaction k · Π y[from] that moves the states by `moves`; a state named twice counts squared. */
export interface Reaction {
  readonly k: number;
  readonly from: readonly number[];
  readonly moves: readonly (readonly [number, number])[];
}

/** A mass-action network as a rate system, with exact partials. */
export function reactionNetwork(states: number, reactions: readonly Reaction[]): RateSystem {
  const sources = reactions.map(({ from }) => [...new Set(from)]);
  const product = (y: Float64Array, from: readonly number[]) => from.reduce((all, i) => all * y[i], 1);
  return {
    states,
    rates: reactions.length,
    stoichiometry: sparseRows(reactions.map(({ moves }) => moves)),
    dependence: sparseRows(sources.map((row) => row.map((j) => [j, 1] as const))),
    evaluate(_t, y, r) {
      reactions.forEach(({ k, from }, i) => (r[i] = k * product(y, from)));
    },
    differentiate(_t, y, dr, rt) {
      let place = 0;
      reactions.forEach(({ k, from }, i) => {
        for (const j of sources[i]) {
          const one = from.indexOf(j);
          const times = from.filter((s) => s === j).length;
          const rest = from.filter((_, at) => at !== one);
          dr[place++] = k * times * product(y, rest);
        }
      });
      rt.fill(0);
    },
  };
}

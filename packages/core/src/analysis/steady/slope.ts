import { Matrix } from 'ml-matrix';
import type { RateSystem } from '../../solve/contract.js';

/** How the states change at a point, and how that depends on them. */
export interface Slope {
  /** dy/dt of every state, 0 where held. */
  readonly f: Float64Array;
  /** Its partials by every state. */
  readonly jacobian: Matrix;
}

/** Opens the slope Sᵀ r of a system and its Jacobian Sᵀ ∂r/∂y, at time 0. */
export function openSlope(system: RateSystem): (y: Float64Array) => Slope {
  const { stoichiometry, dependence } = system;
  const r = new Float64Array(system.rates);
  const rt = new Float64Array(system.rates);
  const dr = new Float64Array(dependence.column.length);
  return (y) => {
    const f = new Float64Array(system.states);
    const jacobian = Matrix.zeros(system.states, system.states);
    system.evaluate(0, y, r);
    system.differentiate(0, y, dr, rt);
    for (let k = 0; k < system.rates; k++) {
      for (let s = stoichiometry.start[k]; s < stoichiometry.start[k + 1]; s++) {
        const row = stoichiometry.column[s];
        const coefficient = stoichiometry.value[s];
        f[row] += coefficient * r[k];
        for (let p = dependence.start[k]; p < dependence.start[k + 1]; p++) {
          const column = dependence.column[p];
          jacobian.set(row, column, jacobian.get(row, column) + coefficient * dr[p]);
        }
      }
    }
    return { f, jacobian };
  };
}

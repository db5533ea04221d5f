import type { RateSystem, SparsePattern } from './contract.js';
import type { LinearSolver, LinearSolverFactory } from './contract.js';
import type { Floats, Room } from './room.js';
import { groupProducts, SumsOfProducts } from './sums-of-products.js';

/**
 * The matrix W = I/(hγ) − J of a rate system, with J = Sᵀ ∂r/∂y summed from the partials of the rates
 * straight into the places of the linear solver. The right side is never differenced.
 */
export interface StepMatrix {
  readonly solver: LinearSolver;
  /** Sums −J from the partials (aligned with `dependence`). */
  assemble(): void;
  /** Factorises W for hγ given, with the last −J. False when it cannot. */
  factor(hGamma: number): boolean;
}

/** What the matrix is made of, in a room: the values of the stoichiometry, and the partials of the rates. */
interface Made {
  readonly room: Room;
  readonly moved: Floats;
  readonly partials: Floats;
}

/** Finds the places of J once and makes the linear solver for them. */
export function stepMatrix(
  system: RateSystem,
  makeSolver: LinearSolverFactory,
  { room, moved, partials: dr }: Made,
): StepMatrix {
  const solver = makeSolver(jacobianPattern(system), room);
  const places: number[] = [];
  const coefficients: number[] = [];
  const partials: number[] = [];
  eachTerm(system, (row, column, partial, coefficient) => {
    places.push(solver.place(row, column));
    coefficients.push(coefficient);
    partials.push(partial);
  });
  const sums = groupProducts(places, coefficients, partials, solver.entries);
  const minusJ = room.floats(solver.entries);
  const jacobian = new SumsOfProducts(sums, 'negate').in(room)(moved, dr, minusJ);
  const diagonal = Int32Array.from({ length: system.states }, (_, i) => solver.place(i, i));
  return {
    solver,
    assemble() {
      jacobian.run();
    },
    factor(hGamma) {
      const { values } = solver;
      const inverse = 1 / hGamma;
      values.set(minusJ.array);
      for (let i = 0; i < diagonal.length; i++) values[diagonal[i]] += inverse;
      return solver.factor();
    },
  };
}

/** What the places of J follow from. */
type Structure = Pick<RateSystem, 'states' | 'rates' | 'stoichiometry' | 'dependence'>;

/** Places of J = Sᵀ ∂r/∂y, by rows, in the order in which its terms come. */
export function jacobianPattern(system: Structure): SparsePattern {
  const rows = Array.from({ length: system.states }, () => new Set<number>());
  eachTerm(system, (row, column) => rows[row].add(column));
  const start = new Int32Array(system.states + 1);
  rows.forEach((row, i) => (start[i + 1] = start[i] + row.size));
  return { start, column: Int32Array.from(rows.flatMap((row) => [...row])) };
}

/** Visits every term of J, a coefficient times a partial, by its row and column. */
export function eachTerm(
  system: Structure,
  /** Coefficient and partial by their indices in the values of stoichiometry and dependence. */
  visit: (row: number, column: number, partial: number, coefficient: number) => void,
): void {
  const { stoichiometry, dependence } = system;
  for (let k = 0; k < system.rates; k++) {
    for (let p = dependence.start[k]; p < dependence.start[k + 1]; p++) {
      for (let s = stoichiometry.start[k]; s < stoichiometry.start[k + 1]; s++) {
        if (stoichiometry.value[s] === 0) continue;
        visit(stoichiometry.column[s], dependence.column[p], p, s);
      }
    }
  }
}

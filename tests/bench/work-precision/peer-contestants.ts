import type { PeerRun, Workshop } from '../../numerics/peers/workshop.js';
import type { Contestant, Measurement } from './contestant.js';

const FINE = [1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9];
const COARSE = [1e-4, 1e-5, 1e-6, 1e-7];

/** The first of several runs warms up. */
function warm(tolerance: number, { milliseconds, days, work }: PeerRun): Measurement {
  return {
    tolerance,
    milliseconds: milliseconds.length > 1 ? milliseconds.slice(1) : milliseconds,
    days,
    work,
  };
}

/** SUNDIALS in C and SciPy with NumPy, each with all the ways it has to meet changes of forcing. */
export function peerContestants(workshop: Workshop): readonly Contestant[] {
  const sundials = (
    name: string,
    method: string,
    given: string,
    tolerances: readonly number[],
    repeats: number,
  ) =>
    ['restart', 'stop', 'across'].map((forcing): Contestant => ({
      name,
      forcing,
      given: `C, ${given}; states only`,
      tolerances,
      slow: false,
      measure: (tolerance) => warm(tolerance, workshop.sundials({ method, forcing, tolerance, repeats })),
    }));
  const scipy = (name: string, method: string, given: string) =>
    ['restart', 'across'].map((forcing): Contestant => ({
      name,
      forcing,
      given: `NumPy, analytic Jacobian, ${given}; states only`,
      tolerances: COARSE,
      slow: true,
      measure: (tolerance) => warm(tolerance, workshop.scipy({ method, forcing, tolerance, repeats: 1 })),
    }));
  return [
    ...sundials(
      'CVODE KLU',
      'cvode-klu',
      'BDF of order 1 to 5, analytic Jacobian, KLU ordered by AMD',
      FINE,
      5,
    ),
    ...sundials(
      'CVODE dense',
      'cvode-dense',
      'BDF of order 1 to 5, analytic Jacobian, dense LU',
      [...COARSE, 1e-8],
      2,
    ),
    ...sundials(
      'ARKODE KLU',
      'arkode-klu',
      'diagonally implicit Runge-Kutta of order 4, analytic Jacobian, KLU',
      [...COARSE, 1e-8],
      3,
    ),
    ...scipy('SciPy LSODA', 'lsoda', 'dense (scipy.integrate.ode)'),
    ...scipy('SciPy BDF', 'bdf', 'sparse (solve_ivp)'),
    ...scipy('SciPy Radau', 'radau', 'sparse (solve_ivp)'),
  ];
}

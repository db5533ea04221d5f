import type { PeerRun, Workshop } from '../../numerics/peers/workshop.js';
import type { Contestant, Measurement } from './contestant.js';
import { endedInTime, SCIPY_MOST } from './did-not-finish-error.js';
import { TOLERANCES } from './our-contestants.js';

const FINE = [1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9];
const COARSE = [1e-4, 1e-5, 1e-6, 1e-7];
/** Of those that take a minute for a year. */
const FEW = [1e-6];

/** The first of several runs warms up. */
function warm(tolerance: number, { milliseconds, days, work }: PeerRun): Measurement {
  return {
    tolerance,
    milliseconds: milliseconds.length > 1 ? milliseconds.slice(1) : milliseconds,
    days,
    work,
  };
}

/**
 * Leat's own method in C, SUNDIALS in C and SciPy with NumPy: CVODE with KLU, the fastest, with all the ways it has to meet changes of forcing, the
 * others with those that are exact. They take one round, or a run of them all would take most of an hour.
 */
export function peerContestants(workshop: Workshop): readonly Contestant[] {
  const sundials = (
    name: string,
    method: string,
    given: string,
    tolerances: readonly number[],
    repeats: number,
    slow = true,
    forcings = ['restart', 'stop'],
  ) =>
    forcings.map((forcing): Contestant => ({
      name,
      forcing,
      given: `C, ${given}; states only`,
      tolerances,
      slow,
      measure: (tolerance) => warm(tolerance, workshop.sundials({ method, forcing, tolerance, repeats })),
    }));
  const scipy = (name: string, method: string, given: string): Contestant => ({
    name,
    forcing: 'restart',
    given: `NumPy, analytic Jacobian, ${given}; states only`,
    tolerances: FEW,
    slow: true,
    measure: (tolerance) =>
      endedInTime(() =>
        warm(
          tolerance,
          workshop.scipy({ method, forcing: 'restart', tolerance, repeats: 1, most: SCIPY_MOST }),
        ),
      ),
  });
  return [
    {
      name: 'Leat in C',
      forcing: 'as it is run',
      given:
        "C, Leat's own method: loops and coefficients from its source, sparse LU and extents as there, plain laws in place of kernels",
      tolerances: TOLERANCES,
      slow: false,
      measure: (tolerance) => warm(tolerance, workshop.rodas({ tolerance, repeats: 4 })),
    },
    ...sundials(
      'CVODE KLU',
      'cvode-klu',
      'BDF of order 1 to 5, analytic Jacobian, KLU ordered by AMD',
      FINE,
      3,
      false,
      ['restart', 'stop', 'across'],
    ),
    ...sundials('CVODE dense', 'cvode-dense', 'BDF of order 1 to 5, analytic Jacobian, dense LU', COARSE, 1),
    ...sundials(
      'ARKODE KLU',
      'arkode-klu',
      'diagonally implicit Runge-Kutta of order 4, analytic Jacobian, KLU',
      COARSE,
      2,
    ),
    scipy('SciPy LSODA', 'lsoda', 'dense (scipy.integrate.ode)'),
    scipy('SciPy BDF', 'bdf', 'sparse (solve_ivp)'),
    scipy('SciPy Radau', 'radau', 'sparse (solve_ivp)'),
  ];
}

import { Solver } from 'odex';
import { absoluteTolerances } from '../../../packages/core/src/run/tolerances.js';
import { movesOf } from '../../numerics/peers/jacobian-terms.js';
import { jumped } from '../../numerics/peers/jump-maps.js';
import { replayYear, type Recording } from '../../numerics/peers/record-year.js';
import { DidNotFinishError, patience } from './did-not-finish-error.js';

/**
 * The recorded year by odex on the states alone, at the tolerance that it is given, begun again at each
 * segment with the step it had: what it can do without the extents and the caution that Leat adds.
 * Returns the state at the end of each day, and counts. Throws DidNotFinishError where odex gives up, or we do.
 */
export function odexStates(
  { model, segments }: Recording,
  tolerance: number,
): { readonly days: Float64Array; readonly work: { steps: number; evaluations: number } } {
  const states = model.layout.states.length;
  const solver = new Solver(states);
  solver.relativeTolerance = tolerance;
  solver.absoluteTolerance = [...absoluteTolerances(model, tolerance)];
  solver.maxSteps = 1_000_000;
  const y = segments[0].start.slice();
  const at = new Float64Array(states);
  const r = new Float64Array(model.rows.length);
  const moves = movesOf(model);
  const [start, rate] = [moves.start, moves.rate].map((list) => Int32Array.from(list));
  const coefficient = Float64Array.from(moves.coefficient);
  const work = { steps: 0, evaluations: 0 };
  const days: number[] = [];
  const ends = segments.map(({ end }) => end);
  let step = 1e-3;
  let next = 0;
  const inTime = patience();
  replayYear(model, ends, ({ system }) => {
    const { from, to, jump } = segments[next++];
    if (jump !== undefined) jumped(jump, y);
    solver.initialStepSize = Math.min(step, to - from);
    const { y: reached, outcome } = solver.solve(
      (t, z) => {
        at.set(z);
        system.evaluate(t, at, r);
        if (work.evaluations++ % 10_000 === 0) inTime(t);
        const slope = new Array<number>(states).fill(0);
        for (let i = 0; i < states; i++) {
          for (let e = start[i]; e < start[i + 1]; e++) slope[i] += coefficient[e] * r[rate[e]];
        }
        return slope;
      },
      from,
      [...y],
      to,
      (count, before, t) => {
        if (count > 1) work.steps++;
        if (count > 1 && t < to) step = t - before;
        return true;
      },
    );
    if (outcome !== 0) throw new DidNotFinishError(`stopped on the way to day ${String(to)}`);
    y.set(reached);
    if (Number.isInteger(to)) days.push(...y);
  });
  return { days: Float64Array.from(days), work };
}

/** What is used of odex 2.0.4, which ships no declarations. Plain arrays only: typed ones give NaN. */

/** 0 converged, 1 too many steps, 2 stopped by the callback. */
export type Outcome = 0 | 1 | 2;

export class Solver {
  constructor(size: number);
  maxSteps: number;
  initialStepSize: number;
  relativeTolerance: number;
  absoluteTolerance: number[];
  /** `accepted` is called at the start and after each step; false stops. */
  solve(
    derivative: (t: number, y: number[]) => number[],
    from: number,
    y: number[],
    to: number,
    accepted: (count: number, before: number, t: number, y: number[]) => boolean,
  ): { y: number[]; outcome: Outcome; nReject: number };
}

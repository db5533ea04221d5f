import type { OutputPlan, RateSystem, Tolerance, WorkCounts } from './contract.js';
import type { SumsOfProducts } from './sums-of-products.js';
import { errorNorm } from './step-control.js';

/** Largest weighted error, of the lower order, at which a stretch is passed: a tenth of what a step may have. */
const MOST_ERROR = 0.1;
type Weights = readonly [number, number, number];
/** What the three slopes, of 0, 1/2 and 3/4 of the stretch, weigh in the answer less the midpoint rule. */
const DIFFERENCE: Weights = [2 / 9, 1 / 3 - 1, 4 / 9];

/** What they weigh after a share of the stretch: the integral of the parabola through them; at 1 of order 3, else of order 2. */
const weightsAt = (s: number): Weights => [
  s * (1 - s * (5 / 3 - (8 / 9) * s)),
  s * s * (3 - (8 / 3) * s),
  s * s * ((16 / 9) * s - 4 / 3),
];
const WHOLE = weightsAt(1);

/**
 * Passes a stretch that is far shorter than a step in one explicit step, for want of a Jacobian and its factors: the third-order method
 * of Bogacki and Shampine, whose difference from the midpoint rule on the same slopes is the estimate. Extents and states move by the
 * same sums, so that every linear invariant of the stoichiometry survives. Source [R]: Bogacki & Shampine, Applied
 * Mathematics Letters 2 (1989) 321-325.
 */
export class ShortStretch {
  private readonly rates: readonly Float64Array[];
  private readonly slope: Float64Array;
  private readonly first: Float64Array;
  private readonly point: Float64Array;
  private readonly gain: Float64Array;

  /** @param moves from rates to states, by the stoichiometry of the system */
  constructor(
    private readonly system: RateSystem,
    private readonly tolerance: Tolerance,
    private readonly work: WorkCounts,
    private readonly moves: SumsOfProducts,
  ) {
    this.rates = WHOLE.map(() => new Float64Array(system.rates));
    this.slope = new Float64Array(system.states);
    this.first = new Float64Array(system.states);
    this.point = new Float64Array(system.states);
    this.gain = new Float64Array(system.rates);
  }

  /** Moves y and x from one time to another. False, with both as they were, where the error is not far below the tolerance. */
  pass(from: number, to: number, y: Float64Array, x: Float64Array, outputs?: OutputPlan): boolean {
    const { slope, first, point, gain, tolerance, work } = this;
    const h = to - from;
    this.slopeAt(from, y, 0);
    first.set(slope);
    for (let i = 0; i < y.length; i++) point[i] = y[i] + 0.5 * h * slope[i];
    this.slopeAt(from + 0.5 * h, point, 1);
    // What changes its slopes by more than they were, half a stretch on, would be carried past where it goes to and thrown about, though
    // by less than the tolerance; a step with a Jacobian brings it to rest.
    for (let i = 0; i < y.length; i++) point[i] = slope[i] - first[i];
    if (errorNorm(point, y, y, tolerance) > errorNorm(first, y, y, tolerance)) return false;
    for (let i = 0; i < y.length; i++) point[i] = y[i] + 0.75 * h * slope[i];
    this.slopeAt(from + 0.75 * h, point, 2);
    this.sum(DIFFERENCE, h);
    // A sum that is not a number is not below the bar either.
    if (!(errorNorm(slope, y, y, tolerance) <= MOST_ERROR)) return false;
    for (const time of outputs?.times ?? []) {
      this.sum(weightsAt((time - from) / h), h);
      for (let i = 0; i < y.length; i++) point[i] = y[i] + slope[i];
      for (let k = 0; k < x.length; k++) gain[k] += x[k];
      outputs?.take(time, point, gain);
    }
    this.sum(WHOLE, h);
    for (let i = 0; i < y.length; i++) y[i] += slope[i];
    for (let k = 0; k < x.length; k++) x[k] += gain[k];
    work.passed++;
    return true;
  }

  /** Rates of a stage and, in `slope`, what the states change by there. */
  private slopeAt(time: number, y: Float64Array, stage: number): void {
    const { system, rates, slope, moves, work } = this;
    system.evaluate(time, y, rates[stage]);
    work.evaluations++;
    moves.apply(system.stoichiometry.value, rates[stage], slope);
  }

  /** h times a weighted sum of the rates of all stages, in `gain`, and what it moves, in `slope`. */
  private sum([a, b, c]: Weights, h: number): void {
    const { system, rates, slope, gain, moves } = this;
    const [first, second, third] = rates;
    for (let k = 0; k < gain.length; k++) gain[k] = h * (a * first[k] + b * second[k] + c * third[k]);
    moves.apply(system.stoichiometry.value, gain, slope);
  }
}

import { noMemory, type Tolerance } from './contract.js';
import { squares } from './loops.js';

/** Aim below the tolerance, so that few steps are refused. */
const SAFETY = 0.9;
/** A step may shrink and grow by at most these factors. */
const MOST_SHRINK = 5;
const MOST_GROWTH = 6;
/** A step refused again shrinks at least by this factor: after a jump its error hardly falls with it. */
const AGAIN = 2;
/** After a failure without an error estimate (not finite, singular). */
const FAILURE_SHRINK = 4;
/** Errors below this are too good to predict from. */
const LEAST_ERROR = 1e-2;
/** The last step of a segment may be longer than the natural one by this factor. */
const LAST_SEGMENT = 1.05;

/** By roots, which are rounded alike on every engine: powers are not. */
const fourthRoot = (x: number): number => Math.sqrt(Math.sqrt(x));

/**
 * Step sizes by the predictive controller of Gustafsson for a method whose error estimate is of order 4
 * in h. Source [R]: Hairer & Wanner, Solving ODEs II, section IV.8; constants as there.
 * `natural` is the step that accuracy asks for; what is taken may be shorter to land on the end.
 */
export class StepControl {
  readonly memory = noMemory();
  /** The step to try after one refused. */
  retry = 0;
  private lastStep = 0;
  private lastError = 0;
  private refused = false;
  private opens = true;

  get natural(): number | undefined {
    return this.memory.natural;
  }

  set natural(step: number | undefined) {
    this.memory.natural = step;
  }

  /** Forgets all steps: what follows has nothing to do with what went before. */
  restart(natural: number | undefined): void {
    this.natural = natural;
    this.memory.opening = Infinity;
  }

  /**
   * Starts a segment: the error history does not go on (something may have jumped), the natural step does, but
   * where one segment is like the other, as days are, it begins as the last one did and not as it ended.
   */
  beginSegment(): void {
    this.lastStep = 0;
    this.refused = false;
    this.opens = true;
    if (this.natural !== undefined) this.natural = Math.min(this.natural, this.memory.opening);
  }

  /** The step to take now: the natural one, or what reaches the end without leaving a sliver. */
  fit(remaining: number, natural: number): number {
    if (remaining <= natural * LAST_SEGMENT) return remaining;
    return remaining < natural * 2 ? remaining / 2 : natural;
  }

  /** Takes note of an accepted step. One cut short by the end never shrinks the natural step. */
  accept(step: number, error: number): void {
    let factor = fourthRoot(error) / SAFETY;
    if (this.lastStep > 0) {
      const trend = ((this.lastStep / step) * fourthRoot((error * error) / this.lastError)) / SAFETY;
      factor = Math.max(factor, trend);
    }
    let next = step / Math.min(MOST_SHRINK, Math.max(1 / MOST_GROWTH, factor));
    if (this.opens) this.learnOpening(step, next);
    if (this.refused) next = Math.min(next, step);
    else if (this.natural !== undefined && step < this.natural) next = Math.max(next, this.natural);
    this.natural = next;
    this.lastStep = step;
    this.lastError = Math.max(LEAST_ERROR, error);
    this.refused = false;
  }

  /** Two beginnings in a row at which the natural step was refused are a habit; a longer step ends it. */
  private learnOpening(step: number, next: number): void {
    const cutShort = !this.refused && this.natural !== undefined && step < this.natural;
    const habit = this.memory.opening < Infinity || (this.refused && this.memory.refusedBefore);
    if (habit) this.memory.opening = cutShort ? Math.max(next, this.memory.opening) : next;
    this.memory.refusedBefore = this.refused;
    this.opens = false;
  }

  /** Takes note of a step refused for its error, above 1. */
  reject(step: number, error: number): void {
    const factor = Math.max(this.refused ? AGAIN : 1 / SAFETY, fourthRoot(error) / SAFETY);
    this.shrink(step / Math.min(MOST_SHRINK, factor));
  }

  /** Takes note of a step that failed without an error estimate. */
  fail(step: number): void {
    this.shrink(step / FAILURE_SHRINK);
  }

  private shrink(step: number): void {
    this.natural = step;
    this.retry = step;
    this.refused = true;
  }
}

/** Throws RangeError unless every tolerance is a finite number above 0 and there is one for each state. */
export function checkTolerance(tolerance: Tolerance, states: number): void {
  const { relative, absolute } = tolerance;
  const check = (value: number, what: string): void => {
    if (!(value > 0 && value < Infinity))
      throw new RangeError(`${what} tolerance must be above 0, got ${String(value)}`);
  };
  check(relative, 'relative');
  absolute.forEach((value) => {
    check(value, 'absolute');
  });
  if (absolute.length !== states)
    throw new RangeError(`${String(states)} absolute tolerances expected, got ${String(absolute.length)}`);
}

/**
 * Root mean square of v weighted by absolute + relative · max(|y|, |other|) of each state: 1 is exactly at
 * the tolerance. Source [R]: Hairer, Norsett & Wanner, Solving ODEs I, section II.4.
 */
export function errorNorm(
  v: Float64Array,
  y: Float64Array,
  other: Float64Array,
  tolerance: Tolerance,
): number {
  const { relative, absolute } = tolerance;
  return meanRoot(squares(v, y, other, absolute, v.length, relative), v.length);
}

/** Root of the mean of so many squares, of their sum. */
export function meanRoot(sum: number, size: number): number {
  return size === 0 ? 0 : Math.sqrt(sum / size);
}

/** Index of the state with the largest weighted entry of v, the first not a number before all; -1 if none. */
export function worstState(v: Float64Array, y: Float64Array, tolerance: Tolerance): number {
  let worst = -1;
  let largest = -1;
  for (let i = 0; i < v.length; i++) {
    const weighted = Math.abs(v[i]) / (tolerance.absolute[i] + tolerance.relative * Math.abs(y[i]));
    if (!Number.isFinite(weighted)) return i;
    if (weighted > largest) {
      largest = weighted;
      worst = i;
    }
  }
  return worst;
}

/** Weighted error at which the first step aims; small, because it is a guess. */
const AIM = 0.01;

/**
 * First step from y, y' and y'': with the time scale τ = |y'|/|y''| the error of an order-4 estimate is
 * taken as |y'| τ (h/τ)⁴ in the weighted norm and set to 0.01; a step may not change y by more than its own
 * size unless y is within tolerance of 0. After the starting rule of Hairer, Norsett & Wanner, Solving
 * ODEs I, section II.4 [R], with τ in place of a unit of time.
 */
export function firstStep(
  y: Float64Array,
  slope: Float64Array,
  bend: Float64Array,
  tolerance: Tolerance,
  span: number,
): number {
  const size = errorNorm(y, y, y, tolerance);
  const speed = errorNorm(slope, y, y, tolerance);
  const turn = errorNorm(bend, y, y, tolerance);
  let step = span;
  if (turn > 0) {
    const scale = speed / turn;
    step = speed > 0 ? scale * fourthRoot(AIM / (speed * scale)) : Math.sqrt((2 * AIM) / turn);
  }
  if (size > 1 && speed > 0) step = Math.min(step, size / speed);
  return Math.min(step, span);
}

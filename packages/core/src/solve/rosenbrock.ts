import type {
  Ending,
  Integrator,
  IntegratorFactory,
  OutputPlan,
  RateSystem,
  StepMemory,
  Tolerance,
} from './contract.js';
import { noWork } from './contract.js';
import { checkTolerance, meanRoot, worstState } from './step-control.js';
import { firstStep } from './step-control.js';
import type { LinearSolverFactory } from './contract.js';
import { RodasStep } from './rodas-step.js';
import { type Bound, type LoopsBy, Room } from './room.js';
import { STAGES } from './rodas-tableau.js';
import { ShortStretch } from './short-stretch.js';
import { sparseLu } from './sparse-lu.js';
import { stoichiometryProduct } from './sparse-rows.js';
import { StepControl } from './step-control.js';

const MAX_STEPS = 100_000;
/** Steps shorter than this share of the time reached, or of the segment, are too small. */
const LEAST_OF_TIME = 16 * Number.EPSILON;
const LEAST_OF_SEGMENT = Number.EPSILON * Number.EPSILON;
/** A segment of at most this share of the natural step may be passed without a Jacobian. */
const SHORT = 0.5;

type Options = Parameters<IntegratorFactory>[2];
type Failure = 'step-too-small' | 'not-finite' | 'singular';

class Rosenbrock implements Integrator {
  readonly name = 'rosenbrock';
  readonly work = noWork();
  private readonly step: RodasStep;
  private readonly short: ShortStretch;
  private readonly squares: Bound<number>;
  readonly memory: StepMemory;
  private readonly control = new StepControl();
  private readonly gain: Float64Array;
  private readonly sampleY: Float64Array;
  private readonly sampleX: Float64Array;

  constructor(
    system: RateSystem,
    private readonly tolerance: Tolerance,
    private readonly options: Options,
    makeSolver: LinearSolverFactory,
    loopsBy: LoopsBy,
  ) {
    checkTolerance(tolerance, system.states);
    this.memory = this.control.memory;
    const { states } = system;
    const room = new Room(loopsBy);
    this.step = new RodasStep(system, this.work, makeSolver, room);
    const { stage, y, next } = this.step.arrays;
    const absolute = room.floats(tolerance.absolute);
    this.squares = room.bind('squares', stage[STAGES - 1], y, next, absolute, states, tolerance.relative);
    const moves = stoichiometryProduct(system.stoichiometry, states);
    this.short = new ShortStretch(system, tolerance, this.work, moves);
    this.gain = new Float64Array(system.rates);
    this.sampleY = new Float64Array(system.states);
    this.sampleX = new Float64Array(system.rates);
    this.restart();
  }

  restart(): void {
    this.control.restart(this.options?.firstStep);
  }

  advance(from: number, to: number, y: Float64Array, x: Float64Array, outputs?: OutputPlan): Ending {
    if (!(to >= from)) throw new RangeError(`cannot go from ${String(from)} to ${String(to)}`);
    const { step, control, work } = this;
    // What is passed is too short to tell anything of the steps to come: their history goes on.
    if (this.isShort(to - from) && this.short.pass(from, to, y, x, outputs)) return { kind: 'done' };
    const maxSteps = this.options?.maxSteps ?? MAX_STEPS;
    control.beginSegment();
    let time = from;
    let tries = 0;
    let sampled = 0;
    while (time < to) {
      if (!step.begin(time, y)) return { kind: 'not-finite', time, worst: step.failed };
      const least = Math.max(LEAST_OF_TIME * Math.abs(time), LEAST_OF_SEGMENT * (to - from));
      for (;;) {
        if (tries++ >= maxSteps) return { kind: 'too-many-steps', time, worst: this.limiting(y) };
        const remaining = to - time;
        const h = control.fit(remaining, control.natural ?? this.guess(y, remaining));
        const failure = this.try(h);
        if (failure === undefined) {
          const reached = h === remaining ? to : time + h;
          if (outputs !== undefined) sampled = this.sample(outputs, sampled, time, reached, x);
          y.set(step.next);
          for (let k = 0; k < x.length; k++) x[k] += this.gain[k];
          time = reached;
          work.steps++;
          break;
        }
        work.rejected++;
        if (!(control.retry > least)) {
          const worst = failure === 'step-too-small' ? this.limiting(y) : step.failed;
          return { kind: failure, time, worst };
        }
      }
    }
    return { kind: 'done' };
  }

  /** Whether a segment is shorter than a step by far. */
  private isShort(span: number): boolean {
    const { natural = 0 } = this.control;
    return span > 0 && span <= SHORT * natural;
  }

  /** Tries one step and tells the step control; undefined when it is accepted. */
  private try(h: number): Failure | undefined {
    const { step, control } = this;
    const attempt = step.attempt(h);
    const outcome = attempt === 'computed' && !step.extents(1, this.gain) ? 'not-finite' : attempt;
    const error = outcome === 'computed' ? meanRoot(this.squares.run(), this.sampleY.length) : NaN;
    if (outcome === 'computed' && error <= 1) {
      control.accept(h, error);
      return undefined;
    }
    if (outcome === 'computed' && error < Infinity) {
      control.reject(h, error);
      return 'step-too-small';
    }
    control.fail(h);
    return outcome === 'computed' ? 'step-too-small' : outcome;
  }

  private guess(y: Float64Array, span: number): number {
    const slope = this.sampleY;
    const bend = new Float64Array(y.length);
    this.step.derivatives(slope, bend);
    const guess = firstStep(y, slope, bend, this.tolerance, span);
    this.control.natural = guess;
    return guess;
  }

  /** Delivers the samples in (time, reached]; returns how many are delivered in all. */
  private sample(outputs: OutputPlan, from: number, time: number, reached: number, x: Float64Array): number {
    const { times } = outputs;
    let next = from;
    for (; next < times.length && times[next] <= reached; next++) {
      const share = (times[next] - time) / (reached - time);
      this.step.solution(share, this.sampleY);
      this.step.extents(share, this.sampleX);
      for (let k = 0; k < x.length; k++) this.sampleX[k] += x[k];
      outputs.take(times[next], this.sampleY, this.sampleX);
    }
    return next;
  }

  private limiting(y: Float64Array): number {
    return worstState(this.step.error, y, this.tolerance);
  }
}

/** As `rosenbrock`, with the linear solver, and who runs its loops, chosen by the caller. */
export function rosenbrockWith(
  makeSolver: LinearSolverFactory,
  loopsBy: LoopsBy = 'module',
): IntegratorFactory {
  return (system, tolerance, options) => new Rosenbrock(system, tolerance, options, makeSolver, loopsBy);
}

/**
 * The stiff integrator: RODAS of order 4(3) with exact Jacobian, error control by step size, and dense
 * output of order 3. `maxSteps` bounds the tries in one segment (100,000 unless said otherwise).
 */
export const rosenbrock: IntegratorFactory = /* @__PURE__ */ rosenbrockWith(sparseLu);

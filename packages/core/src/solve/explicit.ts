import { Solver } from 'odex';
import type { Ending, Integrator, IntegratorFactory, RateSystem, OutputPlan, Tolerance } from './contract.js';
import { noMemory, noWork } from './contract.js';
import { checkTolerance, worstState } from './step-control.js';
import { stoichiometryProduct } from './sparse-rows.js';
import type { SumsOfProducts } from './sums-of-products.js';

const MAX_STEPS = 1_000_000;
/** A step shorter than this share of the time reached makes no headway. */
const LEAST_OF_TIME = 16 * Number.EPSILON;
/** Nor is a piece shorter than this share of its segment tried. */
const LEAST_OF_SEGMENT = Number.EPSILON * Number.EPSILON;
/** After a value that is not finite the next goal is nearer by this factor, and then further again. */
const NEARER = 8;
const FURTHER = 4;

/** Thrown through odex, which would take NaN for convergence. */
class NotFinite extends Error {
  constructor(readonly state: number) {
    super('not finite');
  }
}

/**
 * Share of the tolerance that odex is asked for. On a stiff system its steps are held at the edge of
 * stability, where the fast states ring by hundreds of tolerances while the mean over all entries, which
 * is what odex controls, stays below one. Asking for more costs next to nothing there.
 */
const REFINEMENT = 0.001;

type Piece = 'reached' | 'not-finite' | 'step-too-small' | 'too-many-steps';

class Explicit implements Integrator {
  readonly name = 'odex';
  readonly work = noWork();
  /** Of which only the natural step is used. */
  readonly memory = noMemory();
  private readonly solver: Solver;
  private readonly y: Float64Array;
  private readonly rates: Float64Array;
  private readonly slope: Float64Array;
  private readonly derivative: number[];
  private readonly moves: SumsOfProducts;
  private time = 0;
  private values: number[] = [];
  private stepsLeft = 0;
  private failed = -1;

  constructor(
    private readonly system: RateSystem,
    private readonly tolerance: Tolerance,
    private readonly options: Parameters<IntegratorFactory>[2],
  ) {
    checkTolerance(tolerance, system.states);
    const size = system.states + system.rates;
    this.solver = new Solver(size);
    const absolute = [...tolerance.absolute, ...extentTolerance(system, tolerance)];
    this.solver.relativeTolerance = tolerance.relative * REFINEMENT;
    this.solver.absoluteTolerance = absolute.map((value) => value * REFINEMENT);
    this.y = new Float64Array(system.states);
    this.rates = new Float64Array(system.rates);
    this.slope = new Float64Array(system.states);
    this.derivative = new Array<number>(size).fill(0);
    this.moves = stoichiometryProduct(system.stoichiometry, system.states);
    this.restart();
  }

  restart(): void {
    this.memory.natural = this.options?.firstStep;
  }

  advance(from: number, to: number, y: Float64Array, x: Float64Array, outputs?: OutputPlan): Ending {
    if (!(to >= from)) throw new RangeError(`cannot go from ${String(from)} to ${String(to)}`);
    this.time = from;
    this.values = [...y, ...x];
    this.stepsLeft = this.options?.maxSteps ?? MAX_STEPS;
    for (const goal of [...(outputs?.times ?? []), to]) {
      const piece = this.reach(goal);
      y.set(this.values.slice(0, y.length));
      x.set(this.values.slice(y.length));
      if (piece !== 'reached') {
        return {
          kind: piece,
          time: this.time,
          worst: piece === 'not-finite' ? this.failed : this.fastest(y),
        };
      }
      if (goal < to) outputs?.take(goal, y.slice(), x.slice());
    }
    return { kind: 'done' };
  }

  /** Goes to a goal, in shorter pieces after a value that is not finite. */
  private reach(goal: number): Piece {
    const segment = goal - this.time;
    let span = segment;
    let refused = false;
    while (this.time < goal) {
      const end = this.time + span >= goal ? goal : this.time + Math.min(span, (goal - this.time) / 2);
      const piece = this.piece(end);
      if (piece === 'reached') {
        span *= FURTHER;
        continue;
      }
      // Too small a step in what is left before a value that is not finite: it is that value that ends the run.
      const left = end - this.time;
      if (piece === 'step-too-small' && refused && left < LEAST_OF_TIME * Math.abs(this.time))
        return 'not-finite';
      if (piece !== 'not-finite') return piece;
      refused = true;
      span = (end - this.time) / NEARER;
      if (span < LEAST_OF_TIME * Math.abs(this.time) || span < LEAST_OF_SEGMENT * segment) return piece;
    }
    return 'reached';
  }

  /** One call of odex; `time` and `values` follow each step it accepts. */
  private piece(end: number): Piece {
    const { solver, work } = this;
    solver.initialStepSize = this.memory.natural ?? end - this.time;
    solver.maxSteps = this.stepsLeft;
    if (this.stepsLeft <= 0) return 'too-many-steps';
    try {
      const result = solver.solve(
        (t, z) => this.evaluate(t, z),
        this.time,
        this.values,
        end,
        (count, before, t, z) => this.accept(count, before, t, z, end),
      );
      work.rejected += result.nReject;
      this.stepsLeft -= result.nReject;
      if (result.outcome === 1) return 'too-many-steps';
      if (result.outcome === 2) return 'step-too-small';
    } catch (error) {
      if (!(error instanceof NotFinite)) throw error;
      this.failed = error.state;
      work.rejected++;
      this.stepsLeft--;
      return 'not-finite';
    }
    this.time = end;
    return 'reached';
  }

  private accept(count: number, before: number, t: number, z: number[], end: number): boolean {
    if (count === 1) return true;
    this.time = t;
    this.values = z;
    this.work.steps++;
    this.stepsLeft--;
    const step = t - before;
    if (t < end || this.memory.natural === undefined) this.memory.natural = step;
    return t >= end || step > LEAST_OF_TIME * Math.abs(t);
  }

  private evaluate(t: number, z: number[]): number[] {
    const { system, y, rates, slope, derivative } = this;
    for (let i = 0; i < y.length; i++) y[i] = z[i];
    refuse(y);
    system.evaluate(t, y, rates);
    this.work.evaluations++;
    this.moves.apply(system.stoichiometry.value, rates, slope);
    refuse(slope);
    for (let i = 0; i < slope.length; i++) derivative[i] = slope[i];
    for (let k = 0; k < rates.length; k++) {
      if (!Number.isFinite(rates[k])) throw new NotFinite(-1);
      derivative[slope.length + k] = rates[k];
    }
    return derivative;
  }

  /** The state that moves most, measured by its tolerance: an explicit method cannot tell more. */
  private fastest(y: Float64Array): number {
    this.system.evaluate(this.time, y, this.rates);
    this.moves.apply(this.system.stoichiometry.value, this.rates, this.slope);
    return worstState(this.slope, y, this.tolerance);
  }
}

function refuse(v: Float64Array): void {
  for (let i = 0; i < v.length; i++) if (!Number.isFinite(v[i])) throw new NotFinite(i);
}

/** An extent is wanted as exactly as the most exacting state that it moves. */
function extentTolerance(system: RateSystem, tolerance: Tolerance): number[] {
  const { start, column, value } = system.stoichiometry;
  const least = Math.min(...tolerance.absolute);
  return Array.from({ length: system.rates }, (_, k) => {
    let wanted = Infinity;
    for (let p = start[k]; p < start[k + 1]; p++) {
      wanted = Math.min(wanted, tolerance.absolute[column[p]] / Math.abs(value[p]));
    }
    return wanted < Infinity ? wanted : least;
  });
}

/**
 * The explicit integrator, a second one that shares nothing with `rosenbrock`: extrapolation of the
 * explicit midpoint rule (odex) on states and extents together. It stops at every wanted time instead of
 * interpolating. `maxSteps` bounds the tries in one segment (1,000,000 unless said otherwise).
 */
export const explicit: IntegratorFactory = (system, tolerance, options) =>
  new Explicit(system, tolerance, options);

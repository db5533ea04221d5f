import type { LinearSolverFactory, RateSystem, WorkCounts } from './contract.js';
import { stepMatrix, type StepMatrix } from './jacobian.js';
import { ALPHA, C, GAMMA, rightSideWeights, solutionWeights, STAGES, TIME_SHARE } from './rodas-tableau.js';
import { Room } from './room.js';
import { stepArrays, stepLoops, type StepArrays, type StepLoops } from './rodas-arrays.js';

/** What became of one try at a step. */
export type Attempt = 'computed' | 'not-finite' | 'singular';

/**
 * One step of RODAS on y' = Sᵀ r with the extents x' = r as a quadrature on the same stages. The extents
 * have no column in the Jacobian, so their stages are Vᵢ = hγ(rᵢ + R Uᵢ + dᵢ h ∂r/∂t + Σ cᵢⱼVⱼ/h) with
 * R = ∂r/∂y, and Sᵀ Vᵢ = Uᵢ; weighted sums of them are taken at once from the rates of the stages.
 */
export class RodasStep {
  /** First state found not finite, or whose pivot failed, in the last failure. */
  failed = -1;
  private readonly matrix: StepMatrix;
  readonly arrays: StepArrays;
  private readonly loops: StepLoops;
  private t = 0;
  private h = 0;

  constructor(
    private readonly system: RateSystem,
    private readonly work: WorkCounts,
    makeSolver: LinearSolverFactory,
    room = new Room(),
  ) {
    this.arrays = stepArrays(system, room);
    const { moved, partials } = this.arrays;
    this.matrix = stepMatrix(system, makeSolver, { room, moved, partials });
    this.loops = stepLoops(system, room, this.arrays);
  }

  /** The solution at the end of the step tried last. */
  get next(): Float64Array {
    return this.arrays.next.array;
  }

  /** Its error estimate. */
  get error(): Float64Array {
    return this.arrays.stage[STAGES - 1].array;
  }

  /** Takes rates and Jacobian at (t, y); every try from there uses them. False when not finite. */
  begin(t: number, start: Float64Array): boolean {
    const { system, work, arrays, loops } = this;
    const y = arrays.y.array;
    const rates = arrays.rates[0].array;
    const partials = arrays.partials.array;
    const ratesByTime = arrays.ratesByTime.array;
    this.t = t;
    y.set(start);
    work.evaluations++;
    if (system.linearise) system.linearise(t, y, rates, partials, ratesByTime);
    else system.evaluate(t, y, rates);
    if (loops.ratesFinite.run() === 0) return this.blame(rates);
    work.jacobians++;
    if (!system.linearise) system.differentiate(t, y, partials, ratesByTime);
    if (loops.partialsFinite.run() === 0 || loops.driftFinite.run() === 0) return this.blameDerivatives();
    loops.firstSlope.run();
    loops.slopeByTime.run();
    this.matrix.assemble();
    return true;
  }

  /** Fills `slope` with y' and `bend` with y'' = J y' + ∂f/∂t at the beginning. */
  derivatives(slope: Float64Array, bend: Float64Array): void {
    const { arrays, loops } = this;
    slope.set(arrays.firstSlope.array);
    arrays.point.array.set(slope);
    arrays.gain.array.set(arrays.ratesByTime.array);
    loops.spread.run();
    loops.gainSlope.run();
    bend.set(arrays.slope.array);
  }

  /** Tries a step of length h; on 'computed', `next` and `error` hold its outcome. */
  attempt(h: number): Attempt {
    const { system, work, matrix, arrays, loops } = this;
    const point = arrays.point.array;
    const weights = arrays.weights.array;
    this.h = h;
    work.factorisations++;
    if (!matrix.factor(h * GAMMA)) {
      this.failed = matrix.solver.failedRow;
      return 'singular';
    }
    for (let s = 0; s < STAGES; s++) {
      const stage = loops.stages[s];
      if (s > 0) {
        stage.point.run();
        system.evaluate(this.t + ALPHA[s] * h, point, arrays.rates[s].array);
        work.evaluations++;
        stage.slope.run();
      }
      for (let j = 0; j < s; j++) weights[j] = C[s][j] / h;
      stage.right.run();
      if (TIME_SHARE[s] !== 0) {
        arrays.share.array[0] = TIME_SHARE[s] * h;
        stage.drift.run();
      }
      const u = arrays.stage[s].array;
      matrix.solver.solve(u);
      work.solves++;
      if (stage.finite.run() === 0) {
        this.failed = firstNotFinite((s === 0 ? arrays.firstSlope : arrays.slope).array);
        if (this.failed < 0) this.failed = firstNotFinite(u);
        return 'not-finite';
      }
    }
    loops.next.run();
    return 'computed';
  }

  /** Fills `out` with y at the share s of the step tried last. */
  solution(s: number, out: Float64Array): void {
    const { arrays, loops } = this;
    solutionWeights(s, arrays.weights.array);
    loops.solution.run();
    out.set(arrays.slope.array);
  }

  /** Fills `out` with what the extents gain over the share s of the step. False when not finite. */
  extents(s: number, out: Float64Array): boolean {
    const { arrays, loops, h } = this;
    const weights = arrays.weights.array;
    const rateWeights = arrays.rateWeights.array;
    solutionWeights(s, weights);
    rightSideWeights(weights, rateWeights);
    let timeShare = 0;
    for (let i = 0; i < STAGES; i++) {
      rateWeights[i] *= h * GAMMA;
      timeShare += rateWeights[i] * TIME_SHARE[i];
    }
    arrays.share.array[0] = timeShare * h;
    arrays.gain.array.fill(0);
    loops.gainDrift.run();
    loops.gainRates.run();
    arrays.point.array.fill(0);
    loops.gainStages.run();
    loops.spread.run();
    out.set(arrays.gain.array);
    return loops.gainFinite.run() === 1 || this.blame(out);
  }

  private blame(rates: Float64Array): false {
    const { start, column } = this.system.stoichiometry;
    const rate = firstNotFinite(rates);
    this.failed = rate >= 0 && start[rate] < start[rate + 1] ? column[start[rate]] : -1;
    return false;
  }

  private blameDerivatives(): false {
    const { start } = this.system.dependence;
    const partials = this.arrays.partials.array;
    const rates = Float64Array.from(this.arrays.ratesByTime.array);
    for (let k = 0; k < rates.length; k++) {
      for (let p = start[k]; p < start[k + 1]; p++) if (!Number.isFinite(partials[p])) rates[k] = NaN;
    }
    return this.blame(rates);
  }
}

/** Index of the first entry that is not a finite number, or -1. */
export function firstNotFinite(v: Float64Array): number {
  return v.findIndex((value) => !Number.isFinite(value));
}

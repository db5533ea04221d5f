import type { LinearSolverFactory, RateSystem, WorkCounts } from './contract.js';
import { stepMatrix, type StepMatrix } from './jacobian.js';
import {
  A,
  ALPHA,
  C,
  GAMMA,
  GROWS_FROM,
  rightSideWeights,
  solutionWeights,
  STAGES,
  TIME_SHARE,
} from './rodas-tableau.js';
import { addedProduct, stoichiometryProduct } from './sparse-rows.js';
import type { SumsOfProducts } from './sums-of-products.js';

/** What became of one try at a step. */
export type Attempt = 'computed' | 'not-finite' | 'singular';

/**
 * One step of RODAS on y' = Sᵀ r with the extents x' = r as a quadrature on the same stages. The extents
 * have no column in the Jacobian, so their stages are Vᵢ = hγ(rᵢ + R Uᵢ + dᵢ h ∂r/∂t + Σ cᵢⱼVⱼ/h) with
 * R = ∂r/∂y, and Sᵀ Vᵢ = Uᵢ; weighted sums of them are taken at once from the rates of the stages.
 */
export class RodasStep {
  /** The solution at the end of the step tried last. */
  readonly next: Float64Array;
  /** Its error estimate. */
  readonly error: Float64Array;
  /** First state found not finite, or whose pivot failed, in the last failure. */
  failed = -1;
  private readonly matrix: StepMatrix;
  /** From rates to states, and from states to rates by the partials. */
  readonly moves: SumsOfProducts;
  private readonly spread: SumsOfProducts;
  private readonly partials: Float64Array;
  private readonly ratesByTime: Float64Array;
  private readonly slopeByTime: Float64Array;
  private readonly stageRates: readonly Float64Array[];
  private readonly stages: readonly Float64Array[];
  private readonly point: Float64Array;
  private readonly slope: Float64Array;
  private readonly firstSlope: Float64Array;
  private readonly weights = new Float64Array(STAGES);
  private readonly rateWeights = new Float64Array(STAGES);
  private t = 0;
  private h = 0;
  private y: Float64Array;

  constructor(
    private readonly system: RateSystem,
    private readonly work: WorkCounts,
    makeSolver: LinearSolverFactory,
  ) {
    const { states, rates } = system;
    this.matrix = stepMatrix(system, makeSolver);
    this.moves = stoichiometryProduct(system.stoichiometry, states);
    this.spread = addedProduct(system.dependence);
    this.partials = new Float64Array(system.dependence.column.length);
    this.ratesByTime = new Float64Array(rates);
    this.slopeByTime = new Float64Array(states);
    this.stageRates = Array.from({ length: STAGES }, () => new Float64Array(rates));
    this.stages = Array.from({ length: STAGES }, () => new Float64Array(states));
    this.error = this.stages[STAGES - 1];
    this.next = new Float64Array(states);
    this.point = new Float64Array(states);
    this.slope = new Float64Array(states);
    this.firstSlope = new Float64Array(states);
    this.y = new Float64Array(states);
  }

  /** Takes rates and Jacobian at (t, y); every try from there uses them. False when not finite. */
  begin(t: number, y: Float64Array): boolean {
    const { system, work, stageRates, partials, ratesByTime } = this;
    this.t = t;
    this.y = y;
    const rates = stageRates[0];
    work.evaluations++;
    if (system.linearise) system.linearise(t, y, rates, partials, ratesByTime);
    else system.evaluate(t, y, rates);
    if (!allFinite(rates)) return this.blame(rates);
    work.jacobians++;
    if (!system.linearise) system.differentiate(t, y, partials, ratesByTime);
    if (!allFinite(partials) || !allFinite(ratesByTime)) return this.blameDerivatives();
    this.moves.apply(system.stoichiometry.value, rates, this.firstSlope);
    this.moves.apply(system.stoichiometry.value, ratesByTime, this.slopeByTime);
    this.matrix.assemble(partials);
    return true;
  }

  /** Fills `slope` with y' and `bend` with y'' = J y' + ∂f/∂t at the beginning. */
  derivatives(slope: Float64Array, bend: Float64Array): void {
    const { system } = this;
    slope.set(this.firstSlope);
    const rates = Float64Array.from(this.ratesByTime);
    this.spread.apply(this.partials, slope, rates);
    this.moves.apply(system.stoichiometry.value, rates, bend);
  }

  /** Tries a step of length h; on 'computed', `next` and `error` hold its outcome. */
  attempt(h: number): Attempt {
    const { system, work, matrix, stages, stageRates, point, y } = this;
    this.h = h;
    work.factorisations++;
    if (!matrix.factor(h * GAMMA)) {
      this.failed = matrix.solver.failedRow;
      return 'singular';
    }
    for (let s = 0; s < STAGES; s++) {
      let slope = this.firstSlope;
      if (s > 0) {
        if (s < GROWS_FROM) combine(y, A[s], stages, s, point);
        else add(stages[s - 1], point);
        system.evaluate(this.t + ALPHA[s] * h, point, stageRates[s]);
        work.evaluations++;
        slope = this.slope;
        this.moves.apply(system.stoichiometry.value, stageRates[s], slope);
      }
      const u = stages[s];
      for (let j = 0; j < s; j++) this.weights[j] = C[s][j] / h;
      combine(slope, this.weights, stages, s, u);
      if (TIME_SHARE[s] !== 0) addScaled(TIME_SHARE[s] * h, this.slopeByTime, u);
      matrix.solver.solve(u);
      work.solves++;
      if (!allFinite(u)) {
        this.failed = firstNotFinite(slope);
        if (this.failed < 0) this.failed = firstNotFinite(u);
        return 'not-finite';
      }
    }
    this.next.set(point);
    add(this.error, this.next);
    return 'computed';
  }

  /** Fills `out` with y at the share s of the step tried last. */
  solution(s: number, out: Float64Array): void {
    solutionWeights(s, this.weights);
    combine(this.y, this.weights, this.stages, STAGES, out);
  }

  /** Fills `out` with what the extents gain over the share s of the step. False when not finite. */
  extents(s: number, out: Float64Array): boolean {
    const { weights, rateWeights, point, h } = this;
    solutionWeights(s, weights);
    rightSideWeights(weights, rateWeights);
    let timeShare = 0;
    for (let i = 0; i < STAGES; i++) {
      rateWeights[i] *= h * GAMMA;
      timeShare += rateWeights[i] * TIME_SHARE[i];
    }
    for (let k = 0; k < out.length; k++) out[k] = timeShare * h * this.ratesByTime[k];
    combine(out, rateWeights, this.stageRates, STAGES, out);
    point.fill(0);
    combine(point, rateWeights, this.stages, STAGES, point);
    this.spread.apply(this.partials, point, out);
    return allFinite(out) || this.blame(out);
  }

  private blame(rates: Float64Array): false {
    const { start, column } = this.system.stoichiometry;
    const rate = firstNotFinite(rates);
    this.failed = rate >= 0 && start[rate] < start[rate + 1] ? column[start[rate]] : -1;
    return false;
  }

  private blameDerivatives(): false {
    const { start } = this.system.dependence;
    const rates = Float64Array.from(this.ratesByTime);
    for (let k = 0; k < rates.length; k++) {
      for (let p = start[k]; p < start[k + 1]; p++) if (!Number.isFinite(this.partials[p])) rates[k] = NaN;
    }
    return this.blame(rates);
  }
}

function add(v: Float64Array, out: Float64Array): void {
  const size = out.length;
  for (let i = 0; i < size; i++) out[i] += v[i];
}

function addScaled(factor: number, v: Float64Array, out: Float64Array): void {
  const size = out.length;
  for (let i = 0; i < size; i++) out[i] += factor * v[i];
}

/**
 * out = base + w0 v0 + w1 v1 + ... for the first `count` vectors, in one pass over memory. The inner loops
 * are written out for each count: this is where an integrator spends most of its own time.
 */
function combine(
  base: Float64Array,
  w: ArrayLike<number>,
  v: readonly Float64Array[],
  count: number,
  out: Float64Array,
): void {
  const size = out.length;
  const [w0, w1, w2, w3, w4, w5] = [w[0], w[1], w[2], w[3], w[4], w[5]];
  const [v0, v1, v2, v3, v4, v5] = [v[0], v[1], v[2], v[3], v[4], v[5]];
  switch (count) {
    case 0:
      out.set(base);
      return;
    case 1:
      for (let i = 0; i < size; i++) out[i] = base[i] + w0 * v0[i];
      return;
    case 2:
      for (let i = 0; i < size; i++) out[i] = base[i] + w0 * v0[i] + w1 * v1[i];
      return;
    case 3:
      for (let i = 0; i < size; i++) out[i] = base[i] + w0 * v0[i] + w1 * v1[i] + w2 * v2[i];
      return;
    case 4:
      for (let i = 0; i < size; i++) {
        out[i] = base[i] + w0 * v0[i] + w1 * v1[i] + w2 * v2[i] + w3 * v3[i];
      }
      return;
    case 5:
      for (let i = 0; i < size; i++) {
        out[i] = base[i] + w0 * v0[i] + w1 * v1[i] + w2 * v2[i] + w3 * v3[i] + w4 * v4[i];
      }
      return;
    case 6:
      for (let i = 0; i < size; i++) {
        out[i] = base[i] + w0 * v0[i] + w1 * v1[i] + w2 * v2[i] + w3 * v3[i] + w4 * v4[i] + w5 * v5[i];
      }
      return;
    default:
      throw new RangeError(`combine takes up to 6 vectors, got ${String(count)}`);
  }
}

/** Whether every entry is a finite number; four sums that do not wait for each other. */
export function allFinite(v: Float64Array): boolean {
  const size = v.length;
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let i = 0;
  for (; i + 3 < size; i += 4) {
    a += v[i] * 0;
    b += v[i + 1] * 0;
    c += v[i + 2] * 0;
    d += v[i + 3] * 0;
  }
  for (; i < size; i++) a += v[i] * 0;
  return a + b + c + d === 0;
}

/** Index of the first entry that is not a finite number, or -1. */
export function firstNotFinite(v: Float64Array): number {
  return v.findIndex((value) => !Number.isFinite(value));
}

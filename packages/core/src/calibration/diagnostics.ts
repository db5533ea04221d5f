import { log, wholePower } from '../base/elementary.js';
import { hypot } from '../base/trigonometry.js';
import { group, median } from 'd3-array';
import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';
import { dateAfter } from '../base/calendar.js';
import { deviate95 } from '../base/normal.js';
import type { Measurable } from '../scenario/scenario.js';
import { type FitProblem, type Sought, soughtOf } from './fit-problem.js';
import { type Free, valueAt } from './free-parameter.js';
import { type Counting, countedLoss } from './correlated.js';
import { kitScale } from '../log/kit-scale.js';
import type { Observation } from './readings.js';
import { distanceOf } from './residual-distance.js';
import { unitOfMeasurable } from '../scenario/measurables.js';
import { differences, type Minimum } from './search.js';
import { ask, type Asking, partOf, type Predicting } from './wanted.js';

/** Curvature of the losses over standard deviates, the priors' included. */
function informationOf(jacobian: Matrix, curvature: ArrayLike<number>): Matrix {
  const information = Matrix.eye(jacobian.columns);
  for (let i = 0; i < jacobian.rows; i++) {
    for (let j = 0; j < jacobian.columns; j++) {
      for (let k = 0; k < jacobian.columns; k++) {
        information.set(j, k, information.get(j, k) + curvature[i] * jacobian.get(i, j) * jacobian.get(i, k));
      }
    }
  }
  return information;
}

/** Covariance of the deviates: the inverse of the information, whose eigenvalues are never below 1. */
function covarianceOf(information: Matrix): Matrix {
  return inverse(information);
}

/** Correlations of a covariance. */
function correlationsOf(covariance: Matrix): number[][] {
  const size = covariance.rows;
  return Array.from({ length: size }, (_, j) =>
    Array.from(
      { length: size },
      (__, k) => covariance.get(j, k) / Math.sqrt(covariance.get(j, j) * covariance.get(k, k)),
    ),
  );
}

/** A root of a covariance: R with R Rᵀ = C, to draw with. */
export function rootOf(covariance: Matrix): Matrix {
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(covariance, {
    assumeSymmetric: true,
  });
  return eigenvectorMatrix.mmul(Matrix.diag(realEigenvalues.map((value) => Math.sqrt(Math.max(value, 0)))));
}

/** A test that could be made, with what a reading would be worth. */
interface TestCandidate {
  readonly reads: Measurable;
  readonly vessel: string;
  /** d since the start. */
  readonly time: number;
  /** Variance of a reading: of the kit, and of its step. */
  readonly variance: number;
  /** Derivatives of the value by the deviates. */
  readonly row: readonly number[];
}

/** What a further test would tell. */
export interface NextTest {
  readonly reads: Measurable;
  readonly vessel: string;
  readonly date: string;
  /** Gain of information, bits: half the base-2 log of by how much the volume of the band of all numbers shrinks. */
  readonly bits: number;
  /** The number that it narrows most, and by which `share` of its standard deviation, 0..1. */
  readonly narrows: { readonly name: string; readonly share: number };
}

/** What one reading is worth, by the covariance as it stands (linear in the deviates). */
function worthOf(
  candidate: TestCandidate,
  covariance: Matrix,
  names: readonly string[],
  dateOf: (time: number) => string,
): NextTest {
  const { reads, vessel, time, variance, row } = candidate;
  const size = names.length;
  const along = names.map((_, j) => {
    let sum = 0;
    for (let k = 0; k < size; k++) sum += covariance.get(j, k) * row[k];
    return sum;
  });
  const spread = along.reduce((sum, each, j) => sum + each * row[j], 0);
  const shares = along.map(
    (each, j) => 1 - Math.sqrt(Math.max(1 - (each * each) / ((variance + spread) * covariance.get(j, j)), 0)),
  );
  const best = shares.reduce((most, share, j) => (share > shares[most] ? j : most), 0);
  return {
    reads,
    vessel,
    date: dateOf(time),
    bits: log(1 + spread / variance) / (2 * Math.LN2),
    narrows: { name: names[best], share: shares[best] },
  };
}

/** A number after the fit. */
export interface FittedNumber extends Free {
  /** In `unit`. */
  readonly value: number;
  /** Where it stands in its prior, standard deviates. */
  readonly deviate: number;
  /** Standard error there, standard deviates. */
  readonly deviation: number;
  /** 5 % of what is believed of it lies below, in `unit`. */
  readonly low: number;
  /** 5 % lies above. */
  readonly high: number;
  /**
   * `stays`: the log tells next to nothing of it; `narrowed`: it tells of it, and agrees with the prior; `moved`: the
   * prior's middle lies more than one standard error away.
   */
  readonly verdict: 'stays' | 'narrowed' | 'moved';
}

/** How the readings of a quantity in a vessel lie about the model. */
export interface FittedCourse {
  readonly reads: Measurable;
  readonly vessel: string;
  /** Readings. */
  readonly count: number;
  /** Spread about the model over that of the kit (by the median); undefined where too few say both bounds. */
  readonly spread?: number;
  /** Median of reading less model, in spreads of the kit. */
  readonly offset?: number;
}

/** A reading that the fit takes for spoilt: `row` of the log, 1-based; what is `predicted`, in the internal unit. */
export interface SpoiltReading {
  readonly row: number;
  readonly column: string;
  readonly text: string;
  /** Of what follows; '' for pH. */
  readonly unit: string;
  readonly predicted: number;
  /** Least that the reading says, in the internal unit; -Infinity where it is open. */
  readonly low: number;
  /** Most that it says; Infinity where it is open. */
  readonly high: number;
}

/** What a log tells. */
export interface FitDiagnostics {
  readonly numbers: readonly FittedNumber[];
  /** Of the deviates. */
  readonly covariance: readonly (readonly number[])[];
  /** Pairs that this log cannot tell apart, with their `correlation`, -1..1. */
  readonly entangled: readonly { readonly a: string; readonly b: string; readonly correlation: number }[];
  readonly courses: readonly FittedCourse[];
  readonly spoilt: readonly SpoiltReading[];
  /** The most telling test of each quantity and vessel, best first. */
  readonly nextTests: readonly NextTest[];
}

/** Above this share of its prior's standard deviation a number has learned next to nothing. */
const unmoved = 0.9;

/** Correlation beyond which two numbers count as one. */
const asOne = 0.95;

/** Residuals beyond this many spreads, those of the model's own error included, count as spoilt. */
const spoiltBeyond = 5;

const testable: readonly Measurable[] = ['ammonia', 'nitrite', 'nitrate', 'pH', 'alkalinity', 'oxygen'];

function numberOf(free: Free, deviate: number, deviation: number): FittedNumber {
  const verdict = deviation > unmoved ? 'stays' : Math.abs(deviate) > deviation ? 'moved' : 'narrowed';
  return {
    ...free,
    value: valueAt(free.prior, deviate),
    deviate,
    deviation,
    low: valueAt(free.prior, deviate - deviate95 * deviation),
    high: valueAt(free.prior, deviate + deviate95 * deviation),
    verdict,
  };
}

/** Reading less model in spreads of kit and step; undefined where a bound is open. */
function residualOf({ reading }: Observation, predicted: number, problem: FitProblem): number | undefined {
  const { low, high, reads } = reading;
  if (!Number.isFinite(low) || !Number.isFinite(high)) return undefined;
  const kit = problem.errorOf(reads).deviation(predicted);
  return ((low + high) / 2 - predicted) / hypot(kit, (high - low) / Math.sqrt(12));
}

function coursesOf(problem: FitProblem, predicted: Float64Array): readonly FittedCourse[] {
  const indexed = problem.observations.map((observation, i) => ({ observation, i }));
  return [
    ...group(indexed, ({ observation: { reading } }) => `${reading.reads}@${reading.vessel}`).values(),
  ].map((own): FittedCourse => {
    const { reads, vessel } = own[0].observation.reading;
    const residuals = own
      .map(({ observation, i }) => residualOf(observation, predicted[i], problem))
      .filter((each) => each !== undefined);
    const count = own.length;
    if (residuals.length < 5) return { reads, vessel, count };
    // The median of the absolute normal deviate is 0.6745.
    return {
      reads,
      vessel,
      count,
      spread: (median(residuals, Math.abs) ?? Number.NaN) / 0.6745,
      offset: median(residuals) ?? Number.NaN,
    };
  });
}

/** Tests that could be made on the days ahead, where the log tests already. */
function candidatesOf(problem: FitProblem): readonly Sought[] {
  const vessels = [...new Set(problem.observations.map(({ vessel }) => vessel))].sort((a, b) => a - b);
  const { ahead } = problem;
  const last = problem.days - ahead - 1;
  return vessels.flatMap((vessel) =>
    testable.flatMap((reads) =>
      Array.from({ length: ahead }, (_, i) => ({ reads, vessel, time: last + 1 + i })),
    ),
  );
}

function nextTests(
  problem: FitProblem,
  candidates: readonly Sought[],
  predicted: Float64Array,
  jacobian: Matrix,
  covariance: Matrix,
): readonly NextTest[] {
  const steps = new Map(
    [...group(problem.observations, ({ reading }) => reading.reads)].map(([reads, own]) => {
      const widths = own.map(({ reading: { low, high } }) => high - low).filter(Number.isFinite);
      return [reads, median(widths) ?? 0] as const;
    }),
  );
  const first = problem.observations.length;
  const names = problem.free.map(({ name }) => name);
  const dateOf = (time: number): string => dateAfter(problem.scenario.startDate, time);
  const worth = candidates.map(({ reads, vessel, time }, i) => {
    const kit = problem.errorOf(reads).deviation(predicted[first + i]);
    const candidate: TestCandidate = {
      reads,
      vessel: problem.scenario.vessels[vessel].name,
      time,
      variance: wholePower(kit, 2) + wholePower(steps.get(reads) ?? 0, 2) / 12,
      row: jacobian.getRow(first + i),
    };
    return worthOf(candidate, covariance, names, dateOf);
  });
  const best = [...group(worth, ({ reads, vessel }) => `${reads}@${vessel}`).values()].map((own) =>
    own.reduce((most, each) => (each.bits > most.bits ? each : most)),
  );
  return best.sort((a, b) => b.bits - a.bits);
}

/** Values that what a log tells is made of: of each reading, then of each test that could be made. */
export interface Slopes {
  readonly predicted: Float64Array;
  readonly jacobian: Matrix;
}

/** Who predicts the readings of a problem, and the tests that could be made in its days ahead. */
export function withTests(problem: FitProblem): Predicting {
  const sought = [...soughtOf(problem.observations), ...candidatesOf(problem)];
  return { predict: (at) => problem.predict(at, sought), part: partOf(problem) };
}

/**
 * Predictions of readings and tests at deviates, with their derivatives.
 * @param problem made with days ahead for the tests
 * @param step of the differences, in deviates
 * @throws RangeError where the run breaks off
 */
export function* slopesAt(problem: FitProblem, at: Float64Array, step: number): Asking<Slopes> {
  const of = withTests(problem);
  const [predicted] = yield* ask(of, [at]);
  if (predicted === undefined) throw new RangeError('the run breaks off in the days after the log');
  return { predicted, jacobian: yield* differences(of, at, predicted, () => step, false) };
}

/**
 * What a log tells at a minimum: bands, what moved, what is entangled, how readings lie about the model, which are taken
 * for spoilt, and which test to make next. Bands are those of the curvature there (Laplace), in the deviates.
 * @param problem made with days ahead for the tests
 * @param slopes there, as `slopesAt` finds them
 * @param counting how each reading counts beside its neighbours
 */
export function diagnosticsOf(
  problem: FitProblem,
  minimum: Minimum,
  { predicted, jacobian }: Slopes,
  counting: readonly Counting[],
): FitDiagnostics {
  const { free, observations } = problem;
  const candidates = candidatesOf(problem);
  const curvature = observations.map(
    (observation, i) =>
      countedLoss(observation, predicted[i], problem.errorOf(observation.reading.reads), counting[i])
        .curvature,
  );
  const read = jacobian.subMatrix(0, observations.length - 1, 0, free.length - 1);
  const covariance = covarianceOf(informationOf(read, curvature));
  const correlations = correlationsOf(covariance);
  const entangled = free.flatMap(({ name: a }, j) =>
    free.flatMap(({ name: b }, k) =>
      k > j && Math.abs(correlations[j][k]) > asOne ? [{ a, b, correlation: correlations[j][k] }] : [],
    ),
  );
  return {
    numbers: free.map((each, j) => numberOf(each, minimum.at[j], Math.sqrt(covariance.get(j, j)))),
    covariance: covariance.to2DArray(),
    entangled,
    courses: coursesOf(problem, predicted),
    spoilt: observations.flatMap(({ reading: { row, column, text, reads, low, high } }, i) => {
      const scale = kitScale(problem.errorOf(reads));
      const off = distanceOf(scale.to(low), scale.to(high), scale.to(predicted[i]));
      const unit = unitOfMeasurable[reads];
      return Math.abs(off) > spoiltBeyond * counting[i].wider
        ? [{ row, column, text, unit, predicted: predicted[i], low, high }]
        : [];
    }),
    nextTests: nextTests(problem, candidates, predicted, jacobian, covariance),
  };
}

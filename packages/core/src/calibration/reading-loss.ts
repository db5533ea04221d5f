// Reads numbers as: errors of readings
import { log } from '../base/elementary.js';
import { hypot } from '../base/trigonometry.js';
import { normalCdf } from '../base/normal.js';
import type { Parameters } from '../library/parameters.js';
import type { Measurable } from '../scenario/scenario.js';

/** How a kit errs at a value: standard deviation of sound readings, share of spoilt ones, and their wider spread. */
export interface ReadingError {
  /** Standard deviation where `value` is truly there, in the unit of the value; above 0. */
  deviation(value: number): number;
  readonly outlierShare: number;
  /** Spread of spoilt readings over that of sound ones. */
  readonly outlierSpread: number;
}

/** What an observation costs at a prediction: minus log likelihood, its slope, and a curvature above 0. */
export interface Loss {
  readonly value: number;
  readonly slope: number;
  readonly curvature: number;
}

/** Narrowest interval that is told from a point, in standard deviations. */
const narrowest = 1e-3;

/** Step of the differences in the prediction, in standard deviations. */
const step = 0.02;

/** Share of draws of Student's t with 4 degrees of freedom below t, exact in the tails. */
function studentCdf(t: number): number {
  const c = Math.abs(t) === Infinity ? 1 : Math.abs(t) / Math.sqrt(4 + t * t);
  const rest = Math.abs(t) === Infinity ? 0 : 4 / (t * t + 4) / (1 + c);
  const tail = (rest * rest * (2 + c)) / 4;
  return t < 0 ? tail : 1 - tail;
}

/** What lies between two points; both are moved to the lower tail, where small shares are exact. */
function between(cdf: (x: number) => number, low: number, high: number): number {
  return low + high > 0 ? cdf(-low) - cdf(-high) : cdf(high) - cdf(low);
}

/**
 * Minus the log of the probability that a reading falls between its bounds when `predicted` is there: a mixture of
 * normal errors of the kit and of spoilt readings (Student's t with 4 degrees of freedom, wider).
 */
function readingLoss(low: number, high: number, predicted: number, error: ReadingError): number {
  const deviation = error.deviation(predicted);
  const middle = (low + high) / 2;
  const half = Math.max((high - low) / 2, (narrowest * deviation) / 2);
  const wide = Number.isFinite(middle);
  const a = ((wide ? middle - half : low) - predicted) / deviation;
  const b = ((wide ? middle + half : high) - predicted) / deviation;
  const { outlierShare: share, outlierSpread: spread } = error;
  const sound = between(normalCdf, a, b);
  const spoilt = between(studentCdf, a / spread, b / spread);
  return -log((1 - share) * sound + share * spoilt);
}

/**
 * The loss with its derivatives by the prediction, by central differences. Where the second derivative is not above
 * 0 (far out, where a reading counts as spoilt) the curvature is that of reweighted least squares, slope over distance.
 */
export function lossOf(low: number, high: number, predicted: number, error: ReadingError): Loss {
  const h = step * error.deviation(predicted);
  const value = readingLoss(low, high, predicted, error);
  const up = readingLoss(low, high, predicted + h, error);
  const down = readingLoss(low, high, predicted - h, error);
  const slope = (up - down) / (2 * h);
  const second = (up - 2 * value + down) / (h * h);
  if (second > 0) return { value, slope, curvature: second };
  const near = predicted < low ? low : predicted > high ? high : (low + high) / 2;
  return {
    value,
    slope,
    curvature: predicted === near || !Number.isFinite(near) ? 0 : Math.max(slope / (predicted - near), 0),
  };
}

/** How readings of a quantity err, by the rows `log.*` of the tables or as the scenario gives them anew. */
export function readingError(parameters: Parameters, reads: Measurable): ReadingError {
  const relativeId = `log.${reads}.error-relative`;
  const relative = parameters.has(relativeId) ? parameters.value(relativeId) : 0;
  const absolute = parameters.value(`log.${reads}.error-absolute`);
  return {
    deviation: (value) => hypot(absolute, relative * value),
    outlierShare: parameters.value('log.outlier-share'),
    outlierSpread: parameters.value('log.outlier-spread'),
  };
}

import { exp } from '../base/elementary.js';
import { group } from 'd3-array';
import { kitScale } from '../log/kit-scale.js';
import type { Loss, ReadingError } from './reading-loss.js';
import { lossOf } from './reading-loss.js';
import type { Observation } from './readings.js';
import { likeliest, type Returning } from './returning.js';

/** How one reading counts beside its neighbours. */
export interface Counting {
  /** Its error over that of the kit: a tester's slowly changing error comes on top. */
  readonly wider: number;
  /** Share with which it counts, 0..1: neighbours that err alike tell less than each alone. */
  readonly weight: number;
}

/** Correlated error that is believed before residuals tell it: as large as the kit's, over a month. Judgment [P]. */
const believed: Returning = { middle: 0, memory: 30, spread: 1 };

/** Series by quantity and place. */
export const seriesKey = ({ reading, vessel }: Observation): string => `${reading.reads}|${vessel}`;

/**
 * How readings count where errors of one tester, and of the model, go on from day to day: with kit errors of 1 and a
 * returning error of standard deviation s and memory T beside them, a level that n readings agree on is known to
 * 1'C⁻¹1 (generalised least squares), which each reading's 1 / (1 + s² Σ exp(-|t - tᵢ| / T)) comes to.
 * @param predicted what the model has at each; absent: what is believed before any fit
 */
export function countingOf(
  observations: readonly Observation[],
  errorOf: (reads: Observation['reading']['reads']) => ReadingError,
  predicted?: ArrayLike<number>,
): readonly Counting[] {
  const counting = new Array<Counting>(observations.length);
  const indexed = observations.map((observation, i) => ({ observation, i }));
  for (const own of group(indexed, ({ observation }) => seriesKey(observation)).values()) {
    own.sort((a, b) => a.observation.time - b.observation.time);
    const error = errorOf(own[0].observation.reading.reads);
    const scale = kitScale(error);
    const { memory, spread } =
      predicted === undefined || own.length < 8
        ? believed
        : likeliest(
            own.map(({ observation: { reading, time }, i }) => {
              const model = scale.to(predicted[i]);
              return { time, low: scale.to(reading.low) - model, high: scale.to(reading.high) - model };
            }),
            0,
            { share: error.outlierShare, spread: error.outlierSpread },
          );
    const square = spread * spread;
    for (const { observation, i } of own) {
      const shared = own.reduce(
        (sum, other) => sum + exp(-Math.abs(other.observation.time - observation.time) / memory),
        0,
      );
      counting[i] = { wider: Math.sqrt(1 + square), weight: (1 + square) / (1 + square * shared) };
    }
  }
  return counting;
}

/** What a reading costs as it counts. */
export function countedLoss(
  { reading: { low, high } }: Observation,
  predicted: number,
  error: ReadingError,
  { wider, weight }: Counting,
): Loss {
  const wide: ReadingError = { ...error, deviation: (value) => wider * error.deviation(value) };
  const { value, slope, curvature } = lossOf(low, high, predicted, wide);
  return { value: weight * value, slope: weight * slope, curvature: weight * curvature };
}

import { largestOf } from '../../numerics/peers/deviation.js';
import type { Contestant, Measurement } from './contestant.js';

/** One point of the diagram. */
export interface Point {
  readonly name: string;
  readonly forcing: string;
  readonly tolerance: number;
  /** Largest difference of any state on any day, as a share of the largest value of that state. */
  readonly error: number;
  /** Root mean square of the same over all states and days. */
  readonly meanError: number;
  /** Median, ms, and the number of runs that it is of. */
  readonly milliseconds: number;
  readonly runs: number;
  readonly work: Measurement['work'];
}

/** Makes a point of all that was measured of a contestant at a tolerance. */
export function pointOf(
  { name, forcing }: Contestant,
  measurements: readonly Measurement[],
  reference: Float64Array,
  states: number,
): Point {
  const [{ tolerance, days, work }] = measurements;
  const largest = largestOf(reference, states);
  const times = measurements.flatMap(({ milliseconds }) => [...milliseconds]).sort((a, b) => a - b);
  let error = 0;
  let squares = 0;
  reference.forEach((value, i) => {
    const off = Math.abs(days[i] - value) / (largest[i % states] || 1);
    error = off <= error ? error : off;
    squares += off * off;
  });
  const middle = times.length / 2;
  return {
    name,
    forcing,
    tolerance,
    error,
    meanError: Math.sqrt(squares / reference.length),
    milliseconds: (times[Math.ceil(middle) - 1] + times[Math.floor(middle)]) / 2,
    runs: times.length,
    work,
  };
}

/**
 * Time in which a contestant reaches an error, by its best variant: read off the lines between its
 * points, both axes logarithmic. Where all its points are better than asked it is the cheapest of them;
 * undefined where none is as good.
 */
export function timeAt(
  points: readonly Point[],
  error: number,
  of: 'error' | 'meanError',
): number | undefined {
  const times = [...new Set(points.map(({ forcing }) => forcing))].flatMap((forcing) => {
    const curve = points.filter((point) => point.forcing === forcing).sort((a, b) => a[of] - b[of]);
    const enough = curve.filter((point) => point[of] <= error);
    const crossed = curve.slice(1).flatMap((loose, i) => {
      const tight = curve[i];
      if (!(tight[of] <= error && error < loose[of])) return [];
      const share = Math.log(error / tight[of]) / Math.log(loose[of] / tight[of]);
      return [tight.milliseconds * (loose.milliseconds / tight.milliseconds) ** share];
    });
    return [...enough.map(({ milliseconds }) => milliseconds), ...crossed];
  });
  return times.length === 0 ? undefined : Math.min(...times);
}

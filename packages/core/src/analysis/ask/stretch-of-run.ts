import type { Run } from '../../run/run.js';
import { seriesOf } from '../../result/series.js';
import { NoAnswerError } from './no-answer-error.js';
import { stretchOf, type Stretch } from './stretch.js';
import type { Window } from './window.js';

/** The one kind of series that has no value at times: the mean mass of no fish. */
const gappy = /^fish-mean-mass@/;

/**
 * The stretch of a series of a run that a measure looks at. Throws NoAnswerError where a value is missing
 * that ought to be there, or the run ends too early.
 */
export function stretchOfRun(run: Run, series: string, window: Window): Stretch {
  const times = run.samples.map(({ time }) => time);
  const stretch = stretchOf({ times, values: seriesOf(run, series).values }, window);
  const hole = stretch.values.findIndex((value) => !Number.isFinite(value));
  if (hole >= 0 && !gappy.test(series))
    throw new NoAnswerError(`${series} has no value on day ${stretch.times[hole]}`);
  return stretch;
}

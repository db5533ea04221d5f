import type { Model } from '../../model/model.js';
import type { MeasureReading } from './reading.js';
import type { PhrasePart } from './phrase.js';
import { scaleOfWord } from './series-word.js';
import { statistics, type StatisticName } from './statistic.js';
import { stretchOfRun } from './stretch-of-run.js';
import { windowOf } from './window.js';

/** Names of the statistics that a series may be asked for. */
export const statisticNames = Object.keys(statistics) as readonly StatisticName[];

/** `highest nitrate@sump averaged 7 d from 30 d`: a statistic of a series. */
export function statisticMeasure(
  statistic: StatisticName,
  [series]: readonly string[],
  parts: readonly PhrasePart[],
  model: Model,
): MeasureReading {
  const scale = scaleOfWord(series, model);
  const { window, faults } = windowOf(parts, model.scenario);
  const all = [...('problem' in scale ? [scale] : []), ...faults];
  if (statistic === 'mean' && window.averaging > 0)
    all.push({ got: 'averaged', problem: 'a mean is averaged already', expected: 'from and to' });
  if ('problem' in scale || all.length > 0) return all;
  return {
    ...scale,
    ...(statistic === 'change' && { difference: true }),
    of: (run) => statistics[statistic](stretchOfRun(run, series, window)),
  };
}

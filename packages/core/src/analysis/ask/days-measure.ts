import type { Model } from '../../model/model.js';
import { judge } from '../../result/judge.js';
import { levelOf } from './level.js';
import type { MeasureReading } from './reading.js';
import type { PhrasePart } from './phrase.js';
import { scaleOfWord } from './series-word.js';
import { stretchOfRun } from './stretch-of-run.js';
import { windowOf } from './window.js';

/** `days tan@tank above 1 mg N/L`: how long a series is beyond a level, d; lines between output times are straight. */
export function daysMeasure(
  [series]: readonly string[],
  parts: readonly PhrasePart[],
  model: Model,
): MeasureReading {
  const sides = parts.filter(({ joint }) => joint === 'above' || joint === 'below');
  const [side] = sides;
  const scale = scaleOfWord(series, model);
  const { window, faults } = windowOf(parts, model.scenario);
  const all = [...('problem' in scale ? [scale] : []), ...faults];
  if (sides.length !== 1)
    all.push({
      got: `days ${series}`,
      problem: sides.length === 0 ? 'beyond what?' : 'two levels',
      expected: 'above VALUE or below VALUE',
    });
  if (side === undefined || 'problem' in scale) return all;
  const level = levelOf(side.words, scale, model.parameters);
  if (typeof level !== 'function') all.push(level);
  if (typeof level !== 'function' || all.length > 0) return all;
  const direction = side.joint === 'above' ? 'above' : 'below';
  return {
    unit: 'd',
    dimension: 'time',
    of: (run) => {
      const { times, values } = stretchOfRun(run, series, window);
      return judge(times, values, { value: level(run.model.parameters), direction }, 0).total;
    },
  };
}

import type { Fault } from '../../errors.js';
import type { Model } from '../../model/model.js';
import { seriesUnits } from '../../result/series.js';
import { nearest } from '../../suggest.js';
import { scaleOfSeries, type Scale } from './scale.js';

/** The scale of a series that is named in a measure, or what is wrong with the name. */
export function scaleOfWord(name: string | undefined, model: Model): Scale | Fault {
  const units = seriesUnits(model);
  const unit = name === undefined ? undefined : units.get(name);
  if (name !== undefined && unit !== undefined) return scaleOfSeries(name, unit);
  const near = name === undefined ? undefined : nearest(name, units.keys());
  return {
    got: name ?? 'nothing',
    problem: 'no such series',
    expected: 'quantity@place, such as nitrate@sump',
    ...(near && { nearest: near }),
  };
}

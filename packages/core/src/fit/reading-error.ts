import type { Parameters } from '../library/parameters.js';
import type { Measurable } from '../scenario/scenario.js';
import type { ReadingError } from './reading-loss.js';

/** How readings of a quantity err, by the rows `log.*` of the tables or as the scenario gives them anew. */
export function readingError(parameters: Parameters, reads: Measurable): ReadingError {
  const relativeId = `log.${reads}.error-relative`;
  const relative = parameters.has(relativeId) ? parameters.value(relativeId) : 0;
  const absolute = parameters.value(`log.${reads}.error-absolute`);
  return {
    deviation: (value) => Math.hypot(absolute, relative * value),
    outlierShare: parameters.value('log.outlier-share'),
    outlierSpread: parameters.value('log.outlier-spread'),
  };
}

import type { Fault } from '../../errors.js';
import type { Parameters } from '../../library/parameters.js';
import { nearest } from '../../suggest.js';
import { unitsAgree, valueOnScale, type Scale } from './scale.js';

/** What a measure is held against: a value, or a number of the tables as a run has it. */
export type Level = (parameters: Parameters) => number;

/**
 * Reads `VALUE[ UNIT]`, or the id of a number of the tables such as `fish.nile-tilapia.limit-nitrite`.
 * @param known the numbers there are
 * @returns the level, or what is wrong with it
 */
export function levelOf(words: string, scale: Scale, known: Parameters): Level | Fault {
  if (/^[a-z][a-z0-9-]*(\.[a-z0-9-]+)+$/.test(words)) {
    if (!known.has(words)) {
      const near = nearest(
        words,
        Array.from(known.rows(), ({ id }) => id),
      );
      return {
        got: words,
        problem: 'no such number in the tables',
        ...(near === undefined ? {} : { nearest: near }),
      };
    }
    const row = known.row(words);
    if (!unitsAgree(row.unit, scale.unit))
      return {
        got: `${words}, in ${row.unit}`,
        problem: 'wrong unit',
        expected: `a number in ${scale.unit}`,
      };
    return (parameters) => parameters.value(words);
  }
  const value = valueOnScale(words, scale);
  return typeof value === 'number' ? () => value : value;
}

import type { Fault } from '../../errors.js';
import type { Parameters } from '../../library/parameters.js';
import { tableRows } from '../../library/table-rows.js';
import { nearest } from '../../suggest.js';
import { unitsAgree, valueOnScale, type Scale } from './scale.js';

/** What a measure is held against: a value, or a number of the tables as a run has it. */
export type Level = (parameters: Parameters) => number;

/**
 * Reads `VALUE[ UNIT]`, or the id of a number of the tables such as `fish.nile-tilapia.limit-nitrite`.
 * @returns the level, or what is wrong with it
 */
export function levelOf(words: string, scale: Scale): Level | Fault {
  if (/^[a-z][a-z0-9-]*(\.[a-z0-9-]+)+$/.test(words)) {
    const row = tableRows.get(words);
    if (row === undefined) {
      const near = nearest(words, tableRows.keys());
      return {
        got: words,
        problem: 'no such number in the tables',
        ...(near === undefined ? {} : { nearest: near }),
      };
    }
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

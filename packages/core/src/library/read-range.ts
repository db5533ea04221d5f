import { numberColumns } from './numbers.generated.js';
import type { Parameters } from './parameters.js';

/**
 * Low and high of a number whose range a run itself reads (such as how little and how much feed holds a fish): the user's,
 * where one was given. Of other numbers `rangedOf` tells. Throws RangeError where the range of a number is not sent to runs.
 */
export function readRange(
  parameters: Pick<Parameters, 'number'>,
  id: string,
): { readonly low: number; readonly high: number } {
  const { given } = parameters.number(id);
  const last = given.at(-1);
  if (last !== undefined) return { low: last.low ?? last.value, high: last.high ?? last.value };
  if (!Object.hasOwn(numberColumns.ranges, id)) throw new RangeError(`no run reads the range of ${id}`);
  const [low, high] = numberColumns.ranges[id];
  return { low, high };
}

import { drawParameters, type Parameters } from '../library/parameters.js';
import { createRandom } from '../library/random.js';
import type { Process } from '../processes/process.js';
import type { Override } from '../scenario/scenario.js';
import { checkClosure } from './closure.js';
import { scopeTo, type Subject } from './scope.js';

/** Most sets of given numbers that are remembered. */
const mostKept = 16;

/**
 * Rows that were found to close, by what decides their draws: how many, and the numbers that the user gave. The draws
 * themselves are always the same, so a row that closed at them closes again.
 */
const kept = new Map<string, Set<string>>();

function closedAt(count: number, overrides: readonly Override[]): Set<string> {
  const name = JSON.stringify([count, overrides]);
  const closed = kept.get(name) ?? new Set();
  kept.delete(name);
  kept.set(name, closed);
  const [oldest] = kept.keys();
  if (kept.size > mostKept) kept.delete(oldest);
  return closed;
}

/**
 * A check that the row of a process closes at so many random draws of the numbers. What was checked when an earlier
 * system was compiled is not reckoned again: a slider compiles the same rows at every move.
 * @returns the check; it throws RangeError as `checkClosure` does
 */
export function checkAtDraws(
  count: number,
  overrides: readonly Override[],
): (process: Process, subject: Subject) => void {
  if (count === 0) return () => undefined;
  const closed = closedAt(count, overrides);
  let draws: readonly Parameters[] | undefined;
  return (process, subject) => {
    const row = `${process.id} ${JSON.stringify(subject)}`;
    if (closed.has(row)) return;
    if (draws === undefined) {
      const random = createRandom(1);
      draws = Array.from({ length: count }, () => drawParameters(random, overrides));
    }
    checkClosure(
      process,
      draws.map((draw) => scopeTo(draw, subject)),
    );
    closed.add(row);
  };
}

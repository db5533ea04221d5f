import type { Limit } from './limit-check.js';
import type { Verdict } from './judge.js';
import type { LimitResult } from './limits.js';
import type { RunAccount } from './run-account.js';

/** A limit that some runs passed and others did not. */
export interface ComparedLimit extends Limit {
  readonly place: string;
  /** One for each run; null where a run has no such limit (nobody it is for, no such place). */
  readonly runs: readonly (Verdict | null)[];
}

const keyOf = ({ id, quantity, direction, whom, place }: LimitResult): string =>
  [id, quantity, direction, whom, place].join('|');

function verdictOf({ judged, passed, first, total, worst, worstAt }: LimitResult): Verdict {
  return {
    judged,
    passed,
    total,
    ...(first !== undefined && { first }),
    ...(worst !== undefined && { worst }),
    ...(worstAt !== undefined && { worstAt }),
  };
}

/**
 * The limits passed in at least one run and not in all, in the order of their first passing. A run in
 * which a limit was not judged has not passed it.
 */
export function compareLimits(accounts: readonly RunAccount[]): readonly ComparedLimit[] {
  const known = accounts.map(({ limits }) => new Map(limits.map((limit) => [keyOf(limit), limit])));
  const passed = accounts.flatMap(({ limits }) => limits.filter((limit) => limit.passed));
  const once = new Map(passed.map((limit) => [keyOf(limit), limit]));
  const earliest = ({ runs }: ComparedLimit): number =>
    Math.min(...runs.map((verdict) => verdict?.first ?? Infinity));
  return [...once]
    .map(([key, { id, quantity, unit, direction, value, averaging, whom, source, page, mark, place }]) => ({
      ...{ id, quantity, unit, direction, value, averaging, whom, source, page, mark, place },
      runs: known.map((limits) => {
        const found = limits.get(key);
        return found === undefined ? null : verdictOf(found);
      }),
    }))
    .filter(({ runs }) => !runs.every((verdict) => verdict?.passed === true))
    .sort((a, b) => earliest(a) - earliest(b));
}

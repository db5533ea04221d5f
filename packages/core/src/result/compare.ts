import { INSTANT } from '../base/instant.js';
import type { Outcome } from '../run/run.js';
import type { Budget } from './budget.js';
import type { Costs } from './costs.js';
import { fatesOf, type Share } from './fates.js';
import type { Verdict } from './judge.js';
import type { PlacedLimit } from './limit-check.js';
import type { LimitResult } from './limits.js';
import type { Series } from './series.js';
import type { RunVerdict } from './verdict.js';

/** What one run says, as far as it is compared with others: from a run just made or from a saved document. */
export interface RunAccount {
  readonly title: string;
  readonly outcome: Outcome;
  /** Output times, d, ascending, at least one. */
  readonly time: readonly number[];
  readonly series: readonly (Pick<Series, 'name' | 'unit'> & { readonly values: ArrayLike<number> })[];
  /** Names of the series worth comparing, in the order in which a person would read them. */
  readonly keys: readonly string[];
  readonly limits: readonly LimitResult[];
  readonly verdict: RunVerdict;
  /** By the prices of the scenario; absent: it has none. */
  readonly costs?: Costs;
  /** Date of day 0, `yyyy-mm-dd`. */
  readonly startDate: string;
  /** Of the whole system. */
  readonly nitrogen: Budget;
  readonly water: Budget;
}

/** One quantity in one run. */
export interface QuantityOfRun {
  /** At the last output time, in the unit of the quantity. */
  readonly end: number;
  /** Of all output times, likewise. */
  readonly highest: number;
  /** When it is highest first, d. */
  readonly highestAt: number;
}

/** One quantity side by side. */
export interface ComparedQuantity {
  /** Of the series, such as `nitrate@sump`. */
  readonly name: string;
  readonly unit: string;
  /** One for each run; null where a run has no such series or it has no value. */
  readonly runs: readonly (QuantityOfRun | null)[];
  /**
   * Another run less the first, of those the farthest away, as a share of the largest size that the
   * quantity reaches in any run; NaN where the first run or all others lack it. At the last output time.
   */
  readonly end: number;
  /** The same of the highest values. */
  readonly highest: number;
}

/** Where a run first differs from the first one. */
export interface Parting {
  /** d. */
  readonly day: number;
  readonly quantity: string;
  /** Value of the first run on that day. */
  readonly first: number;
  /** Value of this one on that day. */
  readonly other: number;
}

type Values = ArrayLike<number>;

const valuesOf = (account: RunAccount, name: string): Values | undefined =>
  account.series.find((series) => series.name === name)?.values;

/** Largest size of any value, 0 where there are none. */
const sizeOf = (courses: readonly Values[]): number =>
  courses
    .flatMap((values) => Array.from(values))
    .reduce((most, value) => (Math.abs(value) > most ? Math.abs(value) : most), 0);

function ofRun(time: readonly number[], values: Values): QuantityOfRun | null {
  let top = -1;
  time.forEach((_, i) => {
    if (!Number.isNaN(values[i]) && (top < 0 || values[i] > values[top])) top = i;
  });
  if (top < 0) return null;
  return { end: values[time.length - 1], highest: values[top], highestAt: time[top] };
}

/** The share farthest from 0; NaN where there is none. */
const farthest = (shares: readonly number[]): number =>
  shares.reduce(
    (most, share) => (Number.isNaN(most) || Math.abs(share) > Math.abs(most) ? share : most),
    Number.NaN,
  );

function compared(accounts: readonly RunAccount[], name: string): ComparedQuantity {
  const courses = accounts.map((account) => valuesOf(account, name));
  const runs = courses.map((values, i) => (values === undefined ? null : ofRun(accounts[i].time, values)));
  const size = sizeOf(courses.filter((values) => values !== undefined));
  const share = (which: 'end' | 'highest'): number => {
    const [first, ...others] = runs;
    return farthest(
      others.map((other) => {
        if (first === null || other === null) return Number.NaN;
        const apart = other[which] - first[which];
        return apart === 0 ? 0 : apart / size;
      }),
    );
  };
  const unit = accounts.flatMap(({ series }) => series).find((series) => series.name === name)?.unit ?? '';
  return { name, unit, runs, end: share('end'), highest: share('highest') };
}

/** How far apart a quantity is, at its end or its highest; what cannot be compared comes last. */
export function apartness({ end, highest }: ComparedQuantity): number {
  const sizes = [end, highest].filter((share) => !Number.isNaN(share)).map(Math.abs);
  return sizes.length === 0 ? -1 : Math.max(...sizes);
}

const keysOf = (accounts: readonly RunAccount[]): string[] => [
  ...new Set(accounts.flatMap(({ keys }) => keys)),
];

/** The key quantities of several runs side by side, the largest relative difference first. */
function compareQuantities(accounts: readonly RunAccount[]): readonly ComparedQuantity[] {
  return keysOf(accounts)
    .map((name) => compared(accounts, name))
    .sort((a, b) => apartness(b) - apartness(a));
}

/** Pairs of indices of the output times that two runs share. */
function sharedTimes(a: readonly number[], b: readonly number[]): (readonly [number, number])[] {
  return a.flatMap((time, i) => {
    const j = b.findIndex((other) => Math.abs(other - time) <= INSTANT);
    return j < 0 ? [] : [[i, j] as const];
  });
}

/**
 * The first output time at which a key quantity of two runs differs by more than a share of the largest
 * size it reaches in either; of several at that time, the farthest apart. A value against none is
 * apart. Only output times that both runs have are looked at; null where they never part.
 */
function partingOf(first: RunAccount, other: RunAccount, share: number): Parting | null {
  const courses = keysOf([first, other]).flatMap((name) => {
    const a = valuesOf(first, name);
    const b = valuesOf(other, name);
    return a === undefined || b === undefined ? [] : [{ name, a, b, size: sizeOf([a, b]) }];
  });
  for (const [i, j] of sharedTimes(first.time, other.time)) {
    const [most] = courses
      .map(({ name, a, b, size }) => {
        const lone = Number.isNaN(a[i]) !== Number.isNaN(b[j]);
        return { name, a: a[i], b: b[j], apart: lone ? Infinity : Math.abs(b[j] - a[i]) / size };
      })
      .filter(({ apart }) => apart > share)
      .sort((p, q) => (p.apart === q.apart ? 0 : q.apart - p.apart));
    if (most !== undefined) return { day: first.time[i], quantity: most.name, first: most.a, other: most.b };
  }
  return null;
}

/** A named part of several balances, one amount and share for each run (0 where a run has none). */
export interface ComparedShare {
  readonly name: string;
  readonly runs: readonly Omit<Share, 'name'>[];
}

/** Where a quantity came from and went to in several runs. */
export interface ComparedFates {
  /** All that came, in each run. */
  readonly totals: readonly number[];
  readonly from: readonly ComparedShare[];
  readonly to: readonly ComparedShare[];
}

function sideBySide(lists: readonly (readonly Share[])[]): ComparedShare[] {
  const names = [...new Set(lists.flatMap((shares) => shares.map(({ name }) => name)))];
  const largest = ({ runs }: ComparedShare): number => Math.max(...runs.map(({ amount }) => amount));
  return names
    .map((name) => ({
      name,
      runs: lists.map((shares) => {
        const found = shares.find((share) => share.name === name);
        return { amount: found?.amount ?? 0, share: found?.share ?? 0 };
      }),
    }))
    .sort((a, b) => largest(b) - largest(a));
}

/** Budgets of one quantity of several runs as stories side by side (`fatesOf`), the largest parts first. */
function compareFates(budgets: readonly Budget[]): ComparedFates {
  const fates = budgets.map(fatesOf);
  return {
    totals: fates.map(({ total }) => total),
    from: sideBySide(fates.map(({ from }) => from)),
    to: sideBySide(fates.map(({ to }) => to)),
  };
}

/** A limit that some runs passed and others did not. */
export interface ComparedLimit extends PlacedLimit {
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
function compareLimits(accounts: readonly RunAccount[]): readonly ComparedLimit[] {
  const known = accounts.map(({ limits }) => new Map(limits.map((limit) => [keyOf(limit), limit])));
  const passed = accounts.flatMap(({ limits }) => limits.filter((limit) => limit.passed));
  const once = new Map(passed.map((limit) => [keyOf(limit), limit]));
  const earliest = ({ runs }: ComparedLimit): number =>
    Math.min(...runs.map((verdict) => verdict?.first ?? Infinity));
  return [...once]
    .map(
      ([
        key,
        { id, quantity, unit, direction, harm, value, averaging, whom, source, page, mark, place },
      ]) => ({
        ...{ id, quantity, unit, direction, harm, value, averaging, whom, source, page, mark, place },
        runs: known.map((limits) => {
          const found = limits.get(key);
          return found === undefined ? null : verdictOf(found);
        }),
      }),
    )
    .filter(({ runs }) => !runs.every((verdict) => verdict?.passed === true))
    .sort((a, b) => earliest(a) - earliest(b));
}

/** Several runs side by side. Every list with one entry for each run is in the order of the runs. */
export interface Comparison {
  /** Last output time of each run, d. */
  readonly ends: readonly number[];
  /** Share by which two values must differ to be apart. */
  readonly apart: number;
  /** Key quantities, the largest relative difference first. */
  readonly quantities: readonly ComparedQuantity[];
  /** When each run but the first parts from the first; null for never. */
  readonly partings: readonly (Parting | null)[];
  /** Limits passed in some runs and not in all. */
  readonly limits: readonly ComparedLimit[];
  readonly nitrogen: ComparedFates;
  readonly water: ComparedFates;
}

/**
 * Puts two or more runs side by side; differences are those of the others from the first.
 * @param apart share of the largest size of a quantity by which values must differ to be apart, 0..1
 * @throws RangeError for fewer than two runs or a share outside 0..1
 */
export function compareRuns(accounts: readonly RunAccount[], apart: number): Comparison {
  if (accounts.length < 2) throw new RangeError('a comparison needs at least two runs');
  if (!(apart >= 0 && apart <= 1)) throw new RangeError(`${apart} is no share from 0 to 1`);
  const [first, ...others] = accounts;
  return {
    ends: accounts.map(({ time }) => time[time.length - 1]),
    apart,
    quantities: compareQuantities(accounts),
    partings: others.map((other) => partingOf(first, other, apart)),
    limits: compareLimits(accounts),
    nitrogen: compareFates(accounts.map(({ nitrogen }) => nitrogen)),
    water: compareFates(accounts.map(({ water }) => water)),
  };
}

import type { RunAccount } from './run-account.js';

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
export function compareQuantities(accounts: readonly RunAccount[]): readonly ComparedQuantity[] {
  return keysOf(accounts)
    .map((name) => compared(accounts, name))
    .sort((a, b) => apartness(b) - apartness(a));
}

/** Pairs of indices of the output times that two runs share. */
function sharedTimes(a: readonly number[], b: readonly number[]): (readonly [number, number])[] {
  return a.flatMap((time, i) => {
    const j = b.findIndex((other) => Math.abs(other - time) <= 1e-9);
    return j < 0 ? [] : [[i, j] as const];
  });
}

/**
 * The first output time at which a key quantity of two runs differs by more than a share of the largest
 * size it reaches in either; of several at that time, the farthest apart. A value against none is
 * apart. Only output times that both runs have are looked at; null where they never part.
 */
export function partingOf(first: RunAccount, other: RunAccount, share: number): Parting | null {
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

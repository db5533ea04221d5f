import { type Dimension, formatQuantity } from '../../base/units.js';
import type { Report } from '../file/report.js';
import type { Path } from '../file/tree.js';

/** What a daily value is read for: how many days it must reach, and what it may be. */
export interface DailyNeed {
  readonly dimension: Dimension;
  readonly days: number;
  readonly low?: number;
  readonly high?: number;
}

/** Where the values of a daily value stand. */
export interface DailyPlaces {
  /** The list, where it may not reach far enough. */
  readonly list: Path;
  /** One value, by index. */
  value(index: number): Path;
  /** Said beside a value that is out of range. */
  note?(index: number): string;
  /** Writes a bound, given in the internal unit, as the field has it; absent: in the internal unit. */
  readonly bound?: (value: number) => string;
}

/** Months in a year. */
const months = 12;

/** What is wrong with how many values a list of a kind has, if anything. */
export function listProblem(
  kind: 'monthly' | 'daily',
  count: number,
): { readonly problem: string; readonly expected: string } | undefined {
  if (kind === 'monthly' && count !== months)
    return { problem: 'not twelve values', expected: 'January to December' };
  return count === 0
    ? { problem: 'an empty list', expected: 'one value for each day of the run' }
    : undefined;
}

/** Whether daily values are within their range and reach to the end of the run; a fault where they do not. */
export function checkDaily(
  report: Report,
  kind: 'constant' | 'monthly' | 'daily',
  values: readonly number[],
  { dimension, days, low = -Infinity, high = Infinity }: DailyNeed,
  places: DailyPlaces,
): boolean {
  const outside = values.findIndex((value) => !(value >= low && value <= high));
  if (outside >= 0) {
    const bound = places.bound ?? ((value: number): string => formatQuantity(value, dimension));
    report.fault(places.value(outside), `out of range${places.note?.(outside) ?? ''}`, {
      expected: high === Infinity ? `${bound(low)} or more` : `${bound(low)} to ${bound(high)}`,
    });
    return false;
  }
  if (kind !== 'daily' || values.length >= days) return true;
  report.fault(places.list, 'fewer days than the run', {
    got: String(values.length),
    expected: `at least ${Math.ceil(days)}`,
  });
  return false;
}

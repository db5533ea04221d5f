import { monthOf } from '../base/calendar.js';
import type { DailyValue } from './scenario.js';

/** Days for which daily values of unlike kinds are put together. */
export interface Span {
  readonly startDate: string;
  readonly days: number;
}

/**
 * Daily values worked out from others, day by day: as plain as the least plain of them, so that two monthly values make
 * a monthly one.
 */
export function combined<const Given extends readonly DailyValue[]>(
  given: Given,
  work: (...values: { [K in keyof Given]: number }) => number,
  { startDate, days }: Span,
): DailyValue {
  const at = (month: number, day: number): number =>
    work(...(given.map((value) => valueInMonth(value, month, day)) as { [K in keyof Given]: number }));
  if (given.every(({ kind }) => kind === 'constant')) return { kind: 'constant', value: at(0, 0) };
  if (given.every(({ kind }) => kind !== 'daily'))
    return { kind: 'monthly', values: Array.from({ length: 12 }, (_, month) => at(month, 0)) };
  const count = Math.max(1, Math.ceil(days));
  return {
    kind: 'daily',
    values: Array.from({ length: count }, (_, day) => at(monthOf(startDate, day), day)),
  };
}

/**
 * Value on a day of the run, in the unit of the list; a daily list goes on with its last value.
 * @param value daily values, in any unit
 * @param day days since the start
 */
export function valueOn(value: DailyValue, startDate: string, day: number): number {
  return valueInMonth(value, value.kind === 'monthly' ? monthOf(startDate, day) : 0, day);
}

/** The same with the month (0-11) of the day known. */
export function valueInMonth(value: DailyValue, month: number, day: number): number {
  switch (value.kind) {
    case 'constant':
      return value.value;
    case 'monthly':
      return value.values[month];
    case 'daily':
      return value.values[Math.min(day, value.values.length - 1)];
  }
}

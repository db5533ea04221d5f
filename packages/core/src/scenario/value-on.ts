import { monthOf } from '../base/calendar.js';
import type { DailyValue } from './scenario.js';

/** Value on a day of the run; a daily list goes on with its last value. */
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

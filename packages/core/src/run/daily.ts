import type { DailyValue } from '../scenario/scenario.js';

/** Month (0-11) of each day of a run that starts on an ISO date. */
function monthOf(startDate: string, day: number): number {
  const [year, month, date] = startDate.split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, date + day)).getUTCMonth();
}

/** Value on a day of the run; a daily list goes on with its last value. */
export function valueOn(value: DailyValue, startDate: string, day: number): number {
  switch (value.kind) {
    case 'constant':
      return value.value;
    case 'monthly':
      return value.values[monthOf(startDate, day)];
    case 'daily':
      return value.values[Math.min(day, value.values.length - 1)];
  }
}

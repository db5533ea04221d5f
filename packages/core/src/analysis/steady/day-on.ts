import { InputError } from '../../errors.js';
import type { Scenario } from '../../scenario/scenario.js';
import { calendarDays } from '../../calendar.js';
import { parseQuantity } from '../../units.js';

/**
 * The whole day of a run that a text names: a time after the start such as `90 d`, or a date.
 * @param where what to name in a fault, such as an option
 * @throws InputError where it names no day, or one before the start
 */
export function dayOn(text: string, { startDate }: Pick<Scenario, 'startDate'>, where: string): number {
  const expected = 'a time after the start such as "30 d", or a date such as 2026-03-01';
  const fault = (problem: string): InputError =>
    new InputError([{ file: where, got: JSON.stringify(text), problem, expected }]);
  if (/^\d{4}-\d/.test(text)) {
    const date = calendarDays(text);
    if (date === undefined) throw fault('no such date');
    const day = Math.floor(date - (calendarDays(startDate) ?? Number.NaN));
    if (day < 0) throw fault(`before the start, ${startDate}`);
    return day;
  }
  const answer = parseQuantity(text, 'time');
  if ('problem' in answer) throw fault(answer.problem);
  return Math.floor(answer.value);
}

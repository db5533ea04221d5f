import type { Fault } from '../../errors.js';
import type { Scenario } from '../../scenario/scenario.js';
import { calendarDays } from '../../calendar.js';
import { parseQuantity } from '../../units.js';
import type { PhrasePart } from './phrase.js';

/** The part of a run that a measure looks at, and the time over which it averages first. */
export interface Window {
  /** d since the start. */
  readonly from: number;
  /** d; absent: the end of the run. */
  readonly to?: number;
  /** d; 0: not averaged. */
  readonly averaging: number;
}

type Clock = Pick<Scenario, 'days' | 'startDate'>;

/** Reads a time such as `30 d`. */
function timeOf(words: string, joint: string): number | Fault {
  const answer = parseQuantity(words, 'time');
  if ('value' in answer) return answer.value;
  return { got: words === '' ? `nothing after ${joint}` : words, ...answer };
}

/** Reads a time after the start or a date. */
function dayOf(words: string, joint: string, clock: Clock): number | Fault {
  if (!/^\d{4}-\d/.test(words)) return timeOf(words, joint);
  const day = calendarDays(words);
  if (day === undefined)
    return { got: words, problem: 'no such date', expected: 'a date such as 2026-03-01' };
  return day - (calendarDays(clock.startDate) ?? 0);
}

/**
 * Reads the joining words `averaged TIME`, `from WHEN` and `to WHEN` against the clock of a run.
 * @returns the window, and all that is wrong with it
 */
export function windowOf(
  parts: readonly PhrasePart[],
  clock: Clock,
): { readonly window: Window; readonly faults: readonly Fault[] } {
  const faults: Fault[] = [];
  const read = (joint: 'averaged' | 'from' | 'to'): number | undefined => {
    const part = parts.find((each) => each.joint === joint);
    if (part === undefined) return undefined;
    const found = joint === 'averaged' ? timeOf(part.words, joint) : dayOf(part.words, joint, clock);
    if (typeof found === 'number') return found;
    faults.push(found);
    return undefined;
  };
  const averaging = read('averaged') ?? 0;
  const from = read('from') ?? 0;
  const to = read('to');
  const end = to ?? clock.days;
  if (from < 0 || from > clock.days || end > clock.days || end < 0) {
    faults.push({
      got: `${from} d to ${end} d`,
      problem: 'outside the run',
      expected: `from 0 to ${clock.days} d`,
    });
  } else if (end <= from) {
    faults.push({ got: `${from} d to ${end} d`, problem: 'the end does not come after the beginning' });
  } else if (averaging > end - from) {
    faults.push({
      got: `${averaging} d`,
      problem: 'averaged over longer than what is looked at',
      expected: `at most ${end - from} d`,
    });
  }
  return { window: { from, averaging, ...(to === undefined ? {} : { to }) }, faults };
}

import { CLOSE, disturbing } from '../run/close-look.js';
import type { Run, RunEvent } from '../run/run.js';
import type { PlacedLimit } from './limit-check.js';
import { limitCourses, type LimitCourse } from './limits.js';
import { isRoutine } from './routine.js';

/** A limit that was passed some time after an event. */
export interface PassedAfter extends Pick<
  PlacedLimit,
  'id' | 'quantity' | 'direction' | 'value' | 'unit' | 'whom' | 'place' | 'harm'
> {
  /** h after the event. */
  readonly hours: number;
}

/** Something that was done or happened, and how long each limit was held after it. */
export interface AfterEvent {
  /** d since the start. */
  readonly time: number;
  /** What happened at that instant: a power cut is one event of every pump and every aeration. */
  readonly events: readonly RunEvent[];
  /** h over which it was looked at: three days, or to the end of the run. */
  readonly looked: number;
  /** Limits for fish that were held at the event and passed within that time, the soonest first. */
  readonly passed: readonly PassedAfter[];
}

/** Harm of limits that are told. */
const told: ReadonlySet<string> = new Set(['lethal', 'harmful', 'uncomfortable']);

/** Texts of events that put right what another had stopped. */
const puttingRight = /^(on|open)\b/;

/** Kinds that keep a system going: of what goes wrong after them and after a later stop, the stop is told. */
const upkeep: ReadonlySet<string> = new Set([
  ...['dose', 'drain-solids', 'stock', 'feed', 'change-water', 'cart-water', 'source-water'],
]);

const stops = (events: readonly RunEvent[]): boolean => events.some(({ kind }) => !upkeep.has(kind));

/** When means that were within a limit at a time first pass it, d; undefined: not before an end, or passed already. */
function crossing(
  { limit, times, means, matters }: LimitCourse,
  from: number,
  to: number,
): number | undefined {
  const sign = limit.direction === 'above' ? 1 : -1;
  const excess = (i: number): number => (matters(i) ? sign * (means[i] - limit.value) : Number.NaN);
  const after = times.findIndex((time) => time > from);
  if (after < 1 || excess(after - 1) > 0) return undefined;
  for (let i = after; i < times.length && times[i] <= to; i++) {
    const now = excess(i);
    if (!(now > 0)) continue;
    const was = excess(i - 1);
    const share = Number.isNaN(was) ? 1 : was / (was - now);
    return Math.max(from, times[i - 1] + share * (times[i] - times[i - 1]));
  }
  return undefined;
}

/**
 * How long after each event every limit for fish was held, so that "how long have I got" has an answer: power cuts,
 * stops, stock, doses, drained solids, water changes and what else disturbs. What comes again and again alike is routine
 * and left out, and so is what puts right what was stopped; what a later stop came before is told of the stop. Dated by close samples (`between` of the run), to a quarter
 * of an hour in the first hours. A design aid: watch your fish, not the clock.
 */
export function afterEvents(run: Run): readonly AfterEvent[] {
  const { samples } = run;
  const end = samples[samples.length - 1].time;
  const groups = new Map<number, RunEvent[]>();
  for (const event of run.events) {
    if (!disturbing.has(event.kind) || isRoutine(run, event) || puttingRight.test(event.text)) continue;
    groups.set(event.time, [...(groups.get(event.time) ?? []), event]);
  }
  if (groups.size === 0) return [];
  const courses = limitCourses(run).filter(({ limit }) => told.has(limit.harm));
  const stopped = [...groups].flatMap(([time, events]) => (stops(events) ? [time] : []));
  return [...groups].flatMap(([time, events]): AfterEvent[] => {
    const until = Math.min(time + CLOSE, end);
    if (!(until > time)) return [];
    const passed = courses.flatMap((course): PassedAfter[] => {
      const at = crossing(course, time, until);
      if (at === undefined || stopped.some((stop) => stop > time && stop <= at)) return [];
      const { id, quantity, direction, value, unit, whom, harm } = course.limit;
      return [
        { id, quantity, direction, value, unit, whom, harm, place: course.place, hours: (at - time) * 24 },
      ];
    });
    return [{ time, events, looked: (until - time) * 24, passed: passed.sort((a, b) => a.hours - b.hours) }];
  });
}

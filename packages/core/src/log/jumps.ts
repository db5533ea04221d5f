import { group, median } from 'd3-array';
import { daysBetween } from '../base/calendar.js';
import type { LogReading, WaterLog } from './water-log.js';

/** A fall of nitrate that no plant or film makes: what may have been a water change that nobody wrote down. */
export interface Jump {
  readonly vessel: string;
  /** Last date before it, and first after it. */
  readonly before: string;
  readonly after: string;
  /** Nitrate before, g m-3. */
  readonly from: number;
  /** Nitrate after, g m-3. */
  readonly to: number;
  /** Share of the water that would have been changed, with water that holds no nitrate. */
  readonly share: number;
  /** The action that the map would take, as JSON: the water that came in is to be named. */
  readonly line: string;
}

/** Readings on each side that tell a jump, their longest time apart, d, and the least fall: common sense [P]. */
const told = { each: 3, span: 21, gap: 10, fall: 0.28 } as const;

/** Whether one reading surely lies below another. */
const surelyBelow = (a: LogReading, b: LogReading): boolean =>
  a.high <= b.low || (a.high < b.value && a.value < b.low);

function jumpAt(own: readonly LogReading[], i: number): Jump | undefined {
  const before = own.slice(i - told.each, i);
  const after = own.slice(i, i + told.each);
  if (before.length < told.each || after.length < told.each) return undefined;
  const [last, first] = [before[before.length - 1], after[0]];
  if (daysBetween(before[0].date, after[after.length - 1].date) > 2 * told.span) return undefined;
  const days = daysBetween(last.date, first.date);
  if (days > told.gap || days < 0) return undefined;
  const apart = before.flatMap((b) => after.map((a) => surelyBelow(a, b)));
  // Eight of the nine pairs: one reading may be spoilt.
  if (apart.filter(Boolean).length < apart.length - 1) return undefined;
  const [from, to] = [before, after].map((side) => median(side, ({ value }) => value) ?? 0);
  const share = 1 - to / from;
  if (!(share >= told.fall)) return undefined;
  const percent = Math.round(share * 20) * 5;
  const line = `{ at: ${first.date}, change-water: { vessel: ${first.vessel}, share: ${percent} %, water: WATER } }`;
  return { vessel: first.vessel, before: last.date, after: first.date, from, to, share, line };
}

/** Falls of nitrate within days, told from the readings alone; what the log itself says was changed is left out. */
export function jumpsIn(log: WaterLog): readonly Jump[] {
  const changed = [...log.actions.map(({ line }) => line), ...log.added].filter((line) =>
    line.includes('change-water'),
  );
  const dates = changed.flatMap((line) => /\d{4}-\d{2}-\d{2}/.exec(line) ?? []);
  const nitrate = log.readings.filter(({ reads }) => reads === 'nitrate');
  return [...group(nitrate, ({ vessel }) => vessel).values()].flatMap((all) => {
    const own = [...all].sort((a, b) => (a.date === b.date ? a.hour - b.hour : a.date < b.date ? -1 : 1));
    const found = own.flatMap((_, i) => jumpAt(own, i) ?? []);
    const known = ({ before, after }: Jump): boolean =>
      dates.some((date) => daysBetween(before, date) >= -1 && daysBetween(date, after) >= -1);
    // Neighbours tell of the same fall: the steepest stands for them.
    return found
      .filter((jump) => !known(jump))
      .filter((jump) =>
        found.every(
          (other) =>
            other === jump ||
            Math.abs(daysBetween(other.after, jump.after)) > told.gap ||
            other.share < jump.share ||
            (other.share === jump.share && other.after > jump.after),
        ),
      );
  });
}

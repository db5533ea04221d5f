import * as Plot from '@observablehq/plot';
import { type Display, plainDisplay } from '../display/display.js';
import type { Maker } from './document.js';

const dayLength = 86_400_000;

/** A tick of an axis over time: its day of the run, and its date in words. */
export interface DateTick {
  readonly day: number;
  readonly text: string;
}

/** Longest time that is counted in days rather than in months, d. */
const mostDays = 70;

/** Least whole step of some that leaves at most so many ticks. */
function stepOf(count: number, steps: readonly number[], most: number): number {
  return steps.find((step) => count / step <= most) ?? steps[steps.length - 1];
}

function dayTicks(
  start: number,
  [from, to]: readonly [number, number],
  most: number,
  { months, words }: Display,
): readonly DateTick[] {
  const step = stepOf(to - from, [1, 2, 5, 7, 14], most);
  const first = Math.ceil(from);
  return Array.from({ length: Math.floor((to - first) / step) + 1 }, (_, i) => {
    const date = new Date(start + (first + i * step) * dayLength);
    const text = words.verdict.date(date.getUTCDate(), months[date.getUTCMonth()]);
    return { day: first + i * step, text };
  });
}

function monthTicks(
  start: number,
  [from, to]: readonly [number, number],
  most: number,
  { months }: Display,
): readonly DateTick[] {
  const ticks: (DateTick & { readonly month: number })[] = [];
  const first = new Date(start + from * dayLength);
  for (let i = 0; ; i += 1) {
    const then = Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + i, 1);
    const day = (then - start) / dayLength;
    if (day > to) break;
    const date = new Date(then);
    const [year, month] = [date.getUTCFullYear(), date.getUTCMonth()];
    const text = month === 0 ? `${months[0]} ${String(year % 100).padStart(2, '0')}` : months[month];
    if (day >= from) ticks.push({ day, text, month: year * 12 + month });
  }
  const step = stepOf(ticks.length, [1, 2, 3, 6, 12, 24, 60, 120], most);
  return ticks.filter(({ month }) => month % step === 0);
}

/**
 * Ticks of an axis over days of a run that began on a date, `yyyy-mm-dd`: days of the month of a short time, the firsts of
 * months of a long one.
 * @param most ticks that have room side by side
 */
export function dateTicks(
  startDate: string,
  days: readonly [number, number],
  most: number,
  display: Display = plainDisplay,
): readonly DateTick[] {
  const start = Date.parse(`${startDate}T00:00:00Z`);
  return days[1] - days[0] <= mostDays
    ? dayTicks(start, days, most, display)
    : monthTicks(start, days, most, display);
}

/** Most ticks with dates of the pictures of a report. */
const mostTicks = 5;

/** The lower axis of a picture over the days of a run: with dates where it is known when it began. */
export function dateAxis(
  { display }: Maker,
  startDate: string | undefined,
  days: readonly [number, number],
  options: Plot.AxisXOptions,
): Plot.Markish {
  if (startDate === undefined) return Plot.axisX({ ticks: mostTicks, tickSize: 4, label: null, ...options });
  const ticks = dateTicks(startDate, days, mostTicks, display);
  return Plot.axisX(
    ticks.map(({ day }) => day),
    {
      tickSize: 4,
      label: null,
      tickFormat: (day: number) => ticks.find((tick) => tick.day === day)?.text ?? '',
      ...options,
    },
  );
}

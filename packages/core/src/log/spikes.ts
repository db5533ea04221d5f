// Reads numbers as: reading of a log
import { group, median } from 'd3-array';
import { daysBetween } from '../base/calendar.js';
import { hypot } from '../base/trigonometry.js';
import type { Parameters } from '../library/parameters.js';
import type { LogReading, Oddity } from './water-log.js';

/** Readings on each side that a spike is told by, within so many days; how far it stands out, and they lie apart, in errors of the kit. */
const told = { each: 2, days: 14, out: 8, apart: 4 } as const;

/** Readings that stand far out from those before and after, which agree: slips of the pen that no bound shows. They are kept. */
export function spikesIn(readings: readonly LogReading[], parameters: Parameters): readonly Oddity[] {
  return [...group(readings, ({ reads, vessel }) => `${reads}|${vessel}`).values()].flatMap((all) => {
    const [{ reads }] = all;
    const absolute = `log.${reads}.error-absolute`;
    if (!parameters.has(absolute)) return [];
    const relative = `log.${reads}.error-relative`;
    const share = parameters.has(relative) ? parameters.value(relative) : 0;
    const own = [...all].sort((a, b) => (a.date === b.date ? a.hour - b.hour : a.date < b.date ? -1 : 1));
    return own.flatMap((reading, i): Oddity[] => {
      const near = (side: readonly LogReading[]): readonly LogReading[] =>
        side.filter(({ date }) => Math.abs(daysBetween(reading.date, date)) <= told.days);
      const before = near(own.slice(Math.max(0, i - told.each), i));
      const after = near(own.slice(i + 1, i + 1 + told.each));
      if (before.length < told.each || after.length < told.each) return [];
      const values = [...before, ...after].map(({ value }) => value);
      const middle = median(values) ?? 0;
      const error = hypot(parameters.value(absolute), share * Math.abs(middle));
      const widths = [...before, ...after].map(({ low, high }) =>
        Number.isFinite(high - low) ? high - low : 0,
      );
      const unit = hypot(error, Math.max(...widths) / 2);
      if (Math.max(...values) - Math.min(...values) > told.apart * unit) return [];
      if (Math.abs(reading.value - middle) <= told.out * unit) return [];
      const around = [...before, ...after].map(({ text }) => text).join(', ');
      const problem = `stands out from those around it (${around})`;
      return [
        {
          row: reading.row,
          column: reading.column,
          text: reading.text,
          problem,
          done: 'kept: look whether it is a slip',
        },
      ];
    });
  });
}

// Reads numbers as: reading of a log
import { group, median } from 'd3-array';
import { daysBetween } from '../base/calendar.js';
import { hypot } from '../base/trigonometry.js';
import type { Parameters } from '../library/parameters.js';
import { kitScale } from './kit-scale.js';
import type { LogReading, Oddity } from './water-log.js';

/** Readings on each side that a spike is told by, within so many days; how far it stands out, and they lie apart, in errors of the kit. */
const told = { each: 2, days: 14, out: 8, apart: 4 } as const;

/** Whether a reading stands out from those around it, which agree, on a scale that counts errors of the kit. */
function standsOut(
  reading: LogReading,
  among: readonly LogReading[],
  scale: (value: number) => number,
): boolean {
  const values = among.map(({ value }) => scale(value));
  const widths = among.map(({ low, high }) => (Number.isFinite(high - low) ? scale(high) - scale(low) : 0));
  const unit = hypot(1, Math.max(...widths) / 2);
  const apart = Math.max(...values) - Math.min(...values);
  return (
    apart <= told.apart * unit && Math.abs(scale(reading.value) - (median(values) ?? 0)) > told.out * unit
  );
}

/** Readings that stand far out from those before and after, which agree: slips of the pen that no bound shows. They are kept. */
export function spikesIn(readings: readonly LogReading[], parameters: Parameters): readonly Oddity[] {
  return [...group(readings, ({ reads, vessel }) => `${reads}|${vessel}`).values()].flatMap((all) => {
    const [{ reads }] = all;
    const absolute = `log.${reads}.error-absolute`;
    if (!parameters.has(absolute)) return [];
    const relative = `log.${reads}.error-relative`;
    const share = parameters.has(relative) ? parameters.value(relative) : 0;
    const deviation = (value: number): number => hypot(parameters.value(absolute), share * value);
    // On the scale of the kit a slip downwards stands out as one upwards does, where the error is a share.
    const scale = kitScale({ deviation });
    const own = [...all].sort((a, b) => (a.date === b.date ? a.hour - b.hour : a.date < b.date ? -1 : 1));
    return own.flatMap((reading, i): Oddity[] => {
      const near = (side: readonly LogReading[]): readonly LogReading[] =>
        side.filter(({ date }) => Math.abs(daysBetween(reading.date, date)) <= told.days);
      const before = near(own.slice(Math.max(0, i - told.each), i));
      const after = near(own.slice(i + 1, i + 1 + told.each));
      if (before.length < told.each || after.length < told.each) return [];
      const among = [...before, ...after];
      const middle = median(among, ({ value }) => value) ?? 0;
      const plain = (value: number): number => value / deviation(middle);
      if (!standsOut(reading, among, plain) && !standsOut(reading, among, (value) => scale.to(value)))
        return [];
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

// What stands under the courses of a report and is read out in place of them.
import type { SeriesBands } from '@leat/core';
import type { Course, CourseLine } from '@leat/view/pictures';
import { type DayName, shown } from '@leat/view/text';
import { extreme } from '../commands/shared/key-quantities.js';

function lineText({ name, values }: CourseLine, time: readonly number[], unit: string, on: DayName): string {
  const low = extreme(values, (a, b) => a < b);
  const high = extreme(values, (a, b) => a > b);
  if (low < 0) return `${name}: no values`;
  const [start, end] = [values[0], values[values.length - 1]];
  const in_ = unit === '' ? '' : ` ${unit}`;
  return (
    `${name}: ${shown(start)} at the start, ${shown(end)}${in_} at the end; lowest ${shown(values[low])} on ` +
    `${on(time[low])}, highest ${shown(values[high])} on ${on(time[high])}`
  );
}

/** The heaviest batch of a crop, and when. */
function heaviestText({ time, lines }: Course, unit: string, on: DayName): string {
  const tops = lines.map(({ name, values }) => {
    const at = extreme(values, (a, b) => a > b);
    return { name, at, value: at < 0 ? 0 : values[at] };
  });
  const [first, ...others] = tops;
  const top = others.reduce((best, each) => (each.value > best.value ? each : best), first);
  const count = lines.length === 1 ? 'one batch' : `${lines.length} batches`;
  return top.value > 0
    ? `${count}; the heaviest ${shown(top.value)} ${unit} on ${on(time[top.at])}`
    : `${count}; nothing stood`;
}

/** A course in words: start, end, lowest and highest of each line, and the bounds drawn in. */
export function courseText(course: Course, unit: string, on: DayName): string {
  const { time, lines, limits } = course;
  if (course.batches === true) return `${heaviestText(course, unit, on)}.`;
  const bounds = limits.map(({ text, value }) => `${text} ${shown(value)}`);
  return [
    ...lines.map((line) => `${lineText(line, time, unit, on)}.`),
    ...(bounds.length === 0 ? [] : [`Drawn in: ${bounds.join('; ')}.`]),
  ].join(' ');
}

/** The bands of a course at its end, in words. */
export function bandText({ median, band50, band90 }: SeriesBands, unit: string): string {
  const end = median.length - 1;
  const between = ([low, high]: SeriesBands['band50']): string =>
    `${shown(low[end])} and ${shown(high[end])}`;
  const in_ = unit === '' ? '' : ` ${unit}`;
  return (
    `Of many runs with drawn numbers the median is ${shown(median[end])}${in_} at the end; half lie between ` +
    `${between(band50)}, nine tenths between ${between(band90)}.`
  );
}

/** How far the outer band reaches where a picture cuts it at its frame; '' where all of it is drawn. */
export function cutText(
  { band90: [low, high] }: SeriesBands,
  [bottom, top]: readonly [number, number],
  unit: string,
): string {
  const known = (values: ArrayLike<number>): readonly number[] =>
    Array.from(values).filter((value) => !Number.isNaN(value));
  const lowest = known(low).reduce((least, value) => Math.min(least, value), Infinity);
  const highest = known(high).reduce((most, value) => Math.max(most, value), -Infinity);
  const in_ = unit === '' ? '' : ` ${unit}`;
  const parts = [
    ...(highest > top ? [`up to ${shown(highest)}${in_}`] : []),
    ...(lowest < bottom ? [`down to ${shown(lowest)}${in_}`] : []),
  ];
  return parts.length === 0 ? '' : `the outer band reaches ${parts.join(' and ')}, beyond the picture`;
}

/** The highest value and when, in a few words; for one line only. */
export function peakText(course: Course, unit: string, on: DayName): string {
  const { time, lines } = course;
  if (course.batches === true) return heaviestText(course, unit, on);
  if (lines.length !== 1) return '';
  const [{ values }] = lines;
  const low = extreme(values, (a, b) => a < b);
  const high = extreme(values, (a, b) => a > b);
  if (low < 0) return 'no values';
  const in_ = unit === '' ? '' : ` ${unit}`;
  if (shown(values[low]) === shown(values[high])) return `steady at ${shown(values[high])}${in_}`;
  return `${shown(values[low])} on ${on(time[low])} to ${shown(values[high])}${in_} on ${on(time[high])}`;
}

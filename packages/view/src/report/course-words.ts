// What stands under the courses of a report and is read out in place of them.
import type { SeriesBands } from '@leat/core';
import type { Course, CourseLine } from '../pictures/index.js';
import type { DayName, Display } from '../text/index.js';
import { extreme } from '../text/index.js';

/** What a course is told with: its unit, names of days, and the display. */
export interface CourseTelling {
  /** As it is shown; empty for none. */
  readonly unit: string;
  readonly on: DayName;
  readonly display: Display;
}

const withUnit = (value: string, unit: string): string => (unit === '' ? value : `${value} ${unit}`);

function lineText(
  { name, values }: CourseLine,
  time: readonly number[],
  { unit, on, display }: CourseTelling,
): string {
  const words = display.words.report.courses;
  const low = extreme(values, (a, b) => a < b);
  const high = extreme(values, (a, b) => a > b);
  if (low < 0) return words.noValues(name);
  const told = (at: number): string => display.number(values[at]);
  return words.line(
    name,
    told(0),
    withUnit(told(values.length - 1), unit),
    words.on(told(low), on(time[low])),
    words.on(told(high), on(time[high])),
  );
}

/** The heaviest batch of a crop, and when. */
function heaviestText({ time, lines }: Course, { unit, on, display }: CourseTelling): string {
  const words = display.words.report.courses;
  const tops = lines.map(({ name, values }) => {
    const at = extreme(values, (a, b) => a > b);
    return { name, at, value: at < 0 ? 0 : values[at] };
  });
  const [first, ...others] = tops;
  const top = others.reduce((best, each) => (each.value > best.value ? each : best), first);
  const count = words.batches(lines.length);
  return top.value > 0
    ? words.heaviest(count, `${display.number(top.value)} ${unit}`, on(time[top.at]))
    : words.nothingStood(count);
}

/** A course in words: start, end, lowest and highest of each line, and the bounds drawn in. */
export function courseText(course: Course, telling: CourseTelling): string {
  const { time, lines, limits } = course;
  const { display } = telling;
  if (course.batches === true) return `${heaviestText(course, telling)}.`;
  const bounds = limits.map(({ text, value }) => `${text} ${display.number(value)}`);
  return [
    ...lines.map((line) => `${lineText(line, time, telling)}.`),
    ...(bounds.length === 0 ? [] : [display.words.report.courses.drawnIn(bounds.join('; '))]),
  ].join(' ');
}

/** The bands of a course at its end, in words. */
export function bandText(
  { median, band50, band90 }: SeriesBands,
  { unit, display }: Omit<CourseTelling, 'on'>,
): string {
  const words = display.words.report.courses;
  const end = median.length - 1;
  const between = ([low, high]: SeriesBands['band50']): string =>
    words.between(display.number(low[end]), display.number(high[end]));
  return words.bandEnd(withUnit(display.number(median[end]), unit), between(band50), between(band90));
}

/** How far the outer band reaches where a picture cuts it at its frame; '' where all of it is drawn. */
export function cutText(
  { band90: [low, high] }: SeriesBands,
  [bottom, top]: readonly [number, number],
  { unit, display }: Omit<CourseTelling, 'on'>,
): string {
  const words = display.words.report.courses;
  const known = (values: ArrayLike<number>): readonly number[] =>
    Array.from(values).filter((value) => !Number.isNaN(value));
  const lowest = known(low).reduce((least, value) => Math.min(least, value), Infinity);
  const highest = known(high).reduce((most, value) => Math.max(most, value), -Infinity);
  const told = (value: number): string => withUnit(display.number(value), unit);
  const parts = [
    ...(highest > top ? [words.upTo(told(highest))] : []),
    ...(lowest < bottom ? [words.downTo(told(lowest))] : []),
  ];
  return parts.length === 0 ? '' : words.cut(display.list(parts));
}

/** The highest value and when, in a few words; for one line only. */
export function peakText(course: Course, telling: CourseTelling): string {
  const { time, lines } = course;
  const { unit, on, display } = telling;
  const words = display.words.report.courses;
  if (course.batches === true) return heaviestText(course, telling);
  if (lines.length !== 1) return '';
  const [{ values }] = lines;
  const low = extreme(values, (a, b) => a < b);
  const high = extreme(values, (a, b) => a > b);
  if (low < 0) return words.noPeak;
  const [least, most] = [display.number(values[low]), display.number(values[high])];
  if (least === most) return words.steady(withUnit(most, unit));
  return words.peak(words.on(least, on(time[low])), words.on(withUnit(most, unit), on(time[high])));
}

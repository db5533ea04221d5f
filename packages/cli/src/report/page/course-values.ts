import type { SeriesBands } from '@leat/core';
import type { Maker } from '../../picture/document.js';
import { day, shown } from '../../render/number.js';
import type { Course, CourseSet } from '../courses.js';
import { folded, table, type Column } from './tables.js';

/** The bands of a course, with their times. */
export type TimedBands = SeriesBands & { readonly time: readonly number[] };

/** Rows of a table beside a picture. */
const rowsShown = 13;

/** One column of numbers. */
interface Numbers {
  readonly name: string;
  readonly time: readonly number[];
  readonly values: ArrayLike<number>;
}

function someTimes(runs: readonly (Course | undefined)[]): readonly number[] {
  const [longest] = runs
    .flatMap((course) => (course ? [course.time] : []))
    .sort((a, b) => b.length - a.length);
  const last = longest.length - 1;
  const steps = Math.min(last, rowsShown - 1);
  const picked = Array.from({ length: steps + 1 }, (_, i) => Math.round((i * last) / Math.max(steps, 1)));
  return [...new Set(picked)].map((i) => longest[i]);
}

function bandNumbers({ time, median, band50, band90 }: TimedBands): readonly Numbers[] {
  return [
    { name: '5 %', time, values: band90[0] },
    { name: '25 %', time, values: band50[0] },
    { name: 'median', time, values: median },
    { name: '75 %', time, values: band50[1] },
    { name: '95 %', time, values: band90[1] },
  ];
}

/** Values of every line of every run on some days, and of the bands where there are any. */
export function courseValues(
  maker: Maker,
  { title, unit, runs }: CourseSet,
  bands: readonly (TimedBands | undefined)[],
  letters: readonly string[],
): HTMLElement {
  const many = letters.length > 1;
  const numbers = runs.flatMap((course, run): Numbers[] => {
    if (course === undefined) return [];
    const banded = bands[run];
    const lines = course.lines.map(({ name, values }) => ({ name, time: course.time, values }));
    return [...lines, ...(banded === undefined ? [] : bandNumbers(banded))].map((each) => ({
      ...each,
      name: many ? `${letters[run]} ${each.name}` : each.name,
    }));
  });
  const columns: Column[] = [
    { name: 'day', number: true },
    ...numbers.map(({ name }) => ({ name, number: true })),
  ];
  const rows = someTimes(runs).map((time) => [
    day(time),
    ...numbers.map((line) => {
      const at = line.time.findIndex((each) => Math.abs(each - time) <= 1e-9);
      return at < 0 ? '' : shown(line.values[at]);
    }),
  ]);
  const caption = `${title}${unit === '' ? '' : `, ${unit}`}, on some days`;
  return folded(maker, 'Values', table(maker, caption, columns, rows));
}

import type { SeriesBands } from '@leat/core';
import {
  type Course,
  type CourseLine,
  coursePicture,
  type CourseSet,
  courseSets,
  domainOf,
  finished,
  type Maker,
  pageColours,
  smallFrame,
} from '@leat/view/pictures';
import { day, shown } from '@leat/view/text';
import { extreme } from '../commands/shared/key-quantities.js';
import { type Column, figure, folded, runTitle, section, table } from './elements.js';
import type { RunSummary } from './run-summary.js';

function lineText({ name, values }: CourseLine, time: readonly number[], unit: string): string {
  const low = extreme(values, (a, b) => a < b);
  const high = extreme(values, (a, b) => a > b);
  if (low < 0) return `${name}: no values`;
  const [start, end] = [values[0], values[values.length - 1]];
  const in_ = unit === '' ? '' : ` ${unit}`;
  return (
    `${name}: ${shown(start)} at the start, ${shown(end)}${in_} at the end; lowest ${shown(values[low])} on day ` +
    `${day(time[low])}, highest ${shown(values[high])} on day ${day(time[high])}`
  );
}

/** A course in words: start, end, lowest and highest of each line, and the bounds drawn in. */
function courseText({ time, lines, limits }: Course, unit: string): string {
  const bounds = limits.map(({ text, value }) => `${text} ${shown(value)}`);
  return [
    ...lines.map((line) => `${lineText(line, time, unit)}.`),
    ...(bounds.length === 0 ? [] : [`Drawn in: ${bounds.join('; ')}.`]),
  ].join(' ');
}

/** The bands of a course at its end, in words. */
function bandText({ median, band50, band90 }: SeriesBands, unit: string): string {
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
function cutText(
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
function peakText({ time, lines }: Course, unit: string): string {
  if (lines.length !== 1) return '';
  const [{ values }] = lines;
  const low = extreme(values, (a, b) => a < b);
  const high = extreme(values, (a, b) => a > b);
  if (low < 0) return 'no values';
  const in_ = unit === '' ? '' : ` ${unit}`;
  if (shown(values[low]) === shown(values[high])) return `steady at ${shown(values[high])}${in_}`;
  return `${shown(values[low])} (day ${day(time[low])}) to ${shown(values[high])}${in_} (day ${day(time[high])})`;
}

/** The bands of a course, with their times. */
type TimedBands = SeriesBands & { readonly time: readonly number[] };

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
function courseValues(
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

function bandsOf({ ensemble }: RunSummary, { series }: Course): TimedBands | undefined {
  const found = ensemble?.series.find(({ name }) => name === series);
  return ensemble === undefined || found === undefined ? undefined : { ...found, time: ensemble.times };
}

function setFigures(
  maker: Maker,
  set: CourseSet,
  runs: readonly RunSummary[],
  bands: readonly (TimedBands | undefined)[],
  horizontal: readonly [number, number],
): readonly HTMLElement[] {
  const drawn = bands.filter((each) => each !== undefined);
  const edges = (of: (band: TimedBands) => readonly Float64Array[]): readonly number[] =>
    drawn.flatMap((band) => of(band).flatMap((edge) => [...edge]));
  const vertical = domainOf(
    set,
    edges(({ median, band50 }) => [median, ...band50]),
    edges(({ band90 }) => band90),
  );
  const [first] = set.runs;
  return set.runs.map((course, i) => {
    const { letter } = runs[i];
    const many = set.runs.length > 1;
    if (course === undefined) return maker.html('p', { class: 'note' }, `${letter} has no such course.`);
    const band = bands[i];
    const svg = coursePicture(maker, {
      course,
      ...(i > 0 && first !== undefined && { before: first }),
      ...(band !== undefined && { bands: band }),
      vertical,
      horizontal,
      colours: pageColours,
      frame: smallFrame,
    });
    const title = `${set.title}${set.unit === '' ? '' : `, ${set.unit}`}${many ? `, ${letter}` : ''}, by day`;
    const sentences = [
      courseText(course, set.unit),
      ...(band === undefined ? [] : [bandText(band, set.unit)]),
    ];
    const cut = band === undefined ? '' : cutText(band, vertical, set.unit);
    const captioned = [peakText(course, set.unit), cut].filter((part) => part !== '').join('; ');
    const picture = finished(maker, svg, { title, description: sentences.join(' ') });
    const caption = many ? [runTitle(maker, letter, captioned)] : [captioned];
    return figure(maker, [picture], caption);
  });
}

function heading(maker: Maker, { title, unit }: CourseSet): HTMLElement {
  return maker.html('h3', {}, title, ' ', maker.html('span', { class: 'unit' }, unit));
}

/** First and last day of all runs. */
export function daysOf(runs: readonly RunSummary[]): readonly [number, number] {
  return [
    Math.min(...runs.map(({ account }) => account.time[0])),
    Math.max(...runs.map(({ account }) => account.time[account.time.length - 1])),
  ];
}

const oneText =
  'Lines are the water of the first fish tank; the shade behind is the lowest and the highest of all vessels. Limits are ' +
  'published means over hours or days and are judged as such in the table of limits. The axis below counts days.';
const manyText =
  'All runs of a row share their scales. The faint dotted line behind is the first run. Lines are the water of the first ' +
  'fish tank; the shade is the lowest and the highest of all vessels. The axis below counts days.';
const bandNote =
  'Where many runs with numbers drawn from their ranges were made, bands stand in place of that shade: the inner holds ' +
  'half of them, the outer nine tenths, and the dotted line is their median. Where the outer band is so wide that it would ' +
  'press the lines together, it ends at the frame, and the words below say how far it reaches.';

/** The courses of what matters, with limits drawn in; several runs side by side on the same scales. */
export function coursesSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const letters = runs.map(({ letter }) => letter);
  const days = daysOf(runs);
  const many = runs.length > 1;
  const sets = courseSets(runs).map((set) => {
    const bands = set.runs.map((course, i) => (course === undefined ? undefined : bandsOf(runs[i], course)));
    const figures = setFigures(maker, set, runs, bands, days);
    const values = courseValues(maker, set, bands, letters);
    if (many)
      return maker.html(
        'div',
        { class: 'set' },
        heading(maker, set),
        maker.html('div', { class: 'runs' }, ...figures),
        values,
      );
    const [only] = figures;
    only.prepend(heading(maker, set));
    only.append(values);
    return only;
  });
  const banded = runs.some(({ ensemble }) => ensemble !== undefined);
  return section(
    maker,
    'courses',
    'How it went, day by day',
    maker.html('p', { class: 'note' }, many ? manyText : oneText, ...(banded ? [` ${bandNote}`] : [])),
    many ? maker.html('div', {}, ...sets) : maker.html('div', { class: 'grid' }, ...sets),
  );
}

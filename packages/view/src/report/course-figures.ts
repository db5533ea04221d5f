import type { SeriesBands } from '@leat/core';
import {
  type Course,
  coursePicture,
  type CourseSet,
  domainOf,
  finished,
  type Maker,
  pageColours,
  panelFrame,
  smallFrame,
} from '../pictures/index.js';
import { dayNames, type Display, quantityOf } from '../text/index.js';
import { bandText, courseText, cutText, peakText } from './course-words.js';
import { troublesOf, troubleText } from './course-troubles.js';
import { dayAndDate } from './dated.js';
import { type Column, figure, folded, runTitle, table } from './elements.js';
import type { RunSummary } from './run-summary.js';

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

function bandNumbers({ time, median, band50, band90 }: TimedBands, { words }: Display): readonly Numbers[] {
  return [
    { name: '5 %', time, values: band90[0] },
    { name: '25 %', time, values: band50[0] },
    { name: words.report.courses.median, time, values: median },
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
  startDate: string,
): HTMLElement {
  const { display } = maker;
  const words = display.words.report;
  const many = letters.length > 1;
  const numbers = runs.flatMap((course, run): Numbers[] => {
    if (course === undefined) return [];
    const banded = bands[run];
    const lines = course.lines.map(({ name, values }) => ({ name, time: course.time, values }));
    return [...lines, ...(banded === undefined ? [] : bandNumbers(banded, display))].map((each) => ({
      ...each,
      name: many ? `${letters[run]} ${each.name}` : each.name,
    }));
  });
  const columns: Column[] = [
    { name: words.day, number: true },
    ...numbers.map(({ name }) => ({ name, number: true })),
  ];
  const rows = someTimes(runs).map((time) => [
    dayAndDate(time, startDate, display),
    ...numbers.map((line) => {
      const at = line.time.findIndex((each) => Math.abs(each - time) <= 1e-9);
      return at < 0 ? '' : display.number(line.values[at]);
    }),
  ]);
  const caption = words.courses.someDays(`${title}${unit === '' ? '' : `, ${unit}`}`);
  return folded(maker, words.values, table(maker, caption, columns, rows), caption);
}

function bandsOf(
  { ensemble, account }: RunSummary,
  { series }: Course,
  display: Display,
): TimedBands | undefined {
  const found = ensemble?.series.find(({ name }) => name === series);
  if (ensemble === undefined || found === undefined || series === undefined) return undefined;
  const unit = account.series.find(({ name }) => name === series)?.unit ?? '1';
  const shown = (values: Float64Array): Float64Array =>
    values.map((value) => display.value(value, unit, quantityOf(series)));
  const both = ([low, high]: SeriesBands['band50']): SeriesBands['band50'] => [shown(low), shown(high)];
  return {
    ...found,
    median: shown(found.median),
    band50: both(found.band50),
    band90: both(found.band90),
    time: ensemble.times,
  };
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
    const { letter, account } = runs[i];
    const { display } = maker;
    const words = display.words.report.courses;
    const on = dayNames(account.startDate, display);
    const many = set.runs.length > 1;
    if (course === undefined) return maker.html('p', { class: 'note' }, words.noCourse(letter));
    const band = bands[i];
    const svg = coursePicture(maker, {
      course,
      ...(i > 0 && first !== undefined && course.batches !== true && { before: first }),
      ...(band !== undefined && { bands: band }),
      vertical,
      horizontal,
      startDate: account.startDate,
      colours: pageColours,
      frame: set.panel === true ? panelFrame : smallFrame,
    });
    const telling = { unit: set.unit, on, display };
    const unit = set.unit === '' ? '' : `, ${set.unit}`;
    const title = words.byDay(`${set.title}${unit}${many ? `, ${letter}` : ''}`);
    const sentences = [courseText(course, telling), ...(band === undefined ? [] : [bandText(band, telling)])];
    const cut = band === undefined ? '' : cutText(band, vertical, telling);
    const captioned = [peakText(course, telling), cut].filter((part) => part !== '').join('; ');
    const picture = finished(maker, svg, { title, description: sentences.join(' ') });
    const caption = many ? [runTitle(maker, letter, captioned)] : [captioned];
    return figure(maker, [picture], caption);
  });
}

function heading(maker: Maker, set: CourseSet, runs: readonly RunSummary[]): readonly HTMLElement[] {
  const { title, unit } = set;
  const troubles = troublesOf(set, runs, maker.display);
  return [
    maker.html('h3', {}, title, ' ', maker.html('span', { class: 'unit' }, unit)),
    ...(troubles.length === 0
      ? []
      : [maker.html('p', { class: 'trouble' }, troubleText(troubles, runs, maker.display))]),
  ];
}

/** First and last day of all runs. */
export function daysOf(runs: readonly RunSummary[]): readonly [number, number] {
  return [
    Math.min(...runs.map(({ account }) => account.time[0])),
    Math.max(...runs.map(({ account }) => account.time[account.time.length - 1])),
  ];
}

/** Courses of one run as a grid, of several in rows on the same scales, each with its heading, mark and values. */
export function courseFigures(
  maker: Maker,
  sets: readonly CourseSet[],
  runs: readonly RunSummary[],
): HTMLElement {
  const letters = runs.map(({ letter }) => letter);
  const days = daysOf(runs);
  const many = runs.length > 1;
  const figures = sets.map((set) => {
    const bands = set.runs.map((course, i) =>
      course === undefined ? undefined : bandsOf(runs[i], course, maker.display),
    );
    const drawn = setFigures(maker, set, runs, bands, days);
    const values = courseValues(maker, set, bands, letters, runs[0].account.startDate);
    const head = heading(maker, set, runs);
    if (many) {
      const row = maker.html('div', { class: set.panel === true ? 'panels' : 'runs' }, ...drawn);
      return maker.html('div', { class: 'set' }, ...head, row, values);
    }
    const [only] = drawn;
    only.prepend(...head);
    only.append(values);
    return only;
  });
  const grid = sets.every(({ panel }) => panel === true) ? 'panels' : 'grid';
  return maker.html('div', many ? {} : { class: grid }, ...figures);
}

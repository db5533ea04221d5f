import { coursePicture, smallFrame } from '../../picture/course-picture.js';
import { pageColours } from '../../picture/colours.js';
import type { Maker } from '../../picture/document.js';
import { finished } from '../../picture/finish.js';
import { domainOf } from '../../picture/scale.js';
import { day, shown } from '../../render/number.js';
import { courseSets, type Course, type CourseSet } from '../courses.js';
import { courseWords, peakWords } from '../course-words.js';
import type { ToldRun } from '../told-run.js';
import { figure, runTitle, section } from './figure.js';
import { folded, table, type Column } from './tables.js';

/** Rows of a table beside a picture. */
const rowsShown = 13;

function someTimes(runs: readonly (Course | undefined)[]): readonly number[] {
  const [longest] = runs
    .flatMap((course) => (course ? [course.time] : []))
    .sort((a, b) => b.length - a.length);
  const last = longest.length - 1;
  const steps = Math.min(last, rowsShown - 1);
  const picked = Array.from({ length: steps + 1 }, (_, i) => Math.round((i * last) / Math.max(steps, 1)));
  return [...new Set(picked)].map((i) => longest[i]);
}

/** Values of every line of every run on some days. */
function valuesTable(
  maker: Maker,
  { title, unit, runs }: CourseSet,
  letters: readonly string[],
): HTMLElement {
  const lines = runs.flatMap((course, run) =>
    course === undefined ? [] : course.lines.map((line) => ({ ...line, run, time: course.time })),
  );
  const columns: Column[] = [
    { name: 'day', number: true },
    ...lines.map(({ name, run }) => ({
      name: letters.length > 1 ? `${letters[run]} ${name}` : name,
      number: true,
    })),
  ];
  const rows = someTimes(runs).map((time) => [
    day(time),
    ...lines.map((line) => {
      const at = line.time.findIndex((each) => Math.abs(each - time) <= 1e-9);
      return at < 0 ? '' : shown(line.values[at]);
    }),
  ]);
  const caption = `${title}${unit === '' ? '' : `, ${unit}`}, on some days`;
  return folded(maker, 'Values', table(maker, caption, columns, rows));
}

function bandsOf({ bands }: ToldRun, course: Course) {
  const found = bands?.series.find(({ name }) => name === course.series);
  return bands === undefined || found === undefined ? undefined : { ...found, time: bands.time };
}

function setFigures(
  maker: Maker,
  set: CourseSet,
  told: readonly ToldRun[],
  horizontal: readonly [number, number],
): readonly HTMLElement[] {
  const bands = set.runs.map((course, i) => (course === undefined ? undefined : bandsOf(told[i], course)));
  const more = bands.flatMap((each) => (each === undefined ? [] : [...each.ninety.low, ...each.ninety.high]));
  const vertical = domainOf(set, more);
  const [first] = set.runs;
  return set.runs.map((course, i) => {
    const { letter } = told[i];
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
    const picture = finished(maker, svg, { title, description: courseWords(course, set.unit) });
    const caption = many
      ? [runTitle(maker, letter, peakWords(course, set.unit))]
      : [peakWords(course, set.unit)];
    return figure(maker, [picture], caption);
  });
}

function heading(maker: Maker, { title, unit }: CourseSet): HTMLElement {
  return maker.html('h3', {}, title, ' ', maker.html('span', { class: 'unit' }, unit));
}

/** First and last day of all runs. */
export function daysOf(told: readonly ToldRun[]): readonly [number, number] {
  return [
    Math.min(...told.map(({ account }) => account.time[0])),
    Math.max(...told.map(({ account }) => account.time[account.time.length - 1])),
  ];
}

const oneWords =
  'Lines are the water of the first fish tank; the shade behind is the lowest and the highest of all vessels. Limits are ' +
  'published means over hours or days and are judged as such in the table of limits. The axis below counts days.';
const manyWords =
  'All runs of a row share their scales. The faint dotted line behind is the first run. Lines are the water of the first ' +
  'fish tank; the shade is the lowest and the highest of all vessels. The axis below counts days.';
const bandWords =
  'Where many runs with numbers drawn from their ranges were made, the darker band holds half of them, the lighter ' +
  'nine tenths, and the dotted line is their median.';

/** The courses of what matters, with limits drawn in; several runs side by side on the same scales. */
export function coursesSection(maker: Maker, told: readonly ToldRun[]): HTMLElement {
  const letters = told.map(({ letter }) => letter);
  const days = daysOf(told);
  const many = told.length > 1;
  const sets = courseSets(told).map((set) => {
    const figures = setFigures(maker, set, told, days);
    const values = valuesTable(maker, set, letters);
    if (many)
      return maker.html(
        'div',
        { class: 'set' },
        heading(maker, set),
        maker.html('div', { class: told.length === 3 ? 'runs three' : 'runs' }, ...figures),
        values,
      );
    const [only] = figures;
    only.prepend(heading(maker, set));
    only.append(values);
    return only;
  });
  const banded = told.some(({ bands }) => bands !== undefined);
  return section(
    maker,
    'courses',
    'How it went, day by day',
    maker.html('p', { class: 'note' }, many ? manyWords : oneWords, ...(banded ? [` ${bandWords}`] : [])),
    many ? maker.html('div', {}, ...sets) : maker.html('div', { class: 'grid' }, ...sets),
  );
}

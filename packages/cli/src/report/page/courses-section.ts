import { coursePicture, smallFrame } from '../../picture/course-picture.js';
import { pageColours } from '../../picture/colours.js';
import type { Maker } from '../../picture/document.js';
import { finished } from '../../picture/finish.js';
import { domainOf } from '../../picture/scale.js';
import { courseSets, type Course, type CourseSet } from '../courses.js';
import { bandWords, courseWords, cutWords, peakWords } from '../course-words.js';
import type { ToldRun } from '../told-run.js';
import { courseValues, type TimedBands } from './course-values.js';
import { figure, runTitle, section } from './figure.js';

function bandsOf({ ensemble }: ToldRun, { series }: Course): TimedBands | undefined {
  const found = ensemble?.series.find(({ name }) => name === series);
  return ensemble === undefined || found === undefined ? undefined : { ...found, time: ensemble.times };
}

function setFigures(
  maker: Maker,
  set: CourseSet,
  told: readonly ToldRun[],
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
    const words = [courseWords(course, set.unit), ...(band === undefined ? [] : [bandWords(band, set.unit)])];
    const cut = band === undefined ? '' : cutWords(band, vertical, set.unit);
    const captioned = [peakWords(course, set.unit), cut].filter((part) => part !== '').join('; ');
    const picture = finished(maker, svg, { title, description: words.join(' ') });
    const caption = many ? [runTitle(maker, letter, captioned)] : [captioned];
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
const bandNote =
  'Where many runs with numbers drawn from their ranges were made, bands stand in place of that shade: the inner holds ' +
  'half of them, the outer nine tenths, and the dotted line is their median. Where the outer band is so wide that it would ' +
  'press the lines together, it ends at the frame, and the words below say how far it reaches.';

/** The courses of what matters, with limits drawn in; several runs side by side on the same scales. */
export function coursesSection(maker: Maker, told: readonly ToldRun[]): HTMLElement {
  const letters = told.map(({ letter }) => letter);
  const days = daysOf(told);
  const many = told.length > 1;
  const sets = courseSets(told).map((set) => {
    const bands = set.runs.map((course, i) => (course === undefined ? undefined : bandsOf(told[i], course)));
    const figures = setFigures(maker, set, told, bands, days);
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
  const banded = told.some(({ ensemble }) => ensemble !== undefined);
  return section(
    maker,
    'courses',
    'How it went, day by day',
    maker.html('p', { class: 'note' }, many ? manyWords : oneWords, ...(banded ? [` ${bandNote}`] : [])),
    many ? maker.html('div', {}, ...sets) : maker.html('div', { class: 'grid' }, ...sets),
  );
}

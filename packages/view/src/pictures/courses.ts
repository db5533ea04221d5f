import type { LimitResult, RunAccount, SeriesBands } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { boundLabel } from '../text/limits.js';
import { placeOf, plain, quantityOf } from '../text/names.js';
import type { LevelMark, Stand } from './drawn-system.js';
import type { Frame } from './frame.js';
import type { Colours } from './palette.js';

/**
 * A run whose courses are drawn, and where they are known the levels of its reservoir at which something happens and
 * what stands of its crops, batch by batch.
 */
export interface CourseRun {
  readonly account: RunAccount;
  readonly system?: { readonly levels: readonly LevelMark[]; readonly stands: readonly Stand[] };
}

/** A line of a course. */
export interface CourseLine {
  readonly name: string;
  /** In the unit of the course. */
  readonly values: readonly number[];
}

/** A bound drawn into a course. */
export interface CourseLimit {
  readonly value: number;
  readonly direction: 'above' | 'below' | 'mark';
  readonly text: string;
}

/** One quantity of one run as it is drawn. */
export interface Course {
  readonly time: readonly number[];
  readonly lines: readonly CourseLine[];
  /** Lowest and highest of all vessels, where it is drawn for one of several. */
  readonly range?: { readonly low: readonly number[]; readonly high: readonly number[] };
  readonly limits: readonly CourseLimit[];
  /** Its lines are the batches of one crop: thin, of one colour, and labelled together. */
  readonly batches?: boolean;
  /** Name of the one series that is drawn, where it is one: bands of an ensemble go by it. */
  readonly series?: string;
}

/** One quantity of all runs. */
export interface CourseSet {
  readonly title: string;
  /** Such as `nitrite`, as limits name it. */
  readonly quantity: string;
  readonly unit: string;
  /** Whether the axis starts at 0. */
  readonly fromZero: boolean;
  /** Drawn as one small panel of many: what stands of one crop. */
  readonly panel?: boolean;
  /** One for each run; undefined where a run has none. */
  readonly runs: readonly (Course | undefined)[];
}

/** What is drawn of the water of fish, and whether its axis starts at 0. */
const inWater = [
  { quantity: 'tan', fromZero: true },
  { quantity: 'un-ionised-ammonia', fromZero: true },
  { quantity: 'nitrite', fromZero: true },
  { quantity: 'nitrate', fromZero: true },
  { quantity: 'pH', fromZero: false },
  { quantity: 'alkalinity', fromZero: true },
  { quantity: 'oxygen', fromZero: true },
  { quantity: 'chloride', fromZero: true },
] as const;

/** Most lines of one picture; the rest are added up. */
const mostLines = 5;

const found = ({ series }: RunAccount, name: string): RunAccount['series'][number] | undefined =>
  series.find((each) => each.name === name);

/** A factor or shift from the unit of a series to the one it is drawn in. */
type Convert = (value: number) => number;

const shownIn =
  (display: Display, unit: string, quantity = ''): Convert =>
  (value) =>
    display.value(value, unit, quantity);

/** A series in the unit it is drawn in. */
function valuesOf(account: RunAccount, name: string, display: Display): readonly number[] | undefined {
  const series = found(account, name);
  return series === undefined
    ? undefined
    : Array.from(series.values, shownIn(display, series.unit, quantityOf(name)));
}

const unitOf = (account: RunAccount, name: string): string => found(account, name)?.unit ?? '';

/** Lowest and highest of one quantity over all vessels at each time; undefined where only one has it. */
function rangeOf({ series, time }: RunAccount, quantity: string, display: Display): Course['range'] {
  const courses = series
    .filter(({ name }) => quantityOf(name) === quantity)
    .map(({ values, unit }) => Array.from(values, shownIn(display, unit, quantity)));
  if (courses.length < 2) return undefined;
  const known = time.map((_, i) =>
    courses.map((values) => values[i]).filter((value) => !Number.isNaN(value)),
  );
  return {
    low: known.map((values) => Math.min(...values)),
    high: known.map((values) => Math.max(...values)),
  };
}

const isCrop = ({ id }: LimitResult): boolean => id.startsWith('crop.');

/** Whether a limit is drawn: where the laws of the model end only if the run went beyond. */
export const isDrawn = ({ harm, passed }: LimitResult): boolean => harm !== 'domain' || passed;

/** The strictest of some limits; undefined where there are none. */
function strictest(limits: readonly LimitResult[], direction: 'above' | 'below'): LimitResult | undefined {
  const [first, ...others] = limits.filter((limit) => limit.direction === direction);
  if (first === undefined) return undefined;
  return others.reduce((best, limit) => {
    const stricter = direction === 'above' ? limit.value < best.value : limit.value > best.value;
    return stricter ? limit : best;
  }, first);
}

/** The strictest limits on a quantity: for fish where they live, for crops in any vessel; above and below. */
function limitsOn({ limits }: RunAccount, quantity: string, place: string, display: Display): CourseLimit[] {
  const fitting = limits.filter((limit) => limit.quantity === quantity && isDrawn(limit));
  const groups = [
    fitting.filter((limit) => !isCrop(limit) && limit.place === place),
    fitting.filter((limit) => isCrop(limit)),
  ];
  return (['above', 'below'] as const).flatMap((direction) => {
    const found = groups.flatMap((group) => strictest(group, direction) ?? []);
    return [...new Set(found.map(({ value }) => value))].map((value) => {
      const alike = found.filter((limit) => limit.value === value);
      const whom = alike.map((limit) => limit.whom);
      const drawn = display.value(value, alike[0].unit, quantity);
      return { value: drawn, direction, text: boundLabel(direction, whom, display) };
    });
  });
}

/** Vessel whose water is drawn, by the keys of a run. */
function homeOf({ keys }: RunAccount): string | undefined {
  const key = keys.find((name) => quantityOf(name) === 'tan');
  return key === undefined ? undefined : placeOf(key);
}

function waterCourse({ account }: CourseRun, quantity: string, display: Display): Course | undefined {
  const home = homeOf(account);
  if (home === undefined) return undefined;
  const series = `${quantity}@${home}`;
  const values = valuesOf(account, series, display);
  if (values === undefined) return undefined;
  const range = rangeOf(account, quantity, display);
  return {
    time: account.time,
    lines: [{ name: home, values }],
    ...(range !== undefined && { range }),
    limits: limitsOn(account, quantity, home, display),
    series,
  };
}

function levelCourse({ account, system }: CourseRun, display: Display): Course | undefined {
  const series = account.keys.find((name) => quantityOf(name) === 'volume');
  const values = series === undefined ? undefined : valuesOf(account, series, display);
  if (series === undefined || values === undefined) return undefined;
  const limits = (system?.levels ?? []).map(({ value, text }) => ({
    ...{ value: display.value(value, 'm3'), text },
    direction: 'mark' as const,
  }));
  return { time: account.time, lines: [{ name: placeOf(series), values }], limits, series };
}

/** Masses in g as they are drawn: in kg, or what stands for it. */
const inKilograms = (grams: ArrayLike<number>, display: Display): readonly number[] =>
  Array.from(grams, (mass) => display.value(mass / 1000, 'kg'));

/** Lines of one quantity at every place of some keys, kg for g; the smallest of many are added up. */
function stockCourse({ account }: CourseRun, quantity: string, display: Display): Course | undefined {
  const lines = account.keys
    .filter((name) => quantityOf(name) === quantity)
    .map((name) => ({
      name: placeOf(name),
      values: inKilograms(found(account, name)?.values ?? [], display),
    }));
  if (lines.length === 0) return undefined;
  if (lines.length <= mostLines) return { time: account.time, lines, limits: [] };
  const size = ({ values }: CourseLine): number => Math.max(...values);
  const ordered = [...lines].sort((a, b) => size(b) - size(a));
  const rest = ordered.slice(mostLines - 1);
  const values = account.time.map((_, i) => rest.reduce((total, line) => total + line.values[i], 0));
  const others = { name: display.words.pictures.others(rest.length), values };
  return { time: account.time, lines: [...ordered.slice(0, mostLines - 1), others], limits: [] };
}

/** What stands of one crop, kg dry: a line a batch, or all of it where batches are not known (a saved document). */
function standCourse({ account, system }: CourseRun, planting: string, display: Display): Course | undefined {
  const { time } = account;
  const stand = system?.stands.find((each) => each.planting === planting);
  const words = display.words.pictures;
  if (stand !== undefined) {
    const lines = stand.batches.map((values, i) => ({
      name: words.batch(i + 1),
      values: inKilograms(values, display),
    }));
    return { time, lines, limits: [], batches: true };
  }
  const values = found(account, `crop-mass@${planting}`)?.values;
  return values === undefined
    ? undefined
    : { time, lines: [{ name: words.allOfIt, values: inKilograms(values, display) }], limits: [] };
}

/** A small panel for each crop of any run, in the order in which they come. */
function standSets(runs: readonly CourseRun[], display: Display): readonly CourseSet[] {
  const plantings = runs.flatMap(({ account }) =>
    account.keys.filter((name) => quantityOf(name) === 'crop-mass').map(placeOf),
  );
  return [...new Set(plantings)].map((planting) => ({
    title: display.words.pictures.crops(plain(planting, display)),
    ...{ quantity: 'crop-mass', unit: display.unit('kg dry'), fromZero: true, panel: true },
    runs: runs.map((run) => standCourse(run, planting, display)),
  }));
}

function feedCourse({ account }: CourseRun, display: Display): Course | undefined {
  const values = account.keys.includes('feed@system') ? valuesOf(account, 'feed@system', display) : undefined;
  if (values === undefined) return undefined;
  const lines = [{ name: display.words.pictures.allFish, values }];
  return { time: account.time, lines, limits: [], series: 'feed@system' };
}

/** Every quantity that a report draws, those that no run has left out; values in the units they are shown in. */
export function courseSets(
  runs: readonly CourseRun[],
  display: Display = plainDisplay,
): readonly CourseSet[] {
  const { titles } = display.words.pictures;
  const water = inWater.map(({ quantity, fromZero }): CourseSet => {
    const series = runs.map(({ account }) => `${quantity}@${homeOf(account) ?? ''}`);
    return {
      ...{ title: titles[quantity], quantity, fromZero },
      unit: display.unit(unitOf(runs[0].account, series[0]), quantity),
      runs: runs.map((run) => waterCourse(run, quantity, display)),
    };
  });
  const set = (
    quantity: 'volume' | 'feed' | 'fish-mass',
    unit: string,
    courseOf: (run: CourseRun) => Course | undefined,
  ): CourseSet => ({
    ...{ title: titles[quantity], quantity, unit: display.unit(unit), fromZero: true },
    runs: runs.map(courseOf),
  });
  const others = [
    set('volume', 'm³', (run) => levelCourse(run, display)),
    set('feed', 'g/d', (run) => feedCourse(run, display)),
    set('fish-mass', 'kg', (run) => stockCourse(run, 'fish-mass', display)),
  ];
  return [...water, ...others, ...standSets(runs, display)].filter((each) =>
    each.runs.some((course) => course !== undefined),
  );
}

/** What is drawn and on which scales. */
export interface CourseDrawing {
  readonly course: Course;
  /** Line of the first run, faint, behind that of another. */
  readonly before?: Pick<Course, 'time' | 'lines'>;
  readonly bands?: SeriesBands & { readonly time: readonly number[] };
  readonly vertical: Domain;
  /** Days. */
  readonly horizontal: Domain;
  /** Date of day 0, `yyyy-mm-dd`: the axis has dates; without it, days. */
  readonly startDate?: string;
  readonly colours: Colours;
  readonly frame: Frame;
}

/** Lowest and highest value that an axis shows. */
export type Domain = readonly [low: number, high: number];

/** A bound farther away than this share beyond what the values reach is named at the edge, not drawn. */
const nearby = 0.8;

const finite = (values: readonly number[]): number[] => values.filter((value) => Number.isFinite(value));

/** Lowest and highest of all values of some courses; a ghost range counts. */
function reachOf(courses: readonly Course[], more: readonly number[]): Domain {
  let low = Infinity;
  let high = -Infinity;
  const lists = courses.flatMap(({ lines, range }) => [
    ...lines.map(({ values }) => values),
    ...(range === undefined ? [] : [range.low, range.high]),
  ]);
  for (const values of [...lists, more]) {
    for (const value of finite(values)) {
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return low > high ? [0, 1] : [low, high];
}

/** A reach with values that lie far off taken in, as far as what was there keeps half of the whole. */
function widened([low, high]: Domain, far: readonly number[], fromZero: boolean): Domain {
  const [lowest, highest] = reachOf([], [...far, low, high]);
  const span = high - (fromZero ? Math.min(0, low) : low);
  return [Math.max(lowest, low - span), Math.min(highest, high + span)];
}

/**
 * One axis for all runs of a set: all values, bounds that are near, a little air.
 * @param more further values that must fit, such as the inner band
 * @param far values that are taken in as far as they leave the others half of the axis, such as the outer band
 */
export function domainOf(
  { runs, fromZero }: Pick<CourseSet, 'runs' | 'fromZero'>,
  more: readonly number[] = [],
  far: readonly number[] = [],
): Domain {
  const courses = runs.filter((course) => course !== undefined);
  const [low, high] = widened(reachOf(courses, more), far, fromZero);
  const span = fromZero ? Math.max(high, 0) : Math.max(high - low, 0.5);
  const bounds = courses
    .flatMap(({ limits }) => limits.map(({ value }) => value))
    .filter((value) => value <= high + nearby * span && value >= low - nearby * span);
  const top = Math.max(high, ...bounds);
  const bottom = fromZero ? Math.min(0, low) : Math.min(low, ...bounds);
  const reach = top - bottom;
  if (!(reach > 0)) return [bottom, bottom + 1];
  const air = (side: 'above' | 'below'): number =>
    courses.some(({ limits }) =>
      limits.some(({ value }) => (side === 'above' ? value > top || value > 0.97 * top : value < bottom)),
    )
      ? 0.15
      : 0.06;
  return [fromZero ? bottom : bottom - air('below') * reach, top + air('above') * reach];
}

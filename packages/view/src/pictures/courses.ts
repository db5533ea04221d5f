import type { LimitResult, RunAccount, SeriesBands } from '@leat/core';
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

interface Kind {
  readonly title: string;
  readonly quantity: string;
  readonly fromZero: boolean;
}

const inWater: readonly Kind[] = [
  { title: 'Total ammonia (TAN)', quantity: 'tan', fromZero: true },
  { title: 'Free (un-ionised) ammonia', quantity: 'un-ionised-ammonia', fromZero: true },
  { title: 'Nitrite', quantity: 'nitrite', fromZero: true },
  { title: 'Nitrate', quantity: 'nitrate', fromZero: true },
  { title: 'pH', quantity: 'pH', fromZero: false },
  { title: 'Alkalinity', quantity: 'alkalinity', fromZero: true },
  { title: 'Oxygen', quantity: 'oxygen', fromZero: true },
  { title: 'Chloride', quantity: 'chloride', fromZero: true },
];

/** Most lines of one picture; the rest are added up. */
const mostLines = 5;

const valuesOf = ({ series }: RunAccount, name: string): readonly number[] | undefined => {
  const found = series.find((each) => each.name === name);
  return found === undefined ? undefined : Array.from(found.values);
};

const unitOf = ({ series }: RunAccount, name: string): string =>
  series.find((each) => each.name === name)?.unit ?? '';

/** Lowest and highest of one quantity over all vessels at each time; undefined where only one has it. */
function rangeOf({ series, time }: RunAccount, quantity: string): Course['range'] {
  const courses = series.filter(({ name }) => quantityOf(name) === quantity).map(({ values }) => values);
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
function limitsOn({ limits }: RunAccount, quantity: string, place: string): CourseLimit[] {
  const fitting = limits.filter((limit) => limit.quantity === quantity && isDrawn(limit));
  const groups = [
    fitting.filter((limit) => !isCrop(limit) && limit.place === place),
    fitting.filter((limit) => isCrop(limit)),
  ];
  return (['above', 'below'] as const).flatMap((direction) => {
    const found = groups.flatMap((group) => strictest(group, direction) ?? []);
    return [...new Set(found.map(({ value }) => value))].map((value) => {
      const whom = found.filter((limit) => limit.value === value).map((limit) => limit.whom);
      return { value, direction, text: boundLabel(direction, whom) };
    });
  });
}

/** Vessel whose water is drawn, by the keys of a run. */
function homeOf({ keys }: RunAccount): string | undefined {
  const key = keys.find((name) => quantityOf(name) === 'tan');
  return key === undefined ? undefined : placeOf(key);
}

function waterCourse({ account }: CourseRun, quantity: string): Course | undefined {
  const home = homeOf(account);
  if (home === undefined) return undefined;
  const series = `${quantity}@${home}`;
  const values = valuesOf(account, series);
  if (values === undefined) return undefined;
  const range = rangeOf(account, quantity);
  return {
    time: account.time,
    lines: [{ name: home, values }],
    ...(range !== undefined && { range }),
    limits: limitsOn(account, quantity, home),
    series,
  };
}

const marked = ({ value, text }: LevelMark): CourseLimit => ({ value, direction: 'mark', text });

function levelCourse({ account, system }: CourseRun): Course | undefined {
  const series = account.keys.find((name) => quantityOf(name) === 'volume');
  const values = series === undefined ? undefined : valuesOf(account, series);
  if (series === undefined || values === undefined) return undefined;
  const limits = (system?.levels ?? []).map(marked);
  return { time: account.time, lines: [{ name: placeOf(series), values }], limits, series };
}

/** Lines of one quantity at every place of some keys, in thousandths; the smallest of many are added up. */
function stockCourse({ account }: CourseRun, quantity: string): Course | undefined {
  const lines = account.keys
    .filter((name) => quantityOf(name) === quantity)
    .map((name) => ({
      name: placeOf(name),
      values: (valuesOf(account, name) ?? []).map((value) => value / 1000),
    }));
  if (lines.length === 0) return undefined;
  if (lines.length <= mostLines) return { time: account.time, lines, limits: [] };
  const size = ({ values }: CourseLine): number => Math.max(...values);
  const ordered = [...lines].sort((a, b) => size(b) - size(a));
  const rest = ordered.slice(mostLines - 1);
  const values = account.time.map((_, i) => rest.reduce((total, line) => total + line.values[i], 0));
  const others = { name: `${rest.length} others`, values };
  return { time: account.time, lines: [...ordered.slice(0, mostLines - 1), others], limits: [] };
}

/** What stands of one crop, kg dry: a line a batch, or all of it where batches are not known (a saved document). */
function standCourse({ account, system }: CourseRun, planting: string): Course | undefined {
  const { time } = account;
  const stand = system?.stands.find((each) => each.planting === planting);
  const kilograms = (values: readonly number[]): readonly number[] => values.map((value) => value / 1000);
  if (stand !== undefined) {
    const lines = stand.batches.map((values, i) => ({ name: `batch ${i + 1}`, values: kilograms(values) }));
    return { time, lines, limits: [], batches: true };
  }
  const values = valuesOf(account, `crop-mass@${planting}`);
  return values === undefined
    ? undefined
    : { time, lines: [{ name: 'all of it', values: kilograms(values) }], limits: [] };
}

/** A small panel for each crop of any run, in the order in which they come. */
function standSets(runs: readonly CourseRun[]): readonly CourseSet[] {
  const plantings = runs.flatMap(({ account }) =>
    account.keys.filter((name) => quantityOf(name) === 'crop-mass').map(placeOf),
  );
  return [...new Set(plantings)].map((planting) => ({
    title: `Crops: ${plain(planting)}`,
    ...{ quantity: 'crop-mass', unit: 'kg dry', fromZero: true, panel: true },
    runs: runs.map((run) => standCourse(run, planting)),
  }));
}

function feedCourse({ account }: CourseRun): Course | undefined {
  const values = account.keys.includes('feed@system') ? valuesOf(account, 'feed@system') : undefined;
  if (values === undefined) return undefined;
  return { time: account.time, lines: [{ name: 'all fish', values }], limits: [], series: 'feed@system' };
}

/** Every quantity that a report draws, those that no run has left out. */
export function courseSets(runs: readonly CourseRun[]): readonly CourseSet[] {
  const water = inWater.map(({ title, quantity, fromZero }): CourseSet => {
    const series = runs.map(({ account }) => `${quantity}@${homeOf(account) ?? ''}`);
    const unit = unitOf(runs[0].account, series[0]);
    return {
      title,
      quantity,
      unit: unit === quantity ? '' : unit,
      fromZero,
      runs: runs.map((run) => waterCourse(run, quantity)),
    };
  });
  const others: readonly CourseSet[] = [
    { title: 'Water level', quantity: 'volume', unit: 'm³', fromZero: true, runs: runs.map(levelCourse) },
    { title: 'Feed given', quantity: 'feed', unit: 'g/d', fromZero: true, runs: runs.map(feedCourse) },
    {
      title: 'Fish',
      quantity: 'fish-mass',
      unit: 'kg',
      fromZero: true,
      runs: runs.map((run) => stockCourse(run, 'fish-mass')),
    },
  ];
  return [...water, ...others, ...standSets(runs)].filter((set) =>
    set.runs.some((course) => course !== undefined),
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

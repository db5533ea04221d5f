// Reads numbers as: verdict on a fit
import { log, log10 } from '../base/elementary.js';
import { deviate95 } from '../base/normal.js';
import { group, median } from 'd3-array';
import type { Measurable } from '../scenario/scenario.js';
import { measurables, unitOfMeasurable } from '../scenario/measurables.js';
import type { FittedNumber, SpoiltReading } from './diagnostics.js';
import { seriesKey } from './correlated.js';
import type { FitProblem } from './fit-problem.js';
import { type KitScale, kitScale } from '../log/kit-scale.js';
import type { ReadingError } from './reading-loss.js';
import { distanceOf } from './residual-distance.js';
import { follow, goneOn, type Known, likeliest } from './returning.js';
import type { Minimum } from './search.js';

/** What a fit and its readings have of a quantity, in the internal unit. */
export interface Apart {
  readonly reads: Measurable;
  readonly vessel: string;
  readonly unit: string;
  /** What the fit has, in `unit`. */
  readonly fitted: number;
  /** What the readings say is there, in `unit`: less with 5 %. */
  readonly low: number;
  /** More with 5 %. */
  readonly high: number;
}

/** How far off harms: `size` is a factor, a difference in the internal unit, or a number of errors of the kit. */
export interface Harm {
  readonly kind: 'factor' | 'difference' | 'errors';
  readonly size: number;
}

/** Why a fit, or what it says of one quantity, is not to be trusted. */
export type FitFault = {
  /** Whether the fit fails by it; what else is named limits what it is good for. */
  readonly grave: boolean;
} & (
  | {
      readonly kind: 'spoilt';
      /** Share of the readings that is spoilt, 0..1. */
      readonly share: number;
      /** Share that is believed, 0..1. */
      readonly allowed: number;
    }
  | ({ readonly kind: 'today' | 'start' } & Apart)
  | {
      readonly kind: 'course';
      readonly reads: Measurable;
      readonly vessel: string;
      /** Share of the time at which the fit is off by more than `harm`, 0..1. */
      readonly share: number;
      readonly harm: Harm;
    }
  | {
      readonly kind: 'end-of-range';
      readonly name: string;
      /** As fitted, in the unit of the number. */
      readonly value: number;
      /** The end of its range, in the same unit. */
      readonly end: number;
    }
  | {
      readonly kind: 'searches';
      /** Log posterior between the best and the next. */
      readonly apart: number;
    }
);

/** How far a fit is to be trusted with one quantity in one place. */
export interface Trust extends Apart {
  /** Whether it is; undefined where too few readings tell. */
  readonly trusted: boolean | undefined;
  /** By how much it may be off and is to be trusted. */
  readonly harm: Harm;
}

/** A verdict on a fit. */
export interface FitVerdict {
  /** `trusted` in all that was read; `partly`: not in what is named; `failed`: not to be used. */
  readonly verdict: 'trusted' | 'partly' | 'failed';
  readonly trust: readonly Trust[];
  /** The gravest first. */
  readonly faults: readonly FitFault[];
}

/** Bounds of a sound fit: judgment [P]. Those of how far off it may be are of what harms (`harmOf`). */
const bounds = {
  /** Spoilt readings over the share that is believed. */
  spoilt: 3,
  /** Standard deviates of its prior. */
  range: 2.6,
  /** Log posterior between searches, and a share of the number of readings that may come on top. */
  searches: { least: 5, share: 0.03 },
  /** d of first readings, and by how many times what harms the fit may miss them before it fails. */
  start: { days: 14, grave: 2 },
  /** d of last readings, and how many of them are no slips. */
  last: { days: 28, least: 3 },
  /** Readings that tell how far off the model is today, and over the whole log. */
  least: { today: 4, course: 8 },
  /** Kit errors of what harms, where no factor says it. */
  errors: 4,
} as const;

/** What a keeper cannot do with is a factor of this: one step of colour cards, whose values double [P]. */
const harmful = 2;

const nitrogen: readonly Measurable[] = ['ammonia', 'nitrite', 'nitrate'];

/**
 * How far off harms: a factor of 2 in ammonia, nitrite and nitrate, and in the acid of pH (0.3, which about doubles the toxic
 * part of ammonia); else 4 errors of the kit.
 */
function harmIn(reads: Measurable): Harm {
  if (reads === 'pH') return { kind: 'difference', size: log10(harmful) };
  return nitrogen.includes(reads)
    ? { kind: 'factor', size: harmful }
    : { kind: 'errors', size: bounds.errors };
}

/** The same in errors of the kit. */
function harmOf(reads: Measurable, error: Pick<ReadingError, 'deviation'>): number {
  const { kind, size } = harmIn(reads);
  const absolute = error.deviation(0);
  if (kind === 'difference') return size / absolute;
  const one = error.deviation(1);
  const relative = Math.sqrt(Math.max(0, one * one - absolute * absolute));
  return kind === 'factor' && relative > 0 ? log(size) / relative : bounds.errors;
}

/** A series of readings with how far the model is off them, followed as a level that wanders. */
interface Course {
  readonly reads: Measurable;
  readonly vessel: string;
  readonly scale: KitScale;
  readonly harm: number;
  /** At each reading, in the order of time: d, the model in the internal unit, and how far it is off, 0 within the reading. */
  readonly along: readonly { readonly time: number; readonly fitted: number; readonly off: number }[];
  /** The distance to what is there on the last morning. */
  readonly now: Known;
}

/** What of a fit's problem the verdict asks. */
type Judged = Pick<FitProblem, 'observations' | 'days' | 'ahead' | 'parameters' | 'errorOf'>;

/** The model's distance to what readings say of each quantity in each place, slow as such errors are. */
function coursesOf(problem: Judged, predicted: ArrayLike<number>): readonly Course[] {
  const indexed = problem.observations.map((observation, i) => ({ observation, i }));
  const until = problem.days - problem.ahead;
  const all = [...group(indexed, ({ observation }) => seriesKey(observation)).values()];
  const placeOf = (own: (typeof all)[number]): number =>
    measurables.indexOf(own[0].observation.reading.reads);
  all.sort((a, b) => placeOf(a) - placeOf(b));
  return all.map((own): Course => {
    const { reads, vessel } = own[0].observation.reading;
    const error = problem.errorOf(reads);
    const scale = kitScale(error);
    const sorted = own.sort((a, b) => a.observation.time - b.observation.time);
    const off = sorted.map(({ observation: { reading, time }, i }) => {
      const model = scale.to(predicted[i]);
      return { time, low: scale.to(reading.low) - model, high: scale.to(reading.high) - model };
    });
    const spoiling = { share: error.outlierShare, spread: error.outlierSpread };
    const by = likeliest(off, 0, spoiling);
    const { known, time } = follow(off, by, spoiling);
    const along = off.map((each, k) => ({
      time: each.time,
      fitted: predicted[sorted[k].i],
      off: distanceOf(each.low, each.high, 0),
    }));
    const harm = harmOf(reads, error);
    const now = goneOn(known, until - time, by);
    const late = along.filter(({ time: at }) => at >= until - bounds.last.days);
    const level = median(late, (each) => each.off) ?? 0;
    // A series of readings that are all far off is none of slips, though each alone would count as one.
    const row = late.length >= bounds.last.least && Math.abs(level) > harm && Math.abs(now.level) < harm;
    return { reads, vessel, scale, along, harm, now: row ? { level, variance: 1 } : now };
  });
}

/** What the readings say is there where the fit has something. */
function apartOf({ reads, vessel, scale }: Course, fitted: number, { level, variance }: Known): Apart {
  const at = (turns: number): number => {
    const value = scale.from(scale.to(fitted) + level + turns * Math.sqrt(variance));
    return reads === 'pH' ? value : Math.max(0, value);
  };
  return {
    ...{ reads, vessel, fitted },
    unit: unitOfMeasurable[reads],
    low: at(-deviate95),
    high: at(deviate95),
  };
}

/** How far off a fit must be expected to be: its known distance, and what is not known of it. */
const expected = ({ level, variance }: Known): number => Math.sqrt(level * level + variance);

/** Share of the time from the first to the last reading, each standing for half the way to its neighbours, at which it harms. */
function timeOff({ along, harm }: Course): number {
  const last = along.length - 1;
  const all = along[last].time - along[0].time;
  if (all <= 0) return 0;
  const harmed = along.reduce((sum, { off }, i) => {
    const around = (along[Math.min(i + 1, last)].time - along[Math.max(i - 1, 0)].time) / 2;
    return sum + (Math.abs(off) > harm ? around : 0);
  }, 0);
  return harmed / all;
}

function* courseFaults(course: Course): Generator<FitFault> {
  const { reads, vessel, along, harm, now } = course;
  const grave = nitrogen.includes(reads);
  const { start, least } = bounds;
  if (along.length < least.today) return;
  const last = along[along.length - 1];
  if (expected(now) > harm) yield { kind: 'today', grave, ...apartOf(course, last.fitted, now) };
  const share = timeOff(course);
  if (along.length >= least.course && share > 0.5)
    yield { kind: 'course', grave, reads, vessel, share, harm: harmIn(reads) };
  const first = along.filter(({ time }) => time <= along[0].time + start.days);
  const level = median(first, ({ off }) => off) ?? 0;
  if (first.length >= 2 && Math.abs(level) > harm) {
    const fitted = median(first, (each) => each.fitted) ?? Number.NaN;
    const far = grave && Math.abs(level) > start.grave * harm;
    yield { kind: 'start', grave: far, ...apartOf(course, fitted, { level, variance: 1 }) };
  }
}

function* rangeFaults(numbers: readonly FittedNumber[]): Generator<FitFault> {
  for (const { name, prior, value, deviate } of numbers) {
    const soft = prior.distribution === 'normal' || prior.distribution === 'lognormal';
    const end = deviate < 0 ? prior.low : prior.high;
    // No water leaves unseen: that end of the discharge is what is believed, not a bound that was run into.
    if (end === 0) continue;
    const atEnd = soft
      ? Math.abs(deviate) > bounds.range
      : Math.abs(value - end) < 0.02 * (prior.high - prior.low);
    if (atEnd) yield { kind: 'end-of-range', grave: true, name, value, end };
  }
}

function* wholeFaults(
  problem: Judged,
  spoilt: readonly SpoiltReading[],
  minima: readonly Minimum[],
): Generator<FitFault> {
  const count = problem.observations.length;
  const share = spoilt.length / count;
  const allowed = bounds.spoilt * problem.parameters.value('log.outlier-share');
  if (spoilt.length >= 5 && share > allowed) yield { kind: 'spoilt', grave: true, share, allowed };
  const values = minima.map(({ value }) => value);
  const apart = Math.max(...values) - Math.min(...values);
  const { least, share: ofCount } = bounds.searches;
  if (apart > least + ofCount * count) yield { kind: 'searches', grave: true, apart };
}

/**
 * How far a fit is to be trusted, as far as can be told from the log itself. What the model leaves out counts as error of
 * its own beside the kit's: a distance to the readings that wanders and returns (`returning.ts`), told from them for each
 * quantity and place. A quantity is not to be trusted where that is more than harms: expected today, or for half the
 * time. The fit fails where that is so of ammonia, nitrite or nitrate, and by what speaks against all of it.
 * @param predicted what the fit has at each observation
 */
export function verdictOfFit(
  problem: Judged,
  predicted: ArrayLike<number>,
  numbers: readonly FittedNumber[],
  spoilt: readonly SpoiltReading[],
  minima: readonly Minimum[],
): FitVerdict {
  const courses = coursesOf(problem, predicted);
  const ofCourses = courses.map((course) => [...courseFaults(course)]);
  const trust = courses.map((course, i): Trust => {
    const last = course.along[course.along.length - 1];
    return {
      ...apartOf(course, last.fitted, course.now),
      harm: harmIn(course.reads),
      trusted:
        course.along.length < bounds.least.today
          ? undefined
          : ofCourses[i].every(({ kind, grave }) => kind === 'start' && !grave),
    };
  });
  const all = [...wholeFaults(problem, spoilt, minima), ...ofCourses.flat(), ...rangeFaults(numbers)];
  const faults = [...all.filter(({ grave }) => grave), ...all.filter(({ grave }) => !grave)];
  const told = trust.filter(({ trusted }) => trusted !== undefined);
  const none = told.length > 0 && told.every(({ trusted }) => trusted === false);
  const failed = none || faults.some(({ grave }) => grave);
  return {
    verdict: failed
      ? 'failed'
      : told.length === trust.length && told.every(({ trusted }) => trusted)
        ? 'trusted'
        : 'partly',
    trust,
    faults,
  };
}

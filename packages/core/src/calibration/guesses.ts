import { bisectRight, median } from 'd3-array';
import { shownByKit } from './shown-by-kit.js';
import {
  follow,
  type Followed,
  goneOn,
  likeliest,
  longMemory,
  type Returning,
  type ScaledReading,
  type Spoiling,
} from './returning.js';

/** Ways that need no model: the level of the readings, the last reading, the median of the last 28 days. */
export const habitNames: readonly HabitName[] = ['level', 'last', 'month'];

/** The name of a way that needs no model. */
export type HabitName = 'level' | 'last' | 'month';

/**
 * Ways to foretell a reading: the model as fitted; the model with its latest distance to the readings, which slowly
 * returns to what it mostly is; and the ways that need no model.
 */
export const guessNames: readonly GuessName[] = ['model', 'returning', ...habitNames];

/** The name of a way to foretell a reading. */
export type GuessName = 'model' | 'returning' | HabitName;

/** A value by each way, on the scale of the kit. */
export type Guesses = Readonly<Record<GuessName, number>>;

/** A value by each way that needs no model. */
export type Habits = Readonly<Record<HabitName, number>>;

/** A reading of the past, on the scale of the kit, with what the model has there. */
export interface PastReading extends ScaledReading {
  /** The figure of the reading. */
  readonly value: number;
  readonly model: number;
}

/** Middle of a reading; its end where the other is open. */
const middleOf = ({ low, high }: { low: number; high: number }): number =>
  !Number.isFinite(low) ? high : !Number.isFinite(high) ? low : (low + high) / 2;

/** By how far a reading lies off a forecast, on the scale of the kit: 0 where it is open and the forecast lies within. */
export function errorOf(low: number, high: number, forecast: number): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return middleOf({ low, high }) - forecast;
  if (forecast < low) return low - forecast;
  return forecast > high ? high - forecast : 0;
}

const monthLong = 28;

/** d whose median the distance of the model returns to. Judgment [P]. */
const recently = 56;

/** What the kit has shown, each figure once, the latest first. */
export function cellsOf(past: readonly PastReading[]): readonly PastReading[] {
  const seen = new Map<string, PastReading>();
  for (const reading of past) {
    const key = `${reading.low}|${reading.high}|${reading.value}`;
    seen.delete(key);
    seen.set(key, reading);
  }
  return [...seen.values()];
}

/** The level of readings, followed through them. */
interface Level {
  readonly by: Returning;
  readonly followed: Followed;
}

function levelOf(past: readonly PastReading[], spoiling: Spoiling): Level {
  const by = likeliest(past, median(past, middleOf) ?? 0, spoiling, longMemory);
  return { by, followed: follow(past, by, spoiling) };
}

/** What habit foretells of a time, by the readings before a day. */
function habitsAt(
  past: readonly PastReading[],
  { by, followed }: Level,
  today: number,
  time: number,
): Habits {
  const known = bisectRight(
    past.map((each) => each.time),
    today - 1e-9,
  );
  const { value: last, time: at } = past[known - 1];
  const lately = past.slice(0, known).filter((each) => each.time > today - monthLong);
  return {
    level: goneOn(followed.after[known - 1], time - at, by).level,
    last,
    month: median(lately, ({ value }) => value) ?? last,
  };
}

/** A forecast by habit of a reading of the past, from a day before it. */
export interface HabitTried {
  readonly time: number;
  /** d from the day of the forecast. */
  readonly ahead: number;
  /** By how far what the kit would have shown lay off what it showed. */
  readonly errors: Habits;
  /** By how far the reading lay off the forecast itself. */
  readonly plain: Habits;
}

/** d between the days from which habit is tried on the past, and of readings before the first: judgment [P]. */
const tries = { every: 3.5, first: 14, most: 60 } as const;

/** What habit would have foretold of the readings of the past, from days evenly before them. */
function habitTries(past: readonly PastReading[], level: Level, today: number): readonly HabitTried[] {
  const begin = Math.max(past[0].time + tries.first, today - tries.every * tries.most);
  const tried: HabitTried[] = [];
  const cells = cellsOf(past);
  for (let day = today - tries.every; day >= begin; day -= tries.every) {
    for (const { time, low, high, value } of past) {
      if (time < day || time >= day + monthLong) continue;
      const habits = habitsAt(past, level, day, time);
      const each = (of: (forecast: number) => number): Habits => ({
        level: of(habits.level),
        last: of(habits.last),
        month: of(habits.month),
      });
      tried.push({
        time,
        ahead: time - day,
        errors: each((forecast) => value - shownByKit(cells, forecast)),
        plain: each((forecast) => errorOf(low, high, forecast)),
      });
    }
  }
  return tried;
}

/** What is foretold of a time ahead. */
export interface Guessed {
  readonly guesses: Guesses;
  /** Standard deviation of a reading about it, as the wandering of the level tells. */
  readonly spread: number;
}

/** What is foretold of one quantity in one place, and what habit was worth in its past. */
export interface SeriesGuess {
  readonly ahead: readonly Guessed[];
  readonly tried: readonly HabitTried[];
}

/**
 * Foretells one quantity in one place at some times, by each way, from its readings up to today.
 * @param past in the order of time; at least one
 * @param ahead times with what the model has there
 */
export function guessesAt(
  past: readonly PastReading[],
  ahead: readonly { readonly time: number; readonly model: number }[],
  today: number,
  spoiling: Spoiling,
): SeriesGuess {
  const level = levelOf(past, spoiling);
  const recent = past.filter(({ time }) => time > today - recently);
  const told = recent.length >= 3 ? recent : past.slice(-3);
  const apart = past.map(({ time, low, high, model }) => ({ time, low: low - model, high: high - model }));
  const offset = median(told, (each) => middleOf(each) - each.model) ?? 0;
  const distance = likeliest(apart, offset, spoiling);
  const strayed = follow(apart, distance, spoiling);
  return {
    tried: habitTries(past, level, today),
    ahead: ahead.map(({ time, model }): Guessed => {
      const { followed, by } = level;
      const stray = goneOn(strayed.known, time - strayed.time, distance);
      const { variance } = goneOn(followed.known, time - followed.time, by);
      return {
        guesses: { model, returning: model + stray.level, ...habitsAt(past, level, today, time) },
        spread: Math.sqrt(1 + variance),
      };
    }),
  };
}

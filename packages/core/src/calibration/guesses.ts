import { median } from 'd3-array';
import { exp, log } from '../base/elementary.js';
import { normalCdf } from '../base/normal.js';
import { follow, goneOn, type Jumps, type ScaledReading, type Spoiling } from './returning.js';

/**
 * Ways to foretell a reading: the level of the readings goes on as it does (habit), with half the model's change, or with
 * all of it.
 */
export const guessNames: readonly GuessName[] = ['habit', 'half', 'model'];

/** The name of a way to foretell a reading. */
export type GuessName = 'habit' | 'half' | 'model';

/** A value by each way, on the scale of the kit. */
export type Guesses = Readonly<Record<GuessName, number>>;

/** A table of what each way has. */
export const eachWay = <T>(of: (name: GuessName) => T): Readonly<Record<GuessName, T>> => ({
  habit: of('habit'),
  half: of('half'),
  model: of('model'),
});

/** Share of the model's change that each way takes over. */
const changeTaken: Guesses = { habit: 0, half: 0.5, model: 1 };

/** A reading of the past, on the scale of the kit, with what the model has there. */
export interface PastReading extends ScaledReading {
  /** The figure of the reading. */
  readonly value: number;
  readonly model: number;
  /** What the model has there at each pace of a start-up, in their order; absent: as `model`. */
  readonly paced?: readonly number[];
}

/** A time ahead with what the model has there. */
export type ModelledTime = Pick<PastReading, 'time' | 'model' | 'paced'>;

/** Middle of a reading; its end where the other is open. */
const middleOf = ({ low, high }: { low: number; high: number }): number =>
  Number.isFinite(low) && Number.isFinite(high) ? (low + high) / 2 : Number.isFinite(low) ? low : high;

/** By how far a reading lies off a forecast, on the scale of the kit: 0 where it is open and the forecast lies within. */
export function errorOf(low: number, high: number, forecast: number): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return middleOf({ low, high }) - forecast;
  if (forecast < low) return low - forecast;
  return forecast > high ? high - forecast : 0;
}

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

/** How a level may go on: memories, d, among which its readings choose. Judgment [P]. */
export type Memories = readonly number[];

/** Of what turns over within days to weeks. */
const anyMemory: Memories = [5, 20, 80, 400];

/** Of what gathers in the water, where a level does not return within weeks. */
const longMemory: Memories = [80, 400];

/** The memories that the level of a quantity may have. Nitrate alone is hardly used up: it gathers. */
export const memoriesOf = (reads: string): Memories => (reads === 'nitrate' ? longMemory : anyMemory);

/** Spreads about the middle, in errors of the kit, among which readings choose. Judgment [P]. */
const spreads = [1, 4, 16] as const;

/** How often a level jumps, 1/d, among which readings choose: hardly ever, or every hundred days. Judgment [P]. */
const jumpRates = [0.0003, 0.01] as const;

/** A jump is of eight errors of the kit, as a spoilt reading is; one in five gaps at most. Judgment [P]. */
const jump: Omit<Jumps, 'rate'> = { most: 0.2, size: 8 };

/** All ways in which a level may wander. */
const wanderings = (memories: Memories) =>
  memories.flatMap((memory) =>
    spreads.flatMap((spread) => jumpRates.map((rate) => ({ memory, spread, rate }))),
  );

/** By how much the first level may lie off the first reading, in errors of the kit, beside its spread. Judgment [P]. */
const begin = 4;

/** d whose median a level returns to, and how many readings that takes at least. Judgment [P]. */
const recently = { days: 56, least: 3 } as const;

/** Readings that tell how a level wanders: the latest. Judgment [P]. */
const latest = 80;

/** Distances of readings from a share of the model. */
interface Distances {
  readonly readings: readonly ScaledReading[];
  /** After each reading, the median of the latest: as it was known then. */
  readonly middles: readonly number[];
}

function distancesOf(past: readonly PastReading[], share: number): Distances {
  const readings = past.map(({ time, low, high, model }) => ({
    time,
    low: low - share * model,
    high: high - share * model,
  }));
  // An open reading that the model agrees with says nothing of how far it is off.
  const places = past.map(({ low, high, model }) => {
    const open = !Number.isFinite(low) || !Number.isFinite(high);
    const value = open && share > 0 ? Math.min(Math.max(model, low), high) : middleOf({ low, high });
    return value - share * model;
  });
  const middles = readings.map(({ time }, i) => {
    const first = readings.findIndex((each) => each.time > time - recently.days);
    return median(places.slice(Math.min(first, Math.max(0, i + 1 - recently.least)), i + 1)) ?? places[i];
  });
  return { readings, middles };
}

/** A value with its standard deviation. */
interface Expected {
  readonly value: number;
  readonly deviation: number;
}

/** What one way foretells. */
interface Foretold {
  /** Logarithm of the mean likelihood of the readings. */
  readonly evidence: number;
  at(ahead: ModelledTime): Expected;
}

/** Follows a level through distances, as the mean over how it may wander, each by its likelihood. */
function levelBy({ readings, middles }: Distances, spoiling: Spoiling, memories: Memories) {
  const middle = middles[middles.length - 1];
  const tracks = wanderings(memories).map(({ memory, spread, rate }) => {
    const by = { middle, memory, spread };
    return { by, followed: follow(readings, by, spoiling, { middles, begin, jumps: { ...jump, rate } }) };
  });
  const most = Math.max(...tracks.map(({ followed }) => followed.likelihood));
  const weights = tracks.map(({ followed }) => exp(followed.likelihood - most));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    evidence: most + log(whole / tracks.length),
    at: (time: number): Expected => {
      let [value, deviation] = [0, 0];
      for (const [i, { by, followed }] of tracks.entries()) {
        const known = goneOn(followed.known, time - followed.time, by);
        value += (weights[i] / whole) * known.level;
        deviation += (weights[i] / whole) * Math.sqrt(1 + known.variance);
      }
      return { value, deviation };
    },
  };
}

/** Median of a mixture of normals, and its standard deviation about its mean. */
function mixtureOf(all: readonly Expected[], weights: readonly number[]): Expected {
  const sum = (of: (each: Expected) => number): number =>
    all.reduce((total, each, i) => total + weights[i] * of(each), 0);
  const mean = sum(({ value }) => value);
  const square = sum(({ value, deviation }) => deviation * deviation + (value - mean) * (value - mean));
  return {
    value: medianOf(all.map(({ value, deviation }, i) => ({ value, deviation, weight: weights[i] }))),
    deviation: Math.sqrt(square),
  };
}

function foretoldBy(
  past: readonly PastReading[],
  share: number,
  spoiling: Spoiling,
  memories: Memories,
): Foretold {
  const late = past.slice(-latest);
  const paces = share > 0 ? (late[0].paced?.length ?? 1) : 1;
  const modelOf = ({ model, paced }: ModelledTime, i: number): number =>
    paces > 1 && paced !== undefined ? paced[i] : model;
  const levels = Array.from({ length: paces }, (_, i) =>
    levelBy(
      distancesOf(
        late.map((each) => ({ ...each, model: modelOf(each, i) })),
        share,
      ),
      spoiling,
      memories,
    ),
  );
  const most = Math.max(...levels.map(({ evidence }) => evidence));
  const raw = levels.map(({ evidence }) => exp(evidence - most));
  const whole = raw.reduce((sum, each) => sum + each, 0);
  return {
    evidence: most + log(whole / paces),
    at: (ahead) =>
      mixtureOf(
        levels.map(({ at }, i): Expected => {
          const { value, deviation } = at(ahead.time);
          return { value: share * modelOf(ahead, i) + value, deviation };
        }),
        raw.map((each) => each / whole),
      ),
  };
}

/** Halvings of the interval that a median lies in: to a thousandth of a kit's error. */
const halvings = 24;

/** The median of a mixture of normals. */
export function medianOf(all: readonly (Expected & { readonly weight: number })[]): number {
  const values = all.map(({ value }) => value);
  let [low, high] = [Math.min(...values), Math.max(...values)];
  for (let i = 0; i < halvings; i++) {
    const middle = (low + high) / 2;
    const below = all.reduce(
      (sum, { value, deviation, weight }) => sum + weight * normalCdf((middle - value) / deviation),
      0,
    );
    if (below < 0.5) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** What is foretold of a time ahead. */
export interface Guessed {
  readonly guesses: Guesses;
  /** Standard deviation of a reading about each, as the wandering of its level tells. */
  readonly deviations: Guesses;
}

/** What is foretold of one quantity in one place. */
export interface SeriesGuess {
  readonly ahead: readonly Guessed[];
  /** How well each way went from one reading to the next: logarithm of the likelihood. */
  readonly evidence: Guesses;
}

/**
 * Foretells one quantity in one place at some times, by each way, from its readings up to today.
 * @param past in the order of time; at least one
 * @param ahead times with what the model has there
 */
export function guessesAt(
  past: readonly PastReading[],
  ahead: readonly ModelledTime[],
  spoiling: Spoiling,
  memories: Memories,
): SeriesGuess {
  const told = eachWay((name) => foretoldBy(past, changeTaken[name], spoiling, memories));
  return {
    evidence: eachWay((name) => told[name].evidence),
    ahead: ahead.map((each): Guessed => {
      const at = eachWay((name) => told[name].at(each));
      return {
        guesses: eachWay((name) => at[name].value),
        deviations: eachWay((name) => at[name].deviation),
      };
    }),
  };
}

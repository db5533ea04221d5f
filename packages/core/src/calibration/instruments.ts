import { group, median } from 'd3-array';
import { exp } from '../base/elementary.js';
import { deviate95 } from '../base/normal.js';
import { unitOfMeasurable } from '../scenario/measurables.js';
import type { ReadingError } from './reading-loss.js';
import { seriesKey } from './correlated.js';
import { type KitScale, kitScale } from '../log/kit-scale.js';
import { type Observation, readingKey } from './readings.js';
import { follow, type ScaledReading, type Spoiling } from './returning.js';

/**
 * How much higher one instrument reads than another that reads the same water: one `shows` a number, from `low` to `high`, where
 * the other shows another.
 */
export interface Offset {
  readonly reads: Observation['reading']['reads'];
  readonly vessel: string;
  /** The one in use last, by which all readings are counted, and the other; dates of change or names, '' for the first. */
  readonly now: string;
  readonly other: string;
  /** First date of `now`, and last of `other`. */
  readonly from: string;
  readonly until: string;
  /** What the one in use, `now`, `shows` where `other` shows `at`, in the internal unit; 90 % bounds of it are `low` and `high`. */
  readonly at: number;
  readonly shows: number;
  readonly low: number;
  readonly high: number;
}

/** Readings as if all had been read with the instrument that is in use last. */
export interface Aligned {
  readonly observations: readonly Observation[];
  readonly offsets: readonly Offset[];
}

/**
 * Kit errors by which two instruments are believed to differ (standard deviation), what is tried, readings of each that tell
 * at least, and d about the change or the overlap in which readings tell. Judgment [P].
 */
const told = { spread: 3, most: 10, step: 0.5, least: 3, days: 56 } as const;

/** How the water may wander meanwhile: memories, d, and spreads, in errors of the kit. Judgment [P]. */
const wanderings = [5, 20, 80, 400].flatMap((memory) => [1, 4, 16].map((spread) => ({ memory, spread })));

const middleOf = ({ low, high }: ScaledReading): number =>
  Number.isFinite(low) && Number.isFinite(high) ? (low + high) / 2 : Number.isFinite(low) ? low : high;

const moved = (reading: ScaledReading, by: number): ScaledReading => ({
  ...reading,
  low: reading.low + by,
  high: reading.high + by,
});

/** Readings of one instrument in the order of time. */
interface Own {
  readonly name: string;
  readonly all: readonly { readonly observation: Observation; readonly scaled: ScaledReading }[];
}

/** By how many kit errors one instrument reads higher than another: middle and standard deviation of what is then believed. */
function offsetBetween(
  now: readonly ScaledReading[],
  other: readonly ScaledReading[],
  spoiling: Spoiling,
): { readonly by: number; readonly deviation: number } | undefined {
  const from = Math.max(now[0].time, other[0].time) - told.days;
  const to = Math.min(now[now.length - 1].time, other[other.length - 1].time) + told.days;
  const [a, b] = [now, other].map((all) => all.filter(({ time }) => time >= from && time <= to));
  if (Math.min(a.length, b.length) < told.least) return undefined;
  const tries = Array.from({ length: 2 * (told.most / told.step) + 1 }, (_, i) => i * told.step - told.most);
  const logs = tries.flatMap((by) => {
    const all = [...a, ...b.map((each) => moved(each, by))].sort((x, y) => x.time - y.time);
    const middle = median(all, middleOf) ?? 0;
    const prior = (by * by) / (2 * told.spread * told.spread);
    return wanderings.map((wandering) => ({
      by,
      log: follow(all, { middle, ...wandering }, spoiling).likelihood - prior,
    }));
  });
  const most = Math.max(...logs.map(({ log }) => log));
  const weights = logs.map(({ log }) => exp(log - most));
  const sum = (of: (by: number) => number): number =>
    logs.reduce((total, { by }, i) => total + weights[i] * of(by), 0);
  const whole = sum(() => 1);
  const by = sum((each) => each) / whole;
  const square = sum((each) => (each - by) * (each - by)) / whole;
  return { by, deviation: Math.sqrt(square + (told.step * told.step) / 12) };
}

const dateOf = ({ reading }: Observation): string => reading.date;

function alignedSeries(own: readonly Own[], scale: KitScale, spoiling: Spoiling): Aligned {
  const last = own.reduce((late, each) =>
    (each.all.at(-1)?.scaled.time ?? 0) > (late.all.at(-1)?.scaled.time ?? 0) ? each : late,
  );
  const offsets: Offset[] = [];
  const observations = own.flatMap(({ name, all }): readonly Observation[] => {
    const plain = all.map(({ observation }) => observation);
    if (name === last.name) return plain;
    const found = offsetBetween(
      last.all.map(({ scaled }) => scaled),
      all.map(({ scaled }) => scaled),
      spoiling,
    );
    if (found === undefined) return plain;
    const at = median(plain, ({ reading }) => reading.value) ?? 0;
    const showsAt = (turns: number): number => scale.from(scale.to(at) + found.by + turns * found.deviation);
    const { reads, vessel } = plain[0].reading;
    offsets.push({
      ...{ reads, vessel, now: last.name, other: name, at, shows: showsAt(0) },
      ...{ from: dateOf(last.all[0].observation), until: dateOf(plain[plain.length - 1]) },
      ...{ low: showsAt(-deviate95), high: showsAt(deviate95) },
    });
    const by = (value: number): number => scale.from(scale.to(value) + found.by);
    return plain.map((each): Observation => {
      const { low, high, value } = each.reading;
      return { ...each, reading: { ...each.reading, low: by(low), high: by(high), value: by(value) } };
    });
  });
  return { observations, offsets };
}

/**
 * Readings of several instruments as the one in use last would have shown them. How much higher one reads than another is told
 * by the readings of both about the change, or where they overlap: a level that wanders is followed through all of them
 * (`returning.ts`), the other's moved by each offset in turn, each by its likelihood and by what is believed beforehand.
 */
export function alignedInstruments(
  observations: readonly Observation[],
  errorOf: (reads: Observation['reading']['reads']) => ReadingError,
): Aligned {
  const instrumentOf = ({ reading }: Observation): string => reading.instrument ?? '';
  const series = [...group(observations, seriesKey).values()];
  if (series.every((own) => new Set(own.map(instrumentOf)).size < 2)) return { observations, offsets: [] };
  const aligned = series.map((own): Aligned => {
    const named = [...group(own, instrumentOf)];
    if (named.length < 2) return { observations: own, offsets: [] };
    const error = errorOf(own[0].reading.reads);
    const scale = kitScale(error);
    return alignedSeries(
      named.map(([name, all]) => ({
        name,
        all: [...all]
          .sort((a, b) => a.time - b.time)
          .map((observation) => ({
            observation,
            scaled: {
              time: observation.time,
              low: scale.to(observation.reading.low),
              high: scale.to(observation.reading.high),
            },
          })),
      })),
      scale,
      { share: error.outlierShare, spread: error.outlierSpread },
    );
  });
  // In the order in which they came, so that nothing else depends on the instruments.
  const placeOf = new Map(observations.map(({ reading }, i) => [readingKey(reading), i]));
  const all = aligned.flatMap((each) => each.observations);
  all.sort((a, b) => (placeOf.get(readingKey(a.reading)) ?? 0) - (placeOf.get(readingKey(b.reading)) ?? 0));
  return { observations: all, offsets: aligned.flatMap(({ offsets }) => offsets) };
}

const digits = (value: number): string => String(Number(value.toPrecision(2)));

/** What is told of an offset, one line. */
export function offsetNote({ reads, vessel, now, other, from, until, at, ...offset }: Offset): string {
  const { shows, low, high } = offset;
  const unit = unitOfMeasurable[reads] === '' ? '' : ` ${unitOfMeasurable[reads]}`;
  const named = (name: string, usual: string): string => (name === '' || name === from ? usual : name);
  const way = shows < at ? 'lower' : 'higher';
  const about = /^\d{4}-/.test(other) || other === '' ? `the one before (to ${until})` : other;
  return (
    `${reads} in ${vessel}: ${named(now, 'the instrument')} (from ${from}) reads ${digits(Math.abs(shows - at))}${unit} ${way} ` +
    `than ${about} where that reads ${digits(at)}${unit} (90 %: ${digits(low - at)} to ${digits(high - at)}${unit}): all readings count as it shows them`
  );
}

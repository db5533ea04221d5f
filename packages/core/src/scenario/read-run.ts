import type { Reader } from './reader.js';
import { readDaily, waterTemperatures, type DailyNeed } from './read-daily.js';
import type { DailyValue } from './scenario.js';
import { headSchema } from './schema/file-schema.js';
import { calendarDays } from './schema/time-schema.js';
import { climateSchema } from './schema/water-schema.js';

/** Where a run has no date of its own it starts here: a year without a leap day. */
const defaultDate = '2001-01-01';

/** Most outputs of one run. */
const mostOutputs = 1_000_000;

/** Length, clock and weather of the run: what every other section is read against. */
export interface RunFrame {
  readonly title: string;
  readonly note: string;
  readonly days: number;
  readonly every: number;
  readonly startDate: string;
  /** Name of the reservoir as written; whether there is such a vessel is seen later. */
  readonly reservoir: string | undefined;
  /** Moments must come before this day; later than `days` where the run was cut short. */
  readonly lastDay: number;
  readonly waterTemperature: DailyValue | undefined;
  readonly air: DailyValue | undefined;
  readonly et0: DailyValue;
}

/** Days since 1970-01-01 of the first day of a frame. */
export function firstDay(frame: RunFrame): number {
  return calendarDays(frame.startDate) ?? 0;
}

function times(daily: DailyValue, factor: number): DailyValue {
  return daily.kind === 'constant'
    ? { ...daily, value: daily.value * factor }
    : { ...daily, values: daily.values.map((value) => value * factor) };
}

type Climate = Pick<RunFrame, 'waterTemperature' | 'air' | 'et0'>;

function readClimate(reader: Reader, days: number): Climate {
  const none: Climate = { waterTemperature: undefined, air: undefined, et0: { kind: 'constant', value: 0 } };
  const given = reader.parse(climateSchema, ['climate']);
  if (given === undefined) return none;
  const read = (
    key: 'water-temperature' | 'air-temperature' | 'et0',
    need: Omit<DailyNeed, 'days'>,
  ): DailyValue | undefined => {
    const value = given[key];
    return value === undefined ? undefined : readDaily(reader, ['climate', key], value, { ...need, days });
  };
  const factorPath = ['climate', 'greenhouse-factor'];
  const factor = given['greenhouse-factor'] ?? reader.fallback(factorPath, 1, 1);
  return {
    waterTemperature: read('water-temperature', { dimension: 'temperature', ...waterTemperatures }),
    air: read('air-temperature', { dimension: 'temperature', low: -40, high: 60 }),
    et0: times(read('et0', { dimension: 'depth-rate', low: 0, high: 0.03 }) ?? none.et0, factor),
  };
}

/**
 * Reads the head of a file and its climate. Faulty values are replaced by harmless ones so that the
 * rest can still be read; the faults are kept by the reader.
 */
export function readRun(reader: Reader, over: { readonly days?: number }): RunFrame {
  const { shape } = headSchema;
  const title = reader.parse(shape.title, ['title']) ?? '';
  const note = reader.parse(shape.note, ['note']) ?? '';
  const fileDays = reader.parse(shape.days, ['days']);
  const every =
    reader.parse(shape.every, ['every']) ??
    (reader.has(['every']) ? 1 : reader.fallback(['every'], 1, '1 d'));
  const startDate =
    reader.parse(shape['start-date'], ['start-date']) ??
    (reader.has(['start-date']) ? defaultDate : reader.fallback(['start-date'], defaultDate, defaultDate));
  const days = over.days ?? fileDays ?? 1;
  if (days / every > mostOutputs)
    reader.fault(['every'], 'too many outputs', { expected: `at most ${mostOutputs} in a run` });
  return {
    title,
    note,
    days,
    every,
    startDate,
    reservoir: reader.parse(shape.reservoir, ['reservoir']),
    lastDay: fileDays === undefined ? Infinity : Math.max(days, fileDays),
    ...readClimate(reader, days),
  };
}

import * as z from 'zod';
import { calendarDays } from '../../base/calendar.js';
import { complain } from '../file/complaint.js';
import { count, date, formByKey, number, positive, quantity, section, share, word } from '../file/values.js';
import type { DailyValue } from '../scenario.js';
import { daily, readDaily } from './daily.js';
import type { ScenarioReader } from './scenario-reader.js';
import { readWaterTemperature, waterTemperature } from './water-temperature.js';
import { readWeather, weatherSchema } from './weather.js';

/** Longest run, d: a century. */
export const longestRun = 36_525;

/** The version of the form of a file. One that changes what a file of version 1 means takes the next number. */
const formVersion = z
  .literal(1, { error: complain({ problem: 'a file of another version', expected: 'version 1' }) })
  .meta({ description: 'version of the form of this file; default: 1' });

/** The keys at the top of a file that are single values. */
export const headSchema = section(
  {
    version: formVersion.optional(),
    title: word('what the system is called'),
    note: word('whatever should be known of it; default: none').optional(),
    days: number('length of the run in days, a plain number', 0.001, longestRun),
    every: positive(
      'time',
      'time between two outputs; range: more than 0, at most a million outputs in a run; default: 1 d',
    ).optional(),
    'start-date': date(
      'calendar date of day 0; only monthly values and dates need it; default: 2001-01-01',
    ).optional(),
    reservoir: word('the vessel that takes all change of level'),
    seed: count('seed of the errors of test kits; default: 1', 0, Number.MAX_SAFE_INTEGER).optional(),
  },
  'the run',
);

/** The section `climate`. */
export const climateSchema = section(
  {
    'water-temperature': waterTemperature(
      'temperature of the water; range: 0 to 45 degC; default: none, every vessel then gives its own',
    ).optional(),
    'air-temperature': daily(
      'temperature',
      'temperature of the crops; range: -40 to 60 degC; default: that of the water',
    ).optional(),
    'carbon-dioxide': daily(
      'mole-share',
      'carbon dioxide in the air over the water; range: 200 to 20000 ppm; default: that of open air',
    ).optional(),
    altitude: quantity(
      'length',
      'height above the sea, for what oxygen and carbon dioxide water holds; range: 0 to 9000 m; default: that of et0, else 0 m',
    ).optional(),
    et0: formByKey(
      'weather',
      weatherSchema,
      daily('depth-rate', 'reference evapotranspiration outdoors; range: 0 to 30 mm/d'),
    ),
    'greenhouse-factor': share('share of it that holds under cover; default: 1', 'any').optional(),
  },
  'weather over the system',
);

/** Where a run has no date of its own it starts here: a year without a leap day. */
const defaultDate = '2001-01-01';

/** Seed where a file writes none. */
const defaultSeed = 1;

/** Most outputs of one run, and most outputs of all vessels: about a gigabyte is kept. */
const most = { outputs: 1_000_000, values: 2_000_000 };

/** Length, clock and weather of the run: what every other section is read against. */
export interface RunFrame {
  readonly title: string;
  readonly note: string;
  readonly days: number;
  readonly every: number;
  readonly startDate: string;
  /** Seed of whatever is drawn in the run. */
  readonly seed: number;
  /** Name of the reservoir as written; whether there is such a vessel is seen later. */
  readonly reservoir: string | undefined;
  /** Moments must come before this day; later than `days` where the run was cut short. */
  readonly lastDay: number;
  readonly waterTemperature: DailyValue | undefined;
  readonly air: DailyValue | undefined;
  /** Air that water may follow: that of the crops, or of the weather file. */
  readonly outside: DailyValue | undefined;
  readonly et0: DailyValue;
  readonly carbonDioxide: DailyValue | undefined;
  /** Height above the sea, m. */
  readonly altitude: number;
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

type Climate = Pick<RunFrame, 'waterTemperature' | 'air' | 'outside' | 'et0' | 'carbonDioxide' | 'altitude'>;

/** Carbon dioxide that air may hold: less than any open air, more than people bear. */
const mostlyAir = { dimension: 'mole-share', low: 2e-4, high: 0.02 } as const;

/** Highest place with water to keep fish in, m. */
const highest = 9000;

/** Height above the sea: as written, or that of the weather. */
function readAltitude(
  reader: ScenarioReader,
  given: number | undefined,
  ofWeather: number | undefined,
): number {
  const path = ['climate', 'altitude'];
  if (given === undefined) return reader.fallback(path, ofWeather ?? 0, `${ofWeather ?? 0} m`);
  if (given > highest) reader.fault(path, 'out of range', { expected: `0 to ${highest} m` });
  return given;
}

function readClimate(reader: ScenarioReader, days: number, startDate: string): Climate {
  const noEt0: DailyValue = { kind: 'constant', value: 0 };
  const given = reader.parse(climateSchema, ['climate']);
  if (given === undefined)
    return {
      ...{ waterTemperature: undefined, air: undefined, outside: undefined, carbonDioxide: undefined },
      ...{ et0: noEt0, altitude: 0 },
    };
  const { et0, 'air-temperature': airGiven, 'water-temperature': water } = given;
  const depth = { dimension: 'depth-rate', days, low: 0, high: 0.03 } as const;
  const weather =
    'weather' in et0
      ? readWeather(reader, ['climate', 'et0'], et0, { startDate, days })
      : { et0: readDaily(reader, ['climate', 'et0'], et0, depth), air: undefined };
  const warmth = { dimension: 'temperature', days, low: -40, high: 60 } as const;
  const air =
    airGiven === undefined ? undefined : readDaily(reader, ['climate', 'air-temperature'], airGiven, warmth);
  const outside = airGiven === undefined ? weather?.air : air;
  const carbonDioxide = given['carbon-dioxide'];
  const factorPath = ['climate', 'greenhouse-factor'];
  const factor = given['greenhouse-factor'] ?? reader.fallback(factorPath, 1, 1);
  return {
    waterTemperature:
      water === undefined
        ? undefined
        : readWaterTemperature(reader, ['climate', 'water-temperature'], water, { outside, startDate, days }),
    air,
    outside,
    carbonDioxide:
      carbonDioxide === undefined
        ? undefined
        : readDaily(reader, ['climate', 'carbon-dioxide'], carbonDioxide, { days, ...mostlyAir }),
    altitude: readAltitude(reader, given.altitude, 'weather' in et0 ? et0.altitude : undefined),
    et0: times(weather?.et0 ?? noEt0, factor),
  };
}

/**
 * Reads the head of a file and its climate. Faulty values are replaced by harmless ones so that the
 * rest can still be read; the faults are kept by the reader.
 */
export function readRun(reader: ScenarioReader, over: { readonly days?: number }): RunFrame {
  const { shape } = headSchema;
  reader.parse(shape.version, ['version']);
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
  if (days / every > most.outputs)
    reader.fault(['every'], 'too many outputs', {
      got: String(Math.ceil(days / every)),
      expected: `at most ${most.outputs} in a run`,
    });
  return {
    title,
    note,
    days,
    every,
    startDate,
    seed: reader.parse(shape.seed, ['seed']) ?? defaultSeed,
    reservoir: reader.parse(shape.reservoir, ['reservoir']),
    lastDay: fileDays === undefined ? Infinity : Math.max(days, fileDays),
    ...readClimate(reader, days, startDate),
  };
}

/** Bounds what a run keeps before it is begun: outputs times vessels. */
export function checkKept(reader: ScenarioReader, { days, every }: RunFrame, vessels: number): void {
  const outputs = Math.ceil(days / every);
  if (outputs > most.outputs || outputs * vessels <= most.values) return;
  reader.fault(['every'], 'too many outputs for so many vessels', {
    got: `${outputs} outputs of ${vessels} vessels`,
    expected: `at most ${most.values} outputs times vessels`,
  });
}

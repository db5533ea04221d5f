import * as z from 'zod';
import { calendarDays } from '../../base/calendar.js';
import { complain } from '../file/complaint.js';
import { bounded, date, formByKey, quantity, section, share, word } from '../file/values.js';
import { climateRanges, dailyRanges, runRanges } from '../checks/ranges.js';
import { checkOutputs } from '../checks/run.js';
import type { DailyValue } from '../scenario.js';
import { combined } from '../value-on.js';
import { daily, type DailyGiven, readDaily } from './daily.js';
import { readSkyLight, skyLight } from './light.js';
import type { ScenarioReader } from './scenario-reader.js';
import { readWaterTemperature, waterTemperature } from './water-temperature.js';
import { readWeather, weatherSchema } from './weather.js';

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
    days: bounded(runRanges.days, 'length of the run in days, a plain number'),
    every: bounded(
      runRanges.every,
      'time between two outputs; range: more than 0, at most a million outputs in a run; default: 1 d',
    ).optional(),
    'start-date': date(
      'calendar date of day 0; only monthly values and dates need it; default: 2001-01-01',
    ).optional(),
    reservoir: word('the vessel that takes all change of level'),
    seed: bounded(runRanges.seed, 'seed of the errors of test kits; default: 1').optional(),
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
    light: skyLight
      .meta({
        description:
          'photosynthetic light on the crops; default: from the weather file of et0, else that of the tables',
      })
      .optional(),
    altitude: quantity(
      'length',
      'height above the sea, for what oxygen and carbon dioxide water holds; range: 0 to 9000 m; default: that of et0, else 0 m',
    ).optional(),
    et0: formByKey(
      'weather',
      weatherSchema,
      daily('depth-rate', 'reference evapotranspiration outdoors; range: 0 to 30 mm/d'),
    ),
    'greenhouse-factor': formByKey(
      ['monthly', 'daily', 'csv'],
      daily('share', 'share of it that holds under cover, by month or day; range: 0 or more'),
      share('share of it that holds under cover; default: 1', 'any'),
    )
      .meta({ description: 'share of it that holds under cover; range: 0 or more; default: 1' })
      .optional(),
  },
  'weather over the system',
);

/** Where a run has no date of its own it starts here: a year without a leap day. */
const defaultDate = '2001-01-01';

/** Seed where a file writes none. */
const defaultSeed = 1;

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
  /** On the crops, mol m-2 d-1; undefined where there are none and none is written. */
  readonly light: DailyValue | undefined;
  readonly carbonDioxide: DailyValue | undefined;
  /** Height above the sea, m. */
  readonly altitude: number;
}

/** Days since 1970-01-01 of the first day of a frame. */
export function firstDay(frame: RunFrame): number {
  return calendarDays(frame.startDate) ?? 0;
}

type Climate = Pick<
  RunFrame,
  'waterTemperature' | 'air' | 'outside' | 'et0' | 'light' | 'carbonDioxide' | 'altitude'
>;

/** Height above the sea: as written, or that of the weather. */
function readAltitude(
  reader: ScenarioReader,
  given: number | undefined,
  ofWeather: number | undefined,
): number {
  const path = ['climate', 'altitude'];
  if (given === undefined) return reader.fallback(path, ofWeather ?? 0, `${ofWeather ?? 0} m`);
  const { high } = climateRanges.altitude;
  if (given > high) reader.fault(path, 'out of range', { expected: `0 to ${high} m` });
  return given;
}

/** The share of evapotranspiration that holds under cover: one number, or day by day. */
function readFactor(
  reader: ScenarioReader,
  given: number | DailyGiven | undefined,
  days: number,
): DailyValue {
  const path = ['climate', 'greenhouse-factor'];
  const constant = (value: number): DailyValue => ({ kind: 'constant', value });
  if (given === undefined) return constant(reader.fallback(path, 1, 1));
  if (typeof given === 'number') return constant(given);
  return readDaily(reader, path, given, { ...dailyRanges.greenhouse, days }) ?? constant(1);
}

function readClimate(reader: ScenarioReader, days: number, startDate: string): Climate {
  const noEt0: DailyValue = { kind: 'constant', value: 0 };
  const given = reader.parse(climateSchema, ['climate']);
  if (given === undefined)
    return {
      ...{ waterTemperature: undefined, air: undefined, outside: undefined, carbonDioxide: undefined },
      ...{ et0: noEt0, light: undefined, altitude: 0 },
    };
  const { et0, 'air-temperature': airGiven, 'water-temperature': water } = given;
  const depth = { ...dailyRanges.et0, days };
  const weather =
    'weather' in et0
      ? readWeather(reader, ['climate', 'et0'], et0, { startDate, days })
      : { et0: readDaily(reader, ['climate', 'et0'], et0, depth), air: undefined, radiation: undefined };
  const warmth = { ...dailyRanges.air, days };
  const air =
    airGiven === undefined ? undefined : readDaily(reader, ['climate', 'air-temperature'], airGiven, warmth);
  const outside = airGiven === undefined ? weather?.air : air;
  const carbonDioxide = given['carbon-dioxide'];
  const factor = readFactor(reader, given['greenhouse-factor'], days);
  const span = { startDate, days };
  const covered = factor.kind === 'constant' ? [factor.value] : factor.values;
  const underCover = covered.some((share) => share < 1);
  const { light, shelter } = readSkyLight(reader, given.light, {
    ...span,
    ...{ radiation: weather?.radiation, underCover },
  });
  const outdoor = combined([weather?.et0 ?? noEt0, factor], (depth, share) => depth * share, span);
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
        : readDaily(reader, ['climate', 'carbon-dioxide'], carbonDioxide, {
            days,
            ...dailyRanges.carbonDioxide,
          }),
    altitude: readAltitude(reader, given.altitude, 'weather' in et0 ? et0.altitude : undefined),
    et0: shelter === undefined ? outdoor : combined([outdoor, shelter], (depth, left) => depth * left, span),
    light,
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
  checkOutputs(reader, { days, every });
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

import { InputError, type Fault } from '../errors.js';
import { internalUnit } from '../units.js';
import { dayOfYear } from '../weather/day-of-year.js';
import { hargreaves } from '../weather/hargreaves.js';
import { penmanMonteith } from '../weather/penman-monteith.js';
import type { WeatherDay, WeatherSite } from '../weather/weather-day.js';
import { compact } from './compact.js';
import { loadText, resolvePath } from './include-tree.js';
import { readCsvColumn } from './read-csv-column.js';
import type { Reader } from './reader.js';
import type { DailyValue } from './scenario.js';
import type { WeatherGiven } from './schema/weather-schema.js';
import { originAt, type Path } from './tree.js';

/** What a file of daily weather gives. */
export interface WeatherReading {
  /** Reference evapotranspiration outdoors, m d-1. */
  readonly et0: DailyValue;
  /** Mean of the highest and lowest air temperature, degC. */
  readonly air: DailyValue;
}

type Columns = WeatherGiven['columns'];
type Key = keyof Columns;

const millimetres = 1000;
const hours = 24;

/** Most evapotranspiration of a day that is taken for true, m. */
const most = 0.03;

/** Columns of the file by key, a gap as NaN; undefined (and faults) where one cannot be read. */
function readColumns(
  reader: Reader,
  path: Path,
  text: string,
  columns: Columns,
): Partial<Record<Key, readonly number[]>> | undefined {
  const found: Partial<Record<Key, readonly number[]>> = {};
  let whole = true;
  for (const [key, given] of Object.entries(columns) as [Key, Columns[Key]][]) {
    if (given === undefined) continue;
    const gap = key === 'high' || key === 'low' ? undefined : Number.NaN;
    const answer = readCsvColumn(text, given.column, given.unit, given.dimension, gap);
    if ('values' in answer) found[key] = answer.values;
    else {
      const { problem, ...rest } = answer.complaint;
      reader.fault(
        [...path, ...(answer.about === 'csv' ? ['weather'] : ['columns', key, 'column'])],
        problem,
        rest,
      );
      whole = false;
    }
  }
  return whole ? found : undefined;
}

function dayOf(columns: Partial<Record<Key, readonly number[]>>, day: number, date: string): WeatherDay {
  const value = (key: Key): number | undefined => {
    const measured = columns[key]?.[day];
    return Number.isNaN(measured) ? undefined : measured;
  };
  const sunshine = value('sunshine');
  return {
    dayOfYear: dayOfYear(date, day),
    high: value('high') ?? Number.NaN,
    low: value('low') ?? Number.NaN,
    ...compact({
      dewPoint: value('dew-point'),
      humidityHigh: value('humidity-high'),
      humidityLow: value('humidity-low'),
      humidity: value('humidity'),
      radiation: value('radiation'),
      sunshine: sunshine === undefined ? undefined : sunshine * hours,
      wind: value('wind'),
    }),
  };
}

const siteKeys: Readonly<Record<string, string>> = {
  latitude: 'latitude',
  elevation: 'altitude',
  windHeight: 'wind-height',
};

/** A fault of the site stands at its key, one of a day at the file with its line. */
function placeFault(
  reader: Reader,
  path: Path,
  { key = '', problem, got, expected }: Fault,
  day: number,
): void {
  const rest = compact({ got, expected });
  const site = siteKeys[key];
  if (site !== undefined) reader.fault([...path, site], problem, rest);
  else reader.fault([...path, 'weather'], `line ${day + 2} of the file, ${key}: ${problem}`, rest);
}

/** Says on how many days what was assumed or done. */
function note(reader: Reader, path: Path, said: readonly (readonly string[])[]): void {
  const counts = new Map<string, number>();
  for (const text of said.flat()) counts.set(text, (counts.get(text) ?? 0) + 1);
  const where = reader.where(path);
  for (const [text, count] of counts) {
    reader.notes.push(`${where}: climate.et0: ${text} on ${count} of ${said.length} days`);
  }
}

/**
 * Reference evapotranspiration of each day from a weather file, by FAO-56 Penman-Monteith with its rules
 * for missing data (what they assumed is noted) or by Hargreaves. Evapotranspiration below 0 (dew) counts
 * as 0, and is noted too: Leat brings no dew into the water.
 */
export function readWeather(
  reader: Reader,
  path: Path,
  given: WeatherGiven,
  { startDate, days }: { readonly startDate: string; readonly days: number },
): WeatherReading | undefined {
  const { method = 'penman-monteith', latitude, altitude, coastal, columns } = given;
  if (method === 'penman-monteith' && altitude === undefined) {
    reader.fault([...path, 'altitude'], 'missing', { expected: 'the height above the sea such as "400 m"' });
  }
  const { file: from } = originAt(reader.tree, [...path, 'weather']);
  const loaded = loadText(reader.load, resolvePath(from, given.weather), from);
  if ('problem' in loaded) {
    reader.fault([...path, 'weather'], loaded.problem);
    return undefined;
  }
  const measured = readColumns(reader, path, loaded.text, columns);
  if (measured === undefined || (method === 'penman-monteith' && altitude === undefined)) return undefined;
  const count = Math.max(1, Math.ceil(days));
  const rows = measured.high?.length ?? 0;
  if (rows < count) {
    const rest = { got: String(rows), expected: `at least ${count}` };
    reader.fault([...path, 'weather'], 'fewer days than the run', rest);
    return undefined;
  }
  const site: WeatherSite = {
    latitude,
    elevation: altitude ?? 0,
    ...compact({ coastal, windHeight: given['wind-height'] }),
  };
  const et0: number[] = [];
  const air: number[] = [];
  const said: string[][] = [];
  for (let index = 0; index < count; index++) {
    const day = dayOf(measured, index, startDate);
    try {
      const { et0: depth, assumed } =
        method === 'hargreaves'
          ? { et0: hargreaves(reader.parameters, site, day), assumed: [] }
          : penmanMonteith(reader.parameters, site, day);
      said.push([...assumed, ...(depth < 0 ? ['below 0, counted as 0,'] : [])]);
      et0.push(Math.max(0, depth / millimetres));
      air.push((day.high + day.low) / 2);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      for (const fault of error.faults) placeFault(reader, path, fault, index);
      return undefined;
    }
    if (et0[index] > most) {
      const rest = {
        got: `${Number((et0[index] * millimetres).toPrecision(4))} mm/d`,
        expected: 'at most 30 mm/d',
      };
      reader.fault([...path, 'weather'], `line ${index + 2} of the file: more than a day evaporates`, rest);
      return undefined;
    }
  }
  note(reader, path, said);
  reader.defaults.push({ path, value: { daily: [...et0], unit: internalUnit('depth-rate') } });
  return { et0: { kind: 'daily', values: et0 }, air: { kind: 'daily', values: air } };
}

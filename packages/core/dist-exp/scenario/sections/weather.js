import * as z from 'zod';
import { dayOfYear } from '../../base/calendar.js';
import { InputError } from '../../base/faults.js';
import { convert, describeDimension, internalUnit } from '../../base/units.js';
import { hargreaves } from '../../weather/evapotranspiration.js';
import { solarRadiation, sunPosition } from '../../weather/radiation.js';
import { penmanMonteith } from '../../weather/penman-monteith.js';
import { complain } from '../file/complaint.js';
import { loadText, resolvePath } from '../file/include-tree.js';
import { compact } from '../file/reader.js';
import { originAt } from '../file/tree.js';
import { choice, number, positive, quantity, section, truth, word } from '../file/values.js';
import { readCsvColumn } from './daily.js';
function column(dimension, description) {
    return section({
        column: word('name of the column'),
        unit: word(`unit of its numbers, as of ${describeDimension(dimension)}`),
    }, description).transform((given, context) => {
        const answer = convert(1, given.unit, dimension);
        if ('value' in answer || answer.problem === 'negative')
            return { ...given, dimension };
        context.addIssue({ code: 'custom', path: ['unit'], message: complain(answer) });
        return z.NEVER;
    });
}
/** What stands for a column that is not there. */
const estimated = 'default: estimated by the rules of FAO-56';
/** Reference evapotranspiration worked out from a file of daily weather. */
export const weatherSchema = section({
    weather: word('a CSV file with one row for each day of the run, under a row of column names'),
    method: choice('how it is worked out; default: penman-monteith', [
        'penman-monteith',
        'hargreaves',
    ]).optional(),
    latitude: number('degrees north; south is below 0', -90, 90),
    altitude: quantity('length', 'height above the sea; range: 0 to 9000 m; default: none, which hargreaves alone allows').optional(),
    coastal: truth('on or near a coast, where radiation must be estimated; default: false').optional(),
    'wind-height': positive('length', 'height of the wind meter above the ground; range: 0.5 to 200 m; default: 2 m').optional(),
    columns: section({
        high: column('temperature', 'highest air temperature of the day; range: -90 to 60 degC'),
        low: column('temperature', 'lowest air temperature of the day; range: -90 degC to the highest'),
        'dew-point': column('temperature', `dew point; range: -90 to 60 degC; ${estimated}`).optional(),
        'humidity-high': column('share', `highest relative humidity; range: 0 to 100 %; ${estimated}`).optional(),
        'humidity-low': column('share', `lowest relative humidity; range: 0 to 100 %; ${estimated}`).optional(),
        humidity: column('share', `mean relative humidity; range: 0 to 100 %; ${estimated}`).optional(),
        radiation: column('radiation', `solar radiation; range: 0 to 50 MJ/m2/d; ${estimated}`).optional(),
        sunshine: column('time', `bright sunshine; range: 0 to 24 h; ${estimated}`).optional(),
        wind: column('speed', `mean wind; range: 0 to 100 m/s; ${estimated}`).optional(),
    }, 'what was measured; all but the temperatures may be missing, whole or on some days'),
}, 'reference evapotranspiration from weather, outdoors');
const millimetres = 1000;
const hours = 24;
/** Most evapotranspiration of a day that is taken for true, m. */
const most = 0.03;
/** Columns of the file by key, a gap as NaN; undefined (and faults) where one cannot be read. */
function readColumns(reader, path, text, columns) {
    const found = {};
    let whole = true;
    for (const [key, given] of Object.entries(columns)) {
        if (given === undefined)
            continue;
        const gap = key === 'high' || key === 'low' ? undefined : Number.NaN;
        const answer = readCsvColumn(text, given.column, given.unit, given.dimension, gap);
        if ('values' in answer)
            found[key] = answer.values;
        else {
            const { problem, ...rest } = answer.complaint;
            reader.fault([...path, ...(answer.about === 'csv' ? ['weather'] : ['columns', key, 'column'])], problem, rest);
            whole = false;
        }
    }
    return whole ? found : undefined;
}
function dayOf(columns, day, date) {
    const value = (key) => {
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
const siteKeys = {
    latitude: 'latitude',
    elevation: 'altitude',
    windHeight: 'wind-height',
};
/** A fault of the site stands at its key, one of a day at the file with its line. */
function placeFault(reader, path, { key = '', problem, got, expected }, day) {
    const rest = compact({ got, expected });
    const site = siteKeys[key];
    if (site !== undefined)
        reader.fault([...path, site], problem, rest);
    else
        reader.fault([...path, 'weather'], `line ${day + 2} of the file, ${key}: ${problem}`, rest);
}
/** Says on how many days what was assumed or done. */
function note(reader, path, said) {
    const counts = new Map();
    for (const text of said.flat())
        counts.set(text, (counts.get(text) ?? 0) + 1);
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
export function readWeather(reader, path, given, { startDate, days }) {
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
    if (measured === undefined || (method === 'penman-monteith' && altitude === undefined))
        return undefined;
    const count = Math.max(1, Math.ceil(days));
    const rows = measured.high?.length ?? 0;
    if (rows < count) {
        const rest = { got: String(rows), expected: `at least ${count}` };
        reader.fault([...path, 'weather'], 'fewer days than the run', rest);
        return undefined;
    }
    const site = {
        latitude,
        elevation: altitude ?? 0,
        ...compact({ coastal, windHeight: given['wind-height'] }),
    };
    const et0 = [];
    const air = [];
    const radiation = [];
    const said = [];
    for (let index = 0; index < count; index++) {
        const day = dayOf(measured, index, startDate);
        try {
            const { et0: depth, assumed } = method === 'hargreaves'
                ? { et0: hargreaves(reader.parameters, site, day), assumed: [] }
                : penmanMonteith(reader.parameters, site, day);
            said.push([...assumed, ...(depth < 0 ? ['below 0, counted as 0,'] : [])]);
            et0.push(Math.max(0, depth / millimetres));
            air.push((day.high + day.low) / 2);
            const sun = sunPosition(reader.parameters, latitude, day.dayOfYear);
            radiation.push(solarRadiation(reader.parameters, site, day, sun).value);
        }
        catch (error) {
            if (!(error instanceof InputError))
                throw error;
            for (const fault of error.faults)
                placeFault(reader, path, fault, index);
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
    const daily = (values) => ({ kind: 'daily', values });
    return { et0: daily(et0), air: daily(air), radiation: daily(radiation) };
}
//# sourceMappingURL=weather.js.map
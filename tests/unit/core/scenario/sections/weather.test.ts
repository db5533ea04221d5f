import { describe, expect, it } from 'vitest';
import {
  createParameters,
  hargreaves,
  penmanMonteith,
  readScenarioFully,
  type ScenarioReading,
} from '@leat/core';
import { dayOfYear } from '../../../../../packages/core/src/base/calendar.js';
import { edited, messagesOf } from '../../../../product/faults/small-system.js';

const values = createParameters();
const rows = Array.from({ length: 30 }, (_, day) => ({
  high: 30 + (day % 5),
  low: 14 - (day % 3),
  wind: 7.2,
}));
const csv = (windOn: (day: number) => boolean = () => true): string =>
  [
    'Tx,Tn,km',
    ...rows.map(({ high, low, wind }, day) => [high, low, windOn(day) ? wind : ''].join(',')),
  ].join('\n');

const temperatures = 'high: { column: Tx, unit: degC }, low: { column: Tn, unit: degC }';
const written = (rest: string, columns = temperatures): string =>
  edited(['et0: 4 mm/d', `et0: { weather: w.csv, latitude: -34.5, ${rest}columns: { ${columns} } }`]);
const altitude = 'altitude: 300 m, ';
const site = { latitude: -34.5, elevation: 300 };

const read = (text: string, file = csv()): ScenarioReading =>
  readScenarioFully(text, { file: 'small.yaml', load: () => file });
const faults = (text: string, file = csv()): string[] => messagesOf(text, { load: () => file });
const depths = ({ scenario }: ScenarioReading): readonly number[] =>
  scenario.et0.kind === 'daily' ? scenario.et0.values : [];

/** Notes but for that of the light, which is read of the same file. */
const ofEt0 = (notes: readonly string[]): readonly string[] =>
  notes.filter((note) => !note.includes('climate.light'));

describe('reference evapotranspiration from a weather file', () => {
  it('is Hargreaves of each row on its day of the year, in m/d; nothing is assumed', () => {
    const reading = read(written('method: hargreaves, '));
    const wanted = rows.map(({ high, low }, day) => {
      const dated = { dayOfYear: dayOfYear('2001-01-01', day), high, low };
      return hargreaves(values, site, dated) / 1000;
    });
    expect(depths(reading)).toEqual(wanted);
    expect(ofEt0(reading.notes)).toEqual([]);
  });

  it('is Penman-Monteith with what was not measured filled in by rule and said, gaps of single days too', () => {
    const reading = read(
      written(altitude, `${temperatures}, wind: { column: km, unit: km/h }`),
      csv((day) => day !== 7),
    );
    const wanted = rows.map(({ high, low }, day) => {
      const dated = { dayOfYear: day + 1, high, low };
      return penmanMonteith(values, site, day === 7 ? dated : { ...dated, wind: 2 }).et0 / 1000;
    });
    depths(reading).forEach((depth, day) => {
      expect(depth).toBeCloseTo(wanted[day], 14);
    });
    expect(ofEt0(reading.notes)).toEqual([
      'small.yaml:6: climate.et0: dew point from the lowest temperature on 30 of 30 days',
      'small.yaml:6: climate.et0: solar radiation from the range of temperature (interior) on 30 of 30 days',
      'small.yaml:6: climate.et0: wind of 2 m/s on 1 of 30 days',
    ]);
  });

  it('reads humidity, sunshine and radiation in their units', () => {
    const all = Array.from({ length: 30 }, () => '25,15,80,40,9,200');
    const columns = [
      'high: { column: x, unit: degC }, low: { column: n, unit: degC }',
      'humidity-high: { column: rx, unit: "%" }, humidity-low: { column: rn, unit: "%" }',
      'sunshine: { column: sun, unit: h }',
    ].join(', ');
    const file = ['x,n,rx,rn,sun,rs', ...all].join('\n');
    const measured = { dayOfYear: 1, high: 25, low: 15, humidityHigh: 0.8, humidityLow: 0.4 };
    expect(depths(read(written(altitude, columns), file))[0]).toBeCloseTo(
      penmanMonteith(values, site, { ...measured, sunshine: 9 }).et0 / 1000,
      14,
    );
    const radiation = `${columns}, radiation: { column: rs, unit: W/m2 }`;
    expect(depths(read(written(altitude, radiation), file))[0]).toBeCloseTo(
      penmanMonteith(values, site, { ...measured, radiation: 200 * 0.0864 }).et0 / 1000,
      14,
    );
  });

  it('below 0 counts as 0, and is said', () => {
    const frost = ['Tx,Tn', ...rows.map(() => '-20,-30')].join('\n');
    const reading = read(written('method: hargreaves, '), frost);
    expect(depths(reading)).toEqual(rows.map(() => 0));
    expect(ofEt0(reading.notes)).toEqual([
      'small.yaml:6: climate.et0: below 0, counted as 0, on 30 of 30 days',
    ]);
  });

  it('resolves to the daily values themselves', () => {
    const { resolved, scenario } = read(written(altitude));
    const again = readScenarioFully(JSON.stringify(resolved.plain), { file: 'again.yaml' }).scenario;
    expect(again.et0).toEqual(scenario.et0);
  });
});

describe('messages about weather', () => {
  const at = 'small.yaml:6:';
  it.each<[name: string, text: string, file: string, message: string]>([
    [
      'no altitude',
      written(''),
      csv(),
      `${at}3: climate.et0.altitude: missing; expected the height above the sea such as "400 m"`,
    ],
    [
      'a column that is not there',
      written('method: hargreaves, ', temperatures.replace('Tn', 'Tnn')),
      csv(),
      `${at}123: climate.et0.columns.low.column: no such column; got "Tnn"; did you mean Tn?`,
    ],
    [
      'a unit of another dimension',
      written('method: hargreaves, ', temperatures.replace('degC', 'mm')),
      csv(),
      `${at}100: climate.et0.columns.high.unit: wrong dimension: this is a length; got "mm"; expected a temperature such as "24 degC" or "75 degF"`,
    ],
    [
      'a misspelt key',
      written('metod: hargreaves, '),
      csv(),
      `${at}43: climate.et0.metod: unknown key; did you mean method?`,
    ],
    [
      'a missing temperature',
      written('method: hargreaves, '),
      csv().replace('\n31,', '\n,'),
      `${at}19: climate.et0.weather: line 3 of the file, column Tx: no value; got "w.csv"`,
    ],
    [
      'a lowest above the highest',
      written('method: hargreaves, '),
      csv().replace('\n31,13', '\n13,31'),
      `${at}19: climate.et0.weather: line 3 of the file, low: above the highest; got 31; expected at most 13 degC`,
    ],
    [
      'a height of the meter that cannot be',
      written(`${altitude}wind-height: 300 m, `),
      csv(),
      `${at}73: climate.et0.wind-height: outside what can be; got 300; expected 0.5 to 200 m`,
    ],
    [
      'fewer days than the run',
      written('method: hargreaves, '),
      csv().split('\n').slice(0, 20).join('\n'),
      `${at}19: climate.et0.weather: fewer days than the run; got 19; expected at least 30`,
    ],
    [
      'wind that dries more than a day can',
      written(altitude, `${temperatures}, wind: { column: km, unit: m/s }`),
      `Tx,Tn,km\n${'50,10,50\n'.repeat(30)}`,
      `${at}19: climate.et0.weather: line 2 of the file: more than a day evaporates; got X; expected at most 30 mm/d`,
    ],
  ])('%s', (_, text, file, message) => {
    const [got, ...more] = faults(text, file);
    expect(got.replace(/got [\d.]+ mm\/d/, 'got X')).toBe(message);
    expect(more).toEqual([]);
  });
});

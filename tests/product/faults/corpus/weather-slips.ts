import { smallSystem } from '../../../support/small-text.js';
import { slip, type Slip } from './slip.js';

/** Forty days of invented weather. */
export const weatherText = `date,tmax,tmin,rs\n${Array.from({ length: 40 }, (_, i) => `day${i + 1},${20 + (i % 5)}.5,${8 + (i % 3)}.5,15.5`).join('\n')}\n`;

const given =
  'weather: w.csv, latitude: 48, altitude: 400 m, columns: { high: { column: tmax, unit: degC }, low: { column: tmin, unit: degC }, radiation: { column: rs, unit: MJ/m2/d } }';

/** The small system under that weather. */
export const weatherSystem = smallSystem.replace('et0: 4 mm/d', `et0: { ${given} }`);

export const weatherSlips: readonly Slip[] = [
  { name: 'an empty file', text: '' },
  { name: 'a header alone', text: 'date,tmax,tmin,rs\n' },
  { name: 'too few days', text: weatherText.split('\n').slice(0, 20).join('\n') },
  { name: 'binary', text: Uint8Array.from([0, 1, 2, 3]) },
  { name: 'Latin-1', text: Buffer.from('date,tmax,tmin,rs\n1,20,8,15 \xb0\n', 'latin1') },
  { name: 'semicolons and decimal commas', text: weatherText.replaceAll(',', ';').replaceAll('.', ',') },
  { name: 'tabs and another name', text: weatherText.replaceAll(',', '\t').replace('tmax', 'TX') },
  { name: 'a century and more', text: `date,tmax,tmin,rs\n${'d,20,8,15\n'.repeat(40_001)}` },
  { name: '201 columns', text: `date,tmax,tmin,rs${',x'.repeat(197)}\n` },
  slip('a column renamed', 'tmax', 'Tmax'),
  slip('a column in other words', 'tmax', 'maximum'),
  slip('a gap', 'day3,22.5', 'day3,'),
  slip('a word', 'day3,22.5', 'day3,n/a'),
  slip('a unit in a cell', 'day3,22.5', 'day3,22.5 degC'),
  slip('NaN', 'day3,22.5', 'day3,NaN'),
  slip('1e308', 'day3,22.5', 'day3,1e308'),
  slip('1e309', 'day3,22.5', 'day3,1e309'),
  slip('a missing value of a station', 'day3,22.5', 'day3,-9999'),
  slip('the low above the high', 'day3,22.5,10.5', 'day3,5.5,10.5'),
  slip('a negative radiation', '10.5,15.5', '10.5,-15.5'),
  slip('radiation of a thousand suns', '10.5,15.5', '10.5,15500'),
  slip('a row cut short', 'day3,22.5,10.5,15.5', 'day3'),
  slip('temperatures in Kelvin', 'day3,22.5,10.5', 'day3,295.5,283.5'),
];

/** Slips in how the system names its weather. */
export const siteSlips: readonly Slip[] = [
  slip('a file that is not there', 'w.csv', 'x.csv'),
  slip('a latitude of 480', 'latitude: 48', 'latitude: 480'),
  slip('a latitude in words', 'latitude: 48', 'latitude: north'),
  slip('an altitude without a unit', 'altitude: 400 m', 'altitude: 400'),
  slip('an altitude left out', 'altitude: 400 m, ', ''),
  slip('a column that the file lacks', 'column: tmin', 'column: tlow'),
  slip('a unit of another dimension', 'column: tmin, unit: degC', 'column: tmin, unit: mm'),
  slip('a kind of column unknown', 'radiation:', 'sun:'),
  slip('the low left out', 'low: { column: tmin, unit: degC }, ', ''),
  slip('a method unknown', 'weather: w.csv', 'weather: w.csv, method: penman'),
];

import { slip, type Slip } from './slip.js';

/** A valid log of water tests, and the map of its columns; invented. */
export const logText = `Date,Ammonia,Nitrite,Nitrate,pH,Feed,Temp,Notes
2025-03-01,0.25,0.1,20,7.2,70,24.5,
2025-03-02,0.5,0.1,20,7.2,75,24.5,fed late
2025-03-03,0.25,0.1,40,7.0,80,25,
2025-03-05,0.25,,40,7.0,80,25,
`;

export const mapText = `date: { column: Date }
columns:
  Ammonia: { reads: ammonia, in: tank, unit: mg N/L, steps: [0, 0.25, 0.5, 1, 2, 4] }
  Nitrite: { reads: nitrite, in: tank, unit: mg N/L }
  Nitrate: { reads: nitrate, in: tank, unit: mg N/L }
  pH: { reads: pH, in: tank, resolution: 0.2 }
  Feed: { feed: all, unit: g }
  Temp: { reads: temperature, in: tank, unit: degC }
  Notes: notes
`;

export const logSlips: readonly Slip[] = [
  { name: 'an empty log', text: '' },
  { name: 'blank lines alone', text: '\n\n' },
  { name: 'a binary log', text: Uint8Array.from({ length: 200 }, (_, i) => (i * 7) % 256) },
  { name: 'a log in Latin-1', text: Buffer.from('Date,Größe\n', 'latin1') },
  { name: 'a header alone', text: 'Date,Ammonia,Nitrite,Nitrate,pH,Feed,Temp,Notes\n' },
  { name: 'a log of other columns', text: 'day,count\n1,2\n' },
  { name: 'a log cut short in a quote', text: `${logText}2025-03-06,"0.25` },
  { name: 'a log of 201 columns', text: `Date${',x'.repeat(200)}\n` },
  { name: 'a log of 100,001 rows', text: `Date\n${'2025-03-01\n'.repeat(100_001)}` },
  slip('31 February', '2025-03-02', '2025-02-31'),
  slip('a date in words', '2025-03-02', 'Tuesday'),
  slip('a date left out', '2025-03-02', ''),
  slip('a date that goes back', '2025-03-05', '2025-02-05'),
  slip('the same date twice', '2025-03-02', '2025-03-01'),
  slip('a year of two figures', '2025-03-02', '02/03/25'),
  slip('month 13', '2025-03-02', '2025-13-02'),
  slip('a decimal comma', '0.25,0.1,20,7.2,70', '"0,25",0.1,20,7.2,70'),
  slip('a number in words', '0.5,0.1', 'high,0.1'),
  slip('NaN', '0.5,0.1', 'NaN,0.1'),
  slip('1e308', '0.5,0.1', '1e308,0.1'),
  slip('1e309', '0.5,0.1', '1e309,0.1'),
  slip('a negative reading', '0.5,0.1', '-0.5,0.1'),
  slip('a pH of 72', '20,7.2,75', '20,72,75'),
  slip('a negative feed', '75,24.5', '-75,24.5'),
  slip('a unit in a cell', '0.5,0.1', '0.5 mg/L,0.1'),
  slip('an error of a spreadsheet', '0.5,0.1', '#DIV/0!,0.1'),
  slip('a column renamed', 'Ammonia', 'NH3'),
  slip('a column twice', 'Nitrite,Nitrate', 'Nitrate,Nitrate'),
  slip('a date column renamed', 'Date', 'Datum'),
  slip('a temperature in Fahrenheit', '24.5,fed late', '76,fed late'),
];

export const mapSlips: readonly Slip[] = [
  { name: 'an empty map', text: '' },
  { name: 'a map that is a list', text: '- Date\n' },
  { name: 'a map that is binary', text: Uint8Array.from([0, 159, 146, 150]) },
  { name: 'a map in JSON cut short', text: '{"date": {"column": "Date"}, "columns": {' },
  slip('date left out', 'date: { column: Date }\n', ''),
  slip('columns left out', 'columns:', 'colums:'),
  slip('column that the log lacks', '  Nitrite:', '  Nitrit:'),
  slip('date column that the log lacks', 'column: Date', 'column: Day'),
  slip('quantity unknown', 'reads: nitrite', 'reads: nitrites'),
  slip('unit left out', ', unit: mg N/L }\n  Nitrate', ' }\n  Nitrate'),
  slip('unit ambiguous', 'unit: mg N/L }', 'unit: mg/L }'),
  slip('unit of another dimension', 'unit: degC', 'unit: g'),
  slip('unit for pH', 'resolution: 0.2', 'unit: mg/L'),
  slip('resolution zero', 'resolution: 0.2', 'resolution: 0'),
  slip('resolution negative', 'resolution: 0.2', 'resolution: -1'),
  slip('steps that fall', '[0, 0.25, 0.5, 1, 2, 4]', '[4, 2, 1]'),
  slip('steps of words', '[0, 0.25, 0.5, 1, 2, 4]', '[low, high]'),
  slip('one step', '[0, 0.25, 0.5, 1, 2, 4]', '[1]'),
  slip('feed in a measure not said', 'unit: g }', 'unit: scoop }'),
  slip('a word unknown for a column', 'Notes: notes', 'Notes: note'),
  slip('a column twice', '  Notes: notes', '  pH: skip\n  Notes: notes'),
  slip('a tab', '  Notes: notes', '\tNotes: notes'),
  slip('order of dates unknown', 'column: Date', 'column: Date, order: dmy'),
  slip('a header row that is not there', 'date: {', 'header: 99\ndate: {'),
  slip('a header row of nothing', 'date: {', 'header: 0\ndate: {'),
  slip('a measure without a unit', 'columns:', 'measures: { scoop: 30 }\ncolumns:'),
];

import { header, ownTable } from '../../../support/own-table.js';
import { slip, type Slip } from './slip.js';

/** A valid table of the user: one number of ours given anew; invented. */
export const tableText = ownTable(
  'fish.nile-tilapia.body-demand|1.6|g/g|1.4|1.8|triangular|own scales|our notes of 2025|-|U',
);

const row = (text: string): string => `${header}\n${text.split('|').join('\t')}\n`;

export const tableSlips: readonly Slip[] = [
  { name: 'an empty table', text: '' },
  { name: 'a comment alone', text: '# mine\n' },
  { name: 'a header alone with a column less', text: `${header.replace('\tmark', '')}\n` },
  { name: 'a table with commas', text: tableText.replaceAll('\t', ',') },
  { name: 'a table with blanks', text: tableText.replaceAll('\t', ' ') },
  { name: 'a binary table', text: Uint8Array.from([0, 1, 2, 255]) },
  { name: 'a spreadsheet for a table', text: Uint8Array.from([0x50, 0x4b, 3, 4]) },
  { name: 'a table of 5001 rows', text: `${header}\n${'x\n'.repeat(5001)}` },
  { name: 'a row too short', text: row('fish.nile-tilapia.body-demand|1.6') },
  {
    name: 'a subject begun',
    text: row('fish.estuary-perch.body-demand|1.6|g/g|1.4|1.8|triangular|own|own|-|U'),
  },
  slip('a column misspelt', 'value', 'valu'),
  slip('a column twice', 'low', 'value'),
  slip('an id misspelt', 'fish.nile-tilapia.body-demand', 'fish.nile-tilapia.body-demnad'),
  slip('an id in capitals', 'fish.nile-tilapia.body-demand', 'FISH.NILE-TILAPIA.BODY-DEMAND'),
  slip('a group unknown', 'fish.nile-tilapia.body-demand', 'bird.duck.body-demand'),
  slip('a name of every object', 'fish.nile-tilapia.body-demand', 'constructor.prototype.body-demand'),
  slip('a value with a decimal comma', '1.6', '1,6'),
  slip('a value in words', '1.6', 'good'),
  slip('a value left out', '\t1.6\t', '\t\t'),
  slip('a value NaN', '1.6', 'NaN'),
  slip('a value of 1e308', '1.6', '1e308'),
  slip('a value of 1e309', '1.6', '1e309'),
  slip('a value negative', '1.6', '-1.6'),
  slip('a value of zero', '\t1.6\t', '\t0\t'),
  slip('a range upside down', '1.4\t1.8', '1.8\t1.4'),
  slip('a range beside its value', '1.4\t1.8', '1.7\t1.8'),
  slip('a unit unknown', 'g/g', 'kg per kg'),
  slip('a unit of another dimension', 'g/g', 'degC'),
  slip('a distribution unknown', 'triangular', 'triangle'),
  slip('a mark unknown', '\tU', '\tX'),
  slip('a source left out', '\tour notes of 2025\t-', '\t\t-'),
  { name: 'a row twice', text: `${tableText}${tableText.split('\n')[1]}\n` },
];

// A run as CSV that pandas and R read as it is: a row for each day, a column for each series; read-it.py goes on.
import { writeFileSync } from 'node:fs';
import { allSeries, compileModel, createParameters, simulate } from '@leat/core';
import { tank } from './tank.js';

const series = allSeries(simulate(compileModel(tank(), createParameters())));
const dates = series[0].dates();
const head = ['date', ...series.map(({ name }) => name.replaceAll(/\W/g, '_'))];
const cell = (value: number): string => (Number.isFinite(value) ? String(value) : '');
const rows = dates.map((date, i) => [date, ...series.map(({ values }) => cell(values[i]))].join(','));
writeFileSync('tank.csv', `${[head.join(','), ...rows].join('\n')}\n`);
console.log(`${rows.length} days, ${series.length} series`);

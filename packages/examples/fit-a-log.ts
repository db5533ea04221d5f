// node fit-a-log.js backyard.yaml backyard.csv backyard.map: which rate makes the system go through its log?
import { readFileSync } from 'node:fs';
import { readScenarioFully } from '@leat/core';
import { csvTable, fit, readLog, readLogMap } from '@leat/core/calibration';

const [file = 'system.yaml', csv = 'log.csv', map = 'log.map'] = process.argv.slice(2);
const text = (name: string): string => readFileSync(name, 'utf8');
const table = csvTable(text(csv), csv);
const log = readLog(table, readLogMap(text(map), map, table));
const system = {
  read: (set: readonly { path: string; value: string }[], days?: number) =>
    readScenarioFully(text(file), { file, set, ...(days !== undefined && { days }) }),
};

const { numbers, readings } = fit({ system, log, free: ['aob.growth'], furtherStarts: 0 });
for (const { name, value, low, high, unit, verdict } of numbers)
  console.log(`${name} ${verdict}: ${value} (${low} to ${high}) ${unit}, by ${readings} readings`);

import { fit } from '@leat/core';
import { bench, describe } from 'vitest';
import { backyardKit } from '../support/backyard-twin.js';
import { fitSystem } from '../support/fit-system.js';
import { inventedLog, inventedMap, readInvented } from '../support/invented-log.js';

const days = 1100;
const kit = backyardKit.map((column) => ({ ...column, often: 0.205 }));

const often = [
  { path: 'dosing[0].every', value: '5 d' },
  { path: 'dosing[0].mass', value: '70 g' },
];

/** Two systems whose logs are three years of daily rows, some 225 readings of each nitrogen species. */
describe('three years of daily rows, read and fitted: two systems take two cores this long', () => {
  for (const [name, capacity] of [
    ['first', '0.4'],
    ['second', '0.24'],
  ] as const) {
    const system = fitSystem('backyard');
    const text = inventedLog(
      system.read([{ path: 'parameters.biofilm.capacity', value: capacity }, ...often], days).scenario,
      {
        seed: name.length,
        days,
        columns: kit,
        spoilt: 0.03,
        feed: (day) => (day % 7 === 6 ? 0 : 70 + 5 * (day % 4)),
        temperature: (day) => 23 + 3 * Math.cos((2 * Math.PI * day) / 365) + 0.5 * Math.sin(day),
      },
    );
    bench(
      `the ${name} system`,
      () => {
        fit({
          system: { read: (set, length) => system.read([...often, ...set], length) },
          log: readInvented(text, inventedMap(kit, 'tank')),
          free: [],
        });
      },
      { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
    );
  }
});

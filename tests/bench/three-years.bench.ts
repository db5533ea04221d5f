import { fit } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { backyardKit } from '../support/backyard-twin.js';
import { fitSystem } from '../support/fit-system.js';
import { inventedLog, inventedMap, joinedLogs, readInvented } from '../support/invented-log.js';
import { checking, figure } from './support/kept.js';
import { once } from './support/meter.js';

const days = 1100;
const kit = backyardKit.map((column) => ({ ...column, often: 0.205 }));

const often = [
  { path: 'dosing[0].every', value: '5 d' },
  { path: 'dosing[0].mass', value: '70 g' },
];

const systems = [
  { name: 'north ', capacity: '0.4' },
  { name: 'south ', capacity: '0.24' },
] as const;

/** Three years of daily rows by two systems, some 225 readings of each nitrogen species of each. */
function twoSystemLog(): string {
  return joinedLogs(
    systems.map(({ name, capacity }, i) => {
      const { scenario } = fitSystem('backyard').read(
        [{ path: 'parameters.biofilm.capacity', value: capacity }, ...often],
        days,
      );
      const text = inventedLog(scenario, {
        seed: 5 + i,
        days,
        columns: kit,
        spoilt: 0.03,
        feed: (day) => (day % 7 === 6 ? 0 : 70 + 5 * (day % 4)),
        temperature: (day) => 23 + 3 * Math.cos((2 * Math.PI * day) / 365) + 0.5 * Math.sin(day),
      });
      return { system: name, text };
    }),
  );
}

// Minutes of fitting and a figure of this machine: nothing is kept of it.
describe.skipIf(checking)('three years of daily rows of two systems', () => {
  it('are read and fitted, a core for each system', () => {
    const text = twoSystemLog();
    const system = fitSystem('backyard');
    const times = systems.map(({ name }) => {
      const read = readInvented(text, inventedMap(kit, 'tank', name));
      const nitrogen = ['ammonia', 'nitrite', 'nitrate'].map(
        (reads) => read.readings.filter((reading) => reading.reads === reads).length,
      );
      expect(read.readings.length).toBeGreaterThan(600);
      let runs = 0;
      const time = once(() => {
        fit({
          system: { read: (set, length) => system.read([...often, ...set], length) },
          log: readInvented(text, inventedMap(kit, 'tank', name)),
          free: [],
          onRun: () => (runs += 1),
        });
      });
      console.log(
        `  ${name}system: ${read.days} rows, ${read.readings.length} readings (${nitrogen.join(', ')} of TAN, nitrite, nitrate), ${runs} runs: ${(time / 1000).toFixed(1)} s of processor time`,
      );
      return time;
    });
    figure('the slower of two systems', Math.max(...times) / 1000, 's', 120);
  });
});

import { availableParallelism } from 'node:os';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { fit } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { backyardKit } from '../support/backyard-twin.js';
import { fitSystem } from '../support/fit-system.js';
import { inventedLog, inventedMap, readInvented } from '../support/invented-log.js';
import { checking, figure } from './support/kept.js';
import { once } from './support/meter.js';

const days = 250;
const backyard = readFileSync(
  fileURLToPath(new URL('../../packages/cli/scenarios/backyard.yaml', import.meta.url)),
  'utf8',
);

/** The backyard with a second tank and a raft: five vessels. */
const text = backyard
  .replace(
    '  bed:\n',
    '  tank-2: { kind: fish-tank, volume: 1 m3, area: 1.2 m2, aeration: 6 1/h }\n' +
      '  raft: { kind: raft, volume: 600 L, area: 3 m2, aeration: 2 1/h }\n  bed:\n',
  )
  .replace(
    '  - { from: tank, to: bed }\n',
    '  - { from: sump, to: tank-2, pump: main, rate: 1 m3/h }\n  - { from: tank, to: bed }\n' +
      '  - { from: tank-2, to: raft }\n  - { from: raft, to: sump }\n',
  )
  .replace(
    '\nplantings:\n',
    '\n  more: { in: tank-2, species: nile-tilapia, number: 30, mass: 150 g, feed: grower-32, ration: 80 g/d }\n\n' +
      'plantings:\n  lettuce: { in: raft, crop: lettuce-butterhead, area: 3 m2, batches: 2 }\n',
  )
  .replace('mass: 100 g, every: 7 d', 'mass: 120 g, every: 5 d');

// A figure of this machine: nothing is kept of it.
describe.skipIf(checking)('a fit of 400 readings and five vessels', () => {
  it('with the usual numbers free, on one core', () => {
    const system = fitSystem('backyard', text);
    const { scenario } = system.read([{ path: 'parameters.biofilm.capacity', value: '0.4' }], days);
    expect(scenario.vessels).toHaveLength(5);
    const kit = backyardKit.map((column) => ({ ...column, often: (column.often * 400) / (1.55 * days) }));
    const written = inventedLog(scenario, {
      ...{ seed: 5, days, columns: kit, spoilt: 0.03 },
      feed: (day) => (day % 7 === 6 ? 0 : 140 + 10 * (day % 4)),
      temperature: (day) => 23 + 3 * Math.cos((2 * Math.PI * day) / 365) + 0.5 * Math.sin(day),
    });
    const log = readInvented(written, inventedMap(kit, 'tank'));
    let runs = 0;
    const time = once(() => {
      fit({ system, log, free: [], onRun: () => (runs += 1) });
    });
    console.log(
      `  ${log.readings.filter(({ reads }) => reads !== 'temperature').length} readings, ${runs} runs; leat fit makes them on ${availableParallelism()} cores`,
    );
    figure('processor time, which two cores share', time / 1000, 's', 20);
  });
});

import { readFileSync } from 'node:fs';
import { csvTable, guessLogMap, openScenarioText, readFit, readLog, readLogMap, sealed } from '@leat/core';
import { savedRun } from '../../../../packages/cli/src/files/saved-run.js';
import { smallSystem } from '../../../support/small-text.js';
import { logText, mapText } from '../../faults/corpus/log-slips.js';
import { tableText } from '../../faults/corpus/table-slips.js';
import { weatherSystem, weatherText } from '../../faults/corpus/weather-slips.js';

/** A kind of input: valid texts of it, what reads it, and its share of all cases. */
export interface Target {
  readonly name: string;
  readonly seeds: readonly string[];
  readonly share: number;
  readonly read: (text: string) => unknown;
}

const shipped = (name: string): string =>
  readFileSync(new URL(`../../../../packages/cli/scenarios/${name}`, import.meta.url), 'utf8');

function refuse(): never {
  throw new Error('no such file or folder');
}

const open = (
  text: string,
  beside: Readonly<Record<string, string>> = {},
  set: readonly string[] = [],
): unknown =>
  openScenarioText(text, {
    file: 'a.yaml',
    load: (path) => (Object.hasOwn(beside, path) ? beside[path] : refuse()),
    tables: Object.keys(beside).filter((name) => name.endsWith('.tsv')),
    set: set.map((path) => ({ path: path.split('=')[0], value: path.split('=').slice(1).join('=') })),
  });

const fit = JSON.stringify(
  sealed({
    ...{ schema: 'leat-fit', version: 1, title: 'a', covariance: [[1]] },
    provenance: { scenario: 'a', log: 'b', from: '2025-03-01', until: '2025-03-05' },
    numbers: [
      {
        ...{ name: 'start.nitrate', kind: 'start', unit: 'g/m3', value: 1, deviate: 0, deviation: 1 },
        prior: { value: 1, low: 0, high: 2, distribution: 'uniform' },
      },
    ],
  }),
);
const state = JSON.stringify({
  ...{ schema: 'leat-state', version: 1, volumes: { tank: 2 }, rainTank: 0, ages: {} },
  states: [{ component: 'nitrate', place: 'tank', amount: 3 }],
});
const savedSystem = smallSystem.replace('biofilm: cycled', 'biofilm: cycled\n  saved: s.json');
const budget = { in: 1, out: 1, stored: 0, residual: 0, throughput: 1, lines: [], stores: [] };
const run = JSON.stringify(
  sealed({
    ...{ title: 'a', time: [0, 1], keys: [], limits: [], events: [], sources: [], vessels: {} },
    outcome: { kind: 'done', time: 1 },
    series: { 'nitrate@tank': { unit: 'g/m3', values: [1, 2] } },
    budget: { nitrogen: budget, water: budget },
    manifest: { version: '1', scenario: 'x', integrator: 'rosenbrock', tolerance: 1e-5, seed: null },
  }),
);

const table = csvTable(logText, 'a.csv');

export const targets: readonly Target[] = [
  {
    name: 'scenario',
    seeds: [smallSystem, shipped('backyard.yaml'), shipped('start-up.yaml')],
    share: 0.2,
    read: open,
  },
  {
    name: 'log',
    seeds: [logText, shipped('backyard.csv').slice(0, 2000)],
    share: 0.15,
    read: (text: string): unknown => {
      const read = csvTable(text, 'a.csv');
      guessLogMap(read, { vessels: ['tank'], cohorts: [] });
      return readLog(read, readLogMap(mapText, 'a.map', read));
    },
  },
  {
    name: 'map',
    seeds: [mapText, shipped('backyard.map')],
    share: 0.15,
    read: (text) => readLog(table, readLogMap(text, 'a.map', table)),
  },
  {
    name: 'weather',
    seeds: [weatherText],
    share: 0.1,
    read: (text) => open(weatherSystem, { 'w.csv': text }),
  },
  { name: 'table', seeds: [tableText], share: 0.1, read: (text) => open(smallSystem, { 'mine.tsv': text }) },
  { name: 'saved state', seeds: [state], share: 0.05, read: (text) => open(savedSystem, { 's.json': text }) },
  { name: 'saved run', seeds: [run], share: 0.1, read: (text) => savedRun('a.json', text) },
  { name: 'fit', seeds: [fit], share: 0.1, read: (text) => readFit(text, 'a.json') },
  {
    name: 'setting',
    seeds: [
      'vessels.tank.volume=2 m3',
      'days=3',
      'flows[0].rate=1 m3/h',
      'parameters.fish.nile-tilapia.mortality=0.1',
    ],
    share: 0.05,
    read: (text) => open(smallSystem, {}, [text]),
  },
];

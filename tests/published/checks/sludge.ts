import { createParameters } from '@leat/core';
import { coefficientOf } from '../../support/row-of.js';
import { amountOf, doneRun, lastOf } from '../../support/run-of.js';
import { constant, scenarioOf, startOf, stillWater, vessel } from '../../support/scenario-builder.js';
import { about, between } from '../tolerance.js';
import type { Topic } from '../published-check.js';

const parameters = createParameters();
const share = parameters.value('solids.refractory-share');

/** A kilogram of fresh sludge in a cubic metre of aerated water, spread so thin that air reaches it all, after so many days. */
function aired(days: number): { solids: number; nitrogen: number } {
  const tank = vessel('tank', 1, { floor: 100, aeration: 200, temperature: constant(20) });
  const start = [
    startOf(tank, {
      settled: 1000 * (1 - share),
      settledRefractory: 1000 * share,
      water: stillWater(10, 7.5),
    }),
  ];
  const run = doneRun(scenarioOf([tank], { start, days, every: days }));
  const left = ['settled', 'settled-refractory', 'solids', 'refractory'].map((component) =>
    amountOf(run, lastOf(run), component, 'tank'),
  );
  const held = ['tan', 'nitrite', 'nitrate', 'organic-nitrogen'].map((component) =>
    amountOf(run, lastOf(run), component, 'tank'),
  );
  const sum = (list: readonly number[]): number => list.reduce((total, each) => total + each, 0);
  return { solids: sum(left), nitrogen: sum(held) };
}

/** What becomes of settled solids. */
export const sludge: Topic = {
  title: 'Settled solids',
  kind: 'process',
  note:
    'Fresh solids with the shares of the tables. How fast they break down, with air and without, was taken from publications named in ' +
    'the rows of `solids.hydrolysis-settled` and `denitrification.activity`, and is not held against them here.',
  checks: [
    {
      id: 'sludge-demand-per-nitrate',
      source: 'suhr-2013',
      where: 'abstract: 6.0, from 4.4 to 9.3',
      mark: 'R',
      what: 'oxygen demand taken up per nitrate-N, what stays as cells with it',
      unit: 'g/g N',
      ...between(4.4, 9.3),
      compute: () => parameters.value('solids.demand') / coefficientOf('denitrification', 'dinitrogen'),
    },
    {
      id: 'sludge-demand-bream',
      source: 'klas-2006',
      where: 'abstract: 4 to 6 needed where sludge stays under 10 d',
      mark: 'R',
      what: 'oxygen demand taken up per nitrate-N, sludge of sea bream',
      unit: 'g/g N',
      ...between(4, 6),
      miss: 'cells that grow and stay take 0.6 of what is taken up here, which makes 7.1; sludge of trout took 6.0 (4.4-9.3)',
      compute: () => parameters.value('solids.demand') / coefficientOf('denitrification', 'dinitrogen'),
    },
    {
      id: 'sludge-loss-aired',
      source: 'sludge-40-days',
      where: 'aerobic, 40 d',
      mark: 'R',
      what: 'dry matter lost by sludge under air in 40 d at 20 degC',
      unit: '%',
      ...about(36, 10, 'points'),
      miss: 'fresh faeces of the tables hold 58 % that breaks down; how much of it the sludge of the trial had already lost is not known',
      compute: () => 100 - aired(40).solids / 10,
    },
    {
      id: 'sludge-nitrogen-fourth-week',
      source: 'aerated-sludge',
      where: 'abstract: soluble N 181 at first, 890 after 3 weeks, 903 after 4',
      mark: 'R',
      what: 'nitrogen set free in three weeks of that in four, under air',
      unit: '%',
      ...about(98, 10, 'points'),
      compute: () => (100 * aired(21).nitrogen) / aired(28).nitrogen,
    },
  ],
};

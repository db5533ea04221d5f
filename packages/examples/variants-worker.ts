// The worker of variants.ts: one run for each ration that it is given.
import { parentPort } from 'node:worker_threads';
import { compileModel, createParameters, seriesOf, simulate } from '@leat/core';
import { serveJobs } from '@leat/core/workers';
import { tank } from './tank.js';

if (parentPort === null) throw new Error('started by variants.js');
serveJobs<{ readonly days: number }, number, number>(parentPort, ({ days }) => (ration) => {
  const run = simulate(compileModel(tank(ration, days), createParameters()));
  return Math.max(...seriesOf(run, 'tan@tank').values);
});

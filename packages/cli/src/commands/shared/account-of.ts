import { allSeries, budgetOf, limitsOf, type Run, type RunAccount } from '@leat/core';
import { keySeries } from './key-quantities.js';

/** What a run says, as far as it is compared with others. */
export function accountOf(run: Run): RunAccount {
  return {
    title: run.model.scenario.title,
    outcome: run.outcome,
    time: run.samples.map(({ time }) => time),
    series: allSeries(run),
    keys: keySeries(run),
    limits: limitsOf(run),
    nitrogen: budgetOf(run, 'nitrogen', 'system'),
    water: budgetOf(run, 'water', 'system'),
  };
}

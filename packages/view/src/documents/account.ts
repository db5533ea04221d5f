import { allSeries, budgetOf, costsOf, limitsOf, verdictOf, type Run, type RunAccount } from '@leat/core';
import { keySeries } from './keys.js';

/** What a run says, as far as it is compared with others. Plain data: it may be sent to a worker. */
export function accountOf(run: Run): RunAccount {
  const series = allSeries(run);
  const limits = limitsOf(run, series);
  const { title, startDate } = run.model.scenario;
  const costs = costsOf(run);
  return {
    ...{ title, startDate, limits },
    series: series.map(({ name, unit, values }) => ({ name, unit, values })),
    outcome: run.outcome,
    time: run.samples.map(({ time }) => time),
    keys: keySeries(run),
    verdict: verdictOf(run, limits, series),
    ...(costs && { costs }),
    nitrogen: budgetOf(run, 'nitrogen', 'system'),
    water: budgetOf(run, 'water', 'system'),
  };
}

import type { Bands, LimitOdds } from '@leat/core';
import type { SavedEnsemble } from '../../../packages/cli/src/files/saved-ensemble.js';
import type { RunSummary } from '@leat/view/report';

const drawn = ['tan', 'nitrite', 'nitrate', 'pH'];

/** An ensemble about a run, made up for the test: so many percent to both sides of each value. */
export function banded({ account }: RunSummary): SavedEnsemble['result'] {
  const series = account.series.filter(({ name }) => drawn.some((each) => name === `${each}@tank-1`));
  const scaled = (values: ArrayLike<number>, factor: number): Float64Array =>
    Float64Array.from(values, (value) => value * factor);
  const around = (value: number): Bands => ({
    ...{ median: value, band50: [value * 0.9, value * 1.1], band90: [value * 0.5, value * 2] },
  });
  const odds: Omit<LimitOdds, 'passed' | 'probability'> = {
    id: 'fish.nile-tilapia.limit-nitrite',
    ...{ quantity: 'nitrite', place: 'tank-1', direction: 'above', value: 1, unit: 'mg N/L', averaging: 1 },
    ...{ whom: 'nile-tilapia', source: 'invented', page: '-', mark: 'P', harm: 'harmful' },
    ...{ judged: 200, first: around(8), total: around(20) },
  };
  const answers = { answered: 199, mean: 2, deviation: 1, lowest: 0.5, highest: 9 };
  return {
    sampling: { method: 'sobol', members: 200, seed: 7 },
    ran: 200,
    failed: [{ member: 3, reason: 'oxygen ran out' }],
    drawn: [{ id: 'aob.rate' }, { id: 'nob.rate' }],
    times: account.time,
    series: series.map(({ name, unit, values }) => ({
      name,
      unit,
      median: scaled(values, 1),
      band50: [scaled(values, 0.93), scaled(values, 1.07)],
      band90: [scaled(values, 0.85), scaled(values, 1.18)],
      resolution: 0,
    })),
    limits: [
      { ...odds, passed: 25, probability: 0.125 },
      { ...odds, place: 'tank-2', passed: 0, probability: 0 },
    ],
    measures: [{ text: 'highest tan@tank-1', unit: 'mg N/L', ...around(2), ...answers, unanswered: null }],
    conditions: [
      {
        ...{ text: 'highest tan@tank-1 below 2', unit: 'mg N/L', ...around(0.5), ...answers },
        ...{ unanswered: null, holds: 50, share: 0.25 },
      },
    ],
  };
}

import { fatesOf } from '@leat/core';
import type { Maker } from '@leat/view/pictures';
import { shown } from '@leat/view/text';
import type { RunSummary } from './run-summary.js';
import { fatesTable } from './nitrogen-section.js';
import { runTitle, section } from './elements.js';

/** The water balance of each run, on one scale. */
export function waterSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const fates = runs.map(({ account }) => fatesOf(account.water));
  const most = Math.max(...fates.flatMap(({ from, to }) => [...from, ...to].map(({ amount }) => amount)));
  const balances = runs.map(({ letter, account }, i) => {
    const { from, to, total } = fates[i];
    const length = account.time[account.time.length - 1] - account.time[0];
    return maker.html(
      'div',
      {},
      ...(runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : []),
      maker.html(
        'div',
        runs.length > 1 ? {} : { class: 'pair' },
        fatesTable(maker, 'Water came from', from, 'm³', most, () => 'var(--pool)'),
        fatesTable(maker, 'Water went to', to, 'm³', most, () => 'var(--water)'),
      ),
      ...(length > 0
        ? [maker.html('p', { class: 'note' }, `${shown((total / length) * 1000)} L a day in the mean.`)]
        : []),
    );
  });
  return section(
    maker,
    'water',
    'The water balance',
    maker.html('div', runs.length > 1 ? { class: 'runs balances' } : {}, ...balances),
  );
}

import { fatesOf } from '@leat/core';
import type { Maker } from '../pictures/index.js';
import type { RunSummary } from './run-summary.js';
import { fatesTable } from './nitrogen-section.js';
import { runTitle, section } from './elements.js';

/** The water balance of each run, on one scale. */
export function waterSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const { display } = maker;
  const words = display.words.report.water;
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
        fatesTable(maker, words.from, from, 'm³', most, () => 'var(--pool)'),
        fatesTable(maker, words.to, to, 'm³', most, () => 'var(--water)'),
      ),
      ...(length > 0
        ? [maker.html('p', { class: 'note' }, words.mean(display.amount((total / length) * 1000, 'L')))]
        : []),
    );
  });
  return section(
    maker,
    'water',
    words.title,
    maker.html('div', runs.length > 1 ? { class: 'runs balances' } : {}, ...balances),
  );
}

import type { Share } from '@leat/core';
import type { Maker } from '../../picture/document.js';
import { percent, shown } from '../../render/number.js';
import { bar } from './bars.js';

const total = (shares: readonly Share[], key: 'amount' | 'share'): number =>
  shares.reduce((sum, each) => sum + each[key], 0);

/**
 * Parts of a balance as a table with a bar in every row.
 * @param most the amount that fills a bar: the same for all tables that are compared
 */
export function fatesTable(
  maker: Maker,
  caption: string,
  shares: readonly Share[],
  unit: string,
  most: number,
  colour: (name: string) => string,
): HTMLElement {
  const row = (
    name: string,
    amount: number,
    share: number,
    mark: Element | string,
    kind: string,
  ): HTMLElement =>
    maker.html(
      'tr',
      kind === '' ? {} : { class: kind },
      maker.html('th', { scope: 'row' }, name),
      maker.html('td', { class: 'number' }, `${shown(amount)} ${unit}`),
      maker.html('td', { class: 'number' }, percent(share)),
      maker.html('td', { class: 'bar' }, mark),
    );
  const head = ['', unit, 'share', ''].map((name, i) =>
    i === 0 || i === 3 ? maker.html('td', {}) : maker.html('th', { scope: 'col', class: 'number' }, name),
  );
  return maker.html(
    'table',
    { class: 'bars' },
    maker.html('caption', {}, caption),
    maker.html('thead', {}, maker.html('tr', {}, ...head)),
    maker.html(
      'tbody',
      {},
      row('in all', total(shares, 'amount'), total(shares, 'share'), '', 'total'),
      ...shares.map(({ name, amount, share }) =>
        row(name, amount, share, bar(maker, { value: amount, colour: colour(name) }, most, false), ''),
      ),
    ),
  );
}

import type { Fates, Share } from '@leat/core';
import { columns } from './columns.js';
import { percent, shown } from './number.js';

const rows = (shares: readonly Share[], unit: string): readonly (readonly string[])[] =>
  shares.map(({ name, amount, share }) => [`  ${name}`, `${shown(amount)} ${unit}`, percent(share)]);

/** Where something came from and where it went, in amounts and percent, under a heading. */
export function fateLines(title: string, fates: Fates, unit: string): readonly string[] {
  const came = rows(fates.from, unit);
  const went = rows(fates.to, unit);
  const closes = fates.to.reduce((total, { share }) => total + share, 0);
  const body = columns(
    [
      ['from'],
      ...came,
      ['to'],
      ...went,
      ['  in all', `${shown(fates.total)} ${unit}`, fates.total === 0 ? '-' : percent(closes)],
    ],
    ['left', 'right', 'right'],
  );
  return [title, ...body];
}

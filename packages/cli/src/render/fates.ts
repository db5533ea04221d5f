import type { Fates, Share } from '@leat/core';
import { columns } from './columns.js';
import { percent, shown } from './number.js';

const rows = (shares: readonly Share[], unit: string): readonly (readonly string[])[] =>
  shares.map(({ name, amount, share }) => [`  ${name}`, `${shown(amount)} ${unit}`, percent(share)]);

function block(title: string, shares: readonly Share[], unit: string): readonly string[] {
  const amount = shares.reduce((total, each) => total + each.amount, 0);
  const share = shares.reduce((total, each) => total + each.share, 0);
  return columns(
    [[title, `${shown(amount)} ${unit}`, percent(share)], ...rows(shares, unit)],
    ['left', 'right', 'right'],
  );
}

/** Where something came from, in amounts and percent, under a heading with the whole. */
export function cameLines(title: string, fates: Fates, unit: string): readonly string[] {
  return block(title, fates.from, unit);
}

/** Where it went; closes to 100 percent of what came. */
export function wentLines(title: string, fates: Fates, unit: string): readonly string[] {
  return block(title, fates.to, unit);
}

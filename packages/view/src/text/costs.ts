import type { Costs } from '@leat/core';
import { plain } from './names.js';

/** An amount of money: two places, none where it is large. */
export function moneyText(amount: number): string {
  return Math.abs(amount) >= 1000 ? amount.toFixed(0) : amount.toFixed(2);
}

const list = ({ rows }: Costs, kind: 'spent' | 'earned'): string =>
  rows
    .filter((row) => row.kind === kind)
    .map(({ name, amount }) => `${plain(name)} ${moneyText(amount)}`)
    .join(', ');

/** What a run cost and fetched, in lines; what has no price, and stock and building, is not in it. */
export function costLines(costs: Costs): readonly string[] {
  const { currency, spent, earned } = costs;
  const money = currency === '' ? '' : ` ${currency}`;
  const line = (name: string, total: number, kind: 'spent' | 'earned'): readonly string[] =>
    costs.rows.some((row) => row.kind === kind)
      ? [`${name}: ${moneyText(total)}${money} (${list(costs, kind)})`]
      : [];
  return [
    ...line('spent', spent, 'spent'),
    ...line('earned', earned, 'earned'),
    `left over: ${moneyText(earned - spent)}${money}, of what has a price; stock and building apart`,
  ];
}

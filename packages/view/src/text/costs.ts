import type { Costs } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { plain } from './names.js';

/** An amount of money: two places, none where it is large. */
export function moneyText(amount: number, display: Display = plainDisplay): string {
  return display.digits(Math.abs(amount) >= 1000 ? amount.toFixed(0) : amount.toFixed(2));
}

const list = ({ rows }: Costs, kind: 'spent' | 'earned', display: Display): string =>
  rows
    .filter((row) => row.kind === kind)
    .map(({ name, amount }) => `${plain(name, display)} ${moneyText(amount, display)}`)
    .join(', ');

/** What a run cost and fetched, in lines; what has no price, and stock and building, is not in it. */
export function costLines(costs: Costs, display: Display = plainDisplay): readonly string[] {
  const { currency, spent, earned } = costs;
  const words = display.words.text.costs;
  const money = (amount: number): string =>
    `${moneyText(amount, display)}${currency === '' ? '' : ` ${currency}`}`;
  const line = (name: string, total: number, kind: 'spent' | 'earned'): readonly string[] =>
    costs.rows.some((row) => row.kind === kind)
      ? [words.line(name, money(total), list(costs, kind, display))]
      : [];
  return [
    ...line(words.spent, spent, 'spent'),
    ...line(words.earned, earned, 'earned'),
    words.left(money(earned - spent)),
  ];
}

import { sum } from '../sum.js';
import type { Budget, BudgetLine } from './budget.js';
import { outsideName, storeName } from './fate-names.js';

/** A named part of a balance. */
export interface Share {
  readonly name: string;
  /** In the unit of the budget, above 0. */
  readonly amount: number;
  /** Of all that came from anywhere, 0..1. */
  readonly share: number;
}

/**
 * Where a quantity came from and where it went: both lists sum to `total`, less the `residual`; in the unit of the
 * budget.
 */
export interface Fates {
  readonly total: number;
  readonly from: readonly Share[];
  readonly to: readonly Share[];
  readonly residual: number;
}

function crossedName(line: BudgetLine): string {
  if (line.component === 'water') return line.by === 'action' ? line.beyond : line.by;
  return outsideName(line.beyond, line.component);
}

/** Amounts by name, largest first; amounts of one name are added. */
function shares(
  items: readonly { readonly name: string; readonly amount: number }[],
  total: number,
): Share[] {
  const names = [...new Set(items.map(({ name }) => name))];
  return names
    .map((name) => {
      const amount = sum(items.filter((item) => item.name === name).map((item) => item.amount));
      return { name, amount, share: amount / total };
    })
    .filter(({ amount }) => amount !== 0)
    .sort((a, b) => b.amount - a.amount);
}

/**
 * Reads a budget of the whole system as a story: so much came from feed, from source water, or out of
 * what was there ("drawn from water"); so much went to each account or stays in fish, crop, water,
 * biofilm and solids. Shares of `to` sum to 1 but for the residual.
 */
export function fatesOf(budget: Budget): Fates {
  const stored = shares(
    budget.stores.map(({ component, amount }) => ({ name: storeName(component), amount })),
    1,
  );
  const came = budget.lines.filter(({ amount }) => amount > 0);
  const went = budget.lines.filter(({ amount }) => amount < 0);
  const from = [
    ...came.map((line) => ({ name: crossedName(line), amount: line.amount })),
    ...stored
      .filter(({ amount }) => amount < 0)
      .map(({ name, amount }) => ({ name: `drawn from ${name}`, amount: -amount })),
  ];
  const to = [
    ...went.map((line) => ({ name: crossedName(line), amount: -line.amount })),
    ...stored
      .filter(({ amount }) => amount > 0)
      .map(({ name, amount }) => ({ name: `kept in ${name}`, amount })),
  ];
  const total = sum(from.map(({ amount }) => amount));
  return { total, from: shares(from, total), to: shares(to, total), residual: budget.residual };
}

import type { Budget } from './budget.js';
import { fatesOf, type Share } from './fates.js';

/** A named part of several balances, one amount and share for each run (0 where a run has none). */
export interface ComparedShare {
  readonly name: string;
  readonly runs: readonly Omit<Share, 'name'>[];
}

/** Where a quantity came from and went to in several runs. */
export interface ComparedFates {
  /** All that came, in each run. */
  readonly totals: readonly number[];
  readonly from: readonly ComparedShare[];
  readonly to: readonly ComparedShare[];
}

function sideBySide(lists: readonly (readonly Share[])[]): ComparedShare[] {
  const names = [...new Set(lists.flatMap((shares) => shares.map(({ name }) => name)))];
  const largest = ({ runs }: ComparedShare): number => Math.max(...runs.map(({ amount }) => amount));
  return names
    .map((name) => ({
      name,
      runs: lists.map((shares) => {
        const found = shares.find((share) => share.name === name);
        return { amount: found?.amount ?? 0, share: found?.share ?? 0 };
      }),
    }))
    .sort((a, b) => largest(b) - largest(a));
}

/** Budgets of one quantity of several runs as stories side by side (`fatesOf`), the largest parts first. */
export function compareFates(budgets: readonly Budget[]): ComparedFates {
  const fates = budgets.map(fatesOf);
  return {
    totals: fates.map(({ total }) => total),
    from: sideBySide(fates.map(({ from }) => from)),
    to: sideBySide(fates.map(({ to }) => to)),
  };
}

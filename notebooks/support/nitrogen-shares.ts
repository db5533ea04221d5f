import { budgetOf, fatesOf, type Run } from '@leat/core';

/** One way of nitrogen through the whole run. */
export interface NitrogenShare {
  readonly name: string;
  /** g N. */
  readonly amount: number;
  /** Of all that went somewhere, 0..1. */
  readonly share: number;
}

/** Where nitrogen went in a run: accounts and stores, largest first. The shares sum to 1. */
export function nitrogenShares(run: Run): readonly NitrogenShare[] {
  return fatesOf(budgetOf(run, 'nitrogen', 'system')).to;
}

import type { ElementaryEffects, LocalEffect, SobolIndices, Summary, TableRow } from '@leat/core';

/** What was found of one number of the tables. */
export interface Finding {
  readonly row: TableRow;
  readonly local?: LocalEffect;
  readonly morris?: ElementaryEffects;
  readonly sobol?: SobolIndices & {
    /** Width of the 90 % band of the outcome if this number were known, by the first-order index. */
    readonly bandIfKnown: number;
  };
}

/** What an outcome depends on. */
export interface SensitivityResult {
  readonly title: string;
  readonly measure: string;
  readonly unit: string;
  /** The outcome with every number as it stands. */
  readonly outcome: number;
  readonly method: string;
  readonly seed: number;
  /** Runs made, and those of them without an outcome, with the reason of the first. */
  readonly runs: number;
  readonly failed: number;
  readonly reason?: string;
  /** Spread of the outcome over the points of the Sobol indices, and how many base points were used. */
  readonly spread?: Summary & { readonly used: number };
  /** The strongest first, by the best that is known of each. */
  readonly findings: readonly Finding[];
}

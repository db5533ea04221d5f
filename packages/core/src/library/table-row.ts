/** How a number varies: low..high is 90 % of normal and lognormal, a hard bound of the others. */
export const distributions = ['fixed', 'uniform', 'triangular', 'normal', 'lognormal'] as const;

/** One of `distributions`. */
export type Distribution = (typeof distributions)[number];

/** How a number came here, each mark in words; U is never in a table of ours. */
export const marks = /* @__PURE__ */ Object.freeze({
  R: 'read in the publication',
  S: 'second-hand: read in another work that cites it',
  C: 'computed from it',
  M: 'from memory of it',
  W: 'from memory, digits uncertain',
  P: 'common practice',
  U: 'given by the user',
} as const);

/** One of `marks`. */
export type Mark = keyof typeof marks;

/** One number of the science with all that is known of it. */
export interface TableRow {
  /** Table it stands in, such as `fish`. */
  readonly table: string;
  readonly id: string;
  /** In the internal unit named by `unit`. */
  readonly value: number;
  readonly unit: string;
  /** Lower end of the range, in the same unit: 5 % of a normal or lognormal number lies below, of others none. */
  readonly low: number;
  /** Upper end, likewise. */
  readonly high: number;
  readonly distribution: Distribution;
  /** What it holds for, where the user said it; of a row of ours `conditionsOf` tells. */
  readonly conditions?: string;
  /** Key in the table of sources. */
  readonly source: string;
  readonly page: string;
  readonly mark: Mark;
  /** Where the user gave it, such as `my-numbers.tsv:3`; absent: a row of ours. */
  readonly given?: string;
}

/**
 * Every row of our tables, column by column, as they take least to send: ids go on from the one before them, a blank word is
 * that of the row before, and `numbers` holds value, low and high of each row, null where low or high is the value.
 */
export type TableColumns = {
  readonly [Name in 'table' | 'distribution' | 'source' | 'page' | 'mark']: readonly (TableRow[Name] | '')[];
} & {
  readonly id: readonly string[];
  readonly unit: readonly string[];
  readonly numbers: readonly (number | null)[];
};

/** The cells of a source: key, citation, year, DOI or `none`, note. */
export type SourceCells = readonly [key: string, citation: string, year: string, doi: string, note: string];

/** The cells of a correlation: the two ids, the rank correlation, conditions, source, page, mark. */
export type CorrelationCells = readonly [
  a: string,
  b: string,
  rank: number,
  conditions: string,
  source: string,
  page: string,
  mark: Mark,
];

/** The table in which the subjects of a group stand. */
export const tableOf = {
  fish: 'fish',
  crop: 'crops',
  media: 'media',
  feed: 'feeds',
  dose: 'dosing',
  water: 'waters',
  aerator: 'aerators',
  lime: 'lime',
} as const;

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

/** A number with its unit and range: what checks of a number and draws of it read. */
export interface RangedRow {
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
  /** Where the user gave it, such as `my-numbers.tsv:3`; absent: a row of ours. */
  readonly given?: string;
}

/** Where a number came from. */
export interface Origin {
  /** Key in the table of sources. */
  readonly source: string;
  readonly page: string;
  readonly mark: Mark;
}

/** One number of the science with all that is known of it. */
export interface TableRow extends RangedRow, Origin {
  /** What it holds for, in words. */
  readonly conditions: string;
}

/**
 * Ids and values of our tables, all that most runs read, column by column as they take least to send: an id that begins
 * with a dot goes on from the words of the one before it.
 */
export interface NumberColumns {
  readonly id: readonly string[];
  readonly value: readonly number[];
  /** Low and high of the numbers whose range a run reads. */
  readonly ranges: Readonly<Record<string, readonly [low: number, high: number]>>;
  /** Beginnings of ids that are no subjects, though they have the form: `water.kw`. */
  readonly general: readonly string[];
}

/**
 * What checks and draws read beside that, in the same order: a blank word is that of the row before, and `ends` holds low
 * and high of each row, null where it is the value.
 */
export type RangeColumns = {
  readonly [Name in 'table' | 'distribution']: readonly (RangedRow[Name] | '')[];
} & {
  readonly unit: readonly string[];
  readonly ends: readonly (number | null)[];
};

/** Where each number came from, in the same order: a blank word is that of the row before. */
export type OriginColumns = { readonly [Name in keyof Origin]: readonly (Origin[Name] | '')[] };

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

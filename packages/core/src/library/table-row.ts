/** How a number varies: low..high is 90 % of normal and lognormal, a hard bound of the others. */
type Distribution = 'fixed' | 'uniform' | 'triangular' | 'normal' | 'lognormal';

/**
 * How a number came here: R read in the publication, S second-hand, C computed, M from memory of the
 * publication named, W from memory with uncertain digits, P common practice, U given by the user
 * (never in a table).
 */
export type Mark = 'R' | 'S' | 'C' | 'M' | 'W' | 'P' | 'U';

/** One number of the science with all that is known of it. */
export interface TableRow {
  /** Table it stands in, such as `fish`. */
  readonly table: string;
  readonly id: string;
  /** In the internal unit named by `unit`. */
  readonly value: number;
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly distribution: Distribution;
  readonly conditions: string;
  /** Key in the table of sources. */
  readonly source: string;
  readonly page: string;
  readonly mark: Mark;
}

/** The cells of a row in the order of the generated module. */
export type TableCells = readonly [
  table: string,
  id: string,
  value: number,
  unit: string,
  low: number,
  high: number,
  distribution: Distribution,
  conditions: string,
  source: string,
  page: string,
  mark: Mark,
];

/** The cells of a source: key, citation, year, DOI or `none`, note. */
export type SourceCells = readonly [key: string, citation: string, year: string, doi: string, note: string];

/** A table of text as it stood in a file, nothing read into it. */
export interface LogTable {
  /** Name of the file, for messages. */
  readonly file: string;
  /** Cells of every row, the first row first: row 1 of the file is `rows[0]`. */
  readonly rows: readonly (readonly string[])[];
}

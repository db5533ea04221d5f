import { createParameters } from '../../packages/core/src/library/parameters.js';
import { rowsOf } from '../../packages/core/src/library/rows-in-use.js';

/** The first line of every table. */
export const header = 'id value unit low high distribution conditions source page mark'.split(' ').join('\t');

/** A table of the user: the header and these rows, cells parted by `|`. */
export function ownTable(...rows: readonly string[]): string {
  return [header, ...rows.map((row) => row.split('|').join('\t'))].join('\n') + '\n';
}

/** The rows of a subject of ours as rows of a new one, such as `fish.murray-cod` as `fish.estuary-perch`. */
export function copiedRows(from: string, to: string): readonly string[] {
  return Array.from(rowsOf(createParameters()))
    .filter(({ id }) => id.startsWith(`${from}.`))
    .map(({ id, value, unit, low, high, distribution, conditions, source, page, mark }) =>
      [id.replace(from, to), value, unit, low, high, distribution, conditions, source, page, mark].join('|'),
    );
}

import type { TableProcess } from '@leat/core';
import { wrap } from './columns.js';

const coefficient = (value: number): string => String(Number(value.toPrecision(5)));

function largest(process: TableProcess): number {
  return Math.max(...Object.values(process.closure).map(Math.abs));
}

/** The stoichiometric table as text: each process with its coefficients and how well it closes. */
export function processTableLines(table: readonly TableProcess[]): readonly string[] {
  return table.flatMap((process) => {
    const terms = process.entries.map(
      ({ component, outside, coefficient: value }) =>
        `${coefficient(value)} ${component}${outside === undefined ? '' : ` (${outside})`}`,
    );
    return [
      `${process.process}, per ${process.unit}, at ${process.rows.length} ${process.rows.length === 1 ? 'place' : 'places'}`,
      ...wrap(`  ${terms.join('; ')}`, 98, '  '),
      `  closes to ${largest(process).toExponential(1)}`,
    ];
  });
}

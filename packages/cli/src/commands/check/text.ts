import type { AuditItem, ScenarioReading, TableProcess } from '@leat/core';
import { shown } from '@leat/view/text';
import { columns, wrap } from '../../terminal/columns.js';

const unitWord = ({ unit }: AuditItem): string => (unit === '1' ? '' : ` ${unit}`);

function range(item: AuditItem): string {
  const { low, high } = item;
  if (low === undefined && high === undefined) return '';
  if (low === undefined) return `up to ${shown(high)}${unitWord(item)}`;
  if (high === undefined) return `from ${shown(low)}${unitWord(item)}`;
  return `${shown(low)} to ${shown(high)}${unitWord(item)}`;
}

function row(item: AuditItem): readonly string[] {
  const { source = '', page, mark } = item;
  const cited = mark === undefined ? source : `${source} ${page ?? ''} [${mark}]`;
  return [
    item.name,
    item.place,
    `${shown(item.value)}${unitWord(item)}`,
    range(item),
    item.verdict === 'none' ? '' : item.verdict,
    cited,
  ];
}

/** The design audit: each number beside its published range, and how it was come by. */
export function auditLines(items: readonly AuditItem[]): readonly string[] {
  const head = ['design', 'where', 'here', 'published', 'verdict', 'source'];
  const notes = [...new Set(items.map(({ name, note }) => `${name}: ${note}`))];
  return [...columns([head, ...items.map(row)], new Array<'left'>(head.length).fill('left')), '', ...notes];
}

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

/** Where the origins stand, unless a value is longer. */
const column = 60;

/** A scenario as it is understood: one value a line, by its path, and where it came from. */
export function resolvedLines({ values }: ScenarioReading['resolved']): readonly string[] {
  return values.map(({ key, value, origin }) => `${`${key}=${String(value)}`.padEnd(column)}  # ${origin}`);
}

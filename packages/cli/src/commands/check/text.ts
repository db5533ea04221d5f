import type { AuditItem, ScenarioReading, TableProcess } from '@leat/core';
import { plainDisplay, shown } from '@leat/view/text';
import { columns, wrap } from '../../terminal/columns.js';

/** What stands in so much water is fish, which are counted in kilograms. */
const quantityOf = ({ unit }: AuditItem): string => (unit === 'g/m3' ? 'stocking' : '');

/** A value of an item with its unit, as everything else that is shown has it. */
function amount(item: AuditItem, value: number): string {
  if (item.unit === '1') return shown(value);
  return plainDisplay.amount(value, item.unit, quantityOf(item));
}

function range(item: AuditItem): string {
  const { low, high, unit } = item;
  if (low !== undefined && high !== undefined)
    return `${shown(plainDisplay.value(low, unit, quantityOf(item)))} to ${amount(item, high)}`;
  if (high !== undefined) return `up to ${amount(item, high)}`;
  return low === undefined ? '' : `from ${amount(item, low)}`;
}

function row(item: AuditItem): readonly string[] {
  const { source = '', page, mark } = item;
  const cited = mark === undefined ? source : `${source} ${page ?? ''} [${mark}]`;
  return [
    item.name,
    item.place,
    amount(item, item.value),
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

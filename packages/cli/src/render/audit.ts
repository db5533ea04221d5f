import type { AuditItem } from '@leat/core';
import { columns } from './columns.js';
import { shown } from './number.js';

function range({ low, high, unit }: AuditItem): string {
  if (low === undefined && high === undefined) return '';
  if (low === undefined) return `up to ${shown(high)} ${unit}`;
  if (high === undefined) return `from ${shown(low)} ${unit}`;
  return `${shown(low)} to ${shown(high)} ${unit}`;
}

function row(item: AuditItem): readonly string[] {
  const source = item.source === undefined ? '' : `${item.source} ${item.page ?? ''} [${item.mark ?? ''}]`;
  return [
    item.name,
    item.place,
    `${shown(item.value)} ${item.unit}`,
    range(item),
    item.verdict === 'none' ? '' : item.verdict,
    source,
  ];
}

/** The design audit: each number beside its published range, and how it was come by. */
export function auditLines(items: readonly AuditItem[]): readonly string[] {
  const head = ['design', 'where', 'here', 'published', 'verdict', 'source'];
  const notes = [...new Set(items.map(({ name, note }) => `${name}: ${note}`))];
  return [...columns([head, ...items.map(row)], new Array<'left'>(head.length).fill('left')), '', ...notes];
}

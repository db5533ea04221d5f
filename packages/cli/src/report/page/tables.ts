import type { Child, Maker } from '../../picture/document.js';

/** A column of a table. */
export interface Column {
  readonly name: string;
  /** Numbers stand to the right. */
  readonly number?: boolean;
}

/** A row: its first cell is what the row is about. */
export type Row = readonly Child[];

function cell(maker: Maker, tag: 'th' | 'td', column: Column, child: Child, scope?: string): HTMLElement {
  return maker.html(
    tag,
    {
      ...(column.number === true && { class: 'number' }),
      ...(scope !== undefined && { scope }),
      ...(tag === 'td' && { 'data-name': column.name }),
    },
    child,
  );
}

/**
 * A table with a caption; the first cell of each row is its head.
 * @param style `plain`, or `stack`: on a narrow screen each row becomes a small list
 * @param totals how many of the first rows are totals
 */
export function table(
  maker: Maker,
  caption: string,
  columns: readonly Column[],
  rows: readonly Row[],
  style: 'plain' | 'stack' = 'plain',
): HTMLElement {
  const head = columns.map((column) => cell(maker, 'th', column, column.name, 'col'));
  const body = rows.map((row) =>
    maker.html(
      'tr',
      {},
      ...row.map((child, i) =>
        i === 0 ? cell(maker, 'th', columns[i], child, 'row') : cell(maker, 'td', columns[i], child),
      ),
    ),
  );
  return maker.html(
    'table',
    style === 'stack' ? { class: 'stack' } : {},
    maker.html('caption', {}, caption),
    maker.html('thead', {}, maker.html('tr', {}, ...head)),
    maker.html('tbody', {}, ...body),
  );
}

/** A box that scrolls sideways when its table is wider than the screen; the keyboard can reach it. */
export function scrolling(maker: Maker, name: string, child: Node): HTMLElement {
  return maker.html('div', { class: 'scroll', role: 'region', 'aria-label': name, tabindex: 0 }, child);
}

/** A table that opens when it is asked for. */
export function folded(maker: Maker, summary: string, child: Node): HTMLElement {
  return maker.html('details', {}, maker.html('summary', {}, summary), scrolling(maker, summary, child));
}

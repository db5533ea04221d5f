import type { Child, Maker } from '../pictures/index.js';

/** One bar of a table. */
export interface Bar {
  readonly value: number;
  readonly colour: string;
}

/**
 * A bar for a cell of a table, where the number itself stands beside it: from the left, or, where values go both
 * ways, from the middle.
 * @param most the value that fills the cell
 */
export function bar(maker: Maker, { value, colour }: Bar, most: number, bothWays: boolean): Element {
  const room = bothWays ? 50 : 100;
  const width = most > 0 ? (Math.abs(value) / most) * room : 0;
  const x = bothWays ? (value < 0 ? 50 - width : 50) : 0;
  return maker.svg(
    'svg',
    { viewBox: '0 0 100 10', preserveAspectRatio: 'none', 'aria-hidden': 'true' },
    ...(bothWays ? [maker.svg('rect', { x: 49.8, y: 0, width: 0.4, height: 10, fill: 'var(--soft)' })] : []),
    maker.svg('rect', {
      x: x.toFixed(2),
      y: 1,
      width: Math.max(0.3, width).toFixed(2),
      height: 8,
      fill: colour,
    }),
  );
}

/** A picture with its caption and what belongs under it. */
export function figure(
  maker: Maker,
  pictures: readonly Element[],
  caption: readonly Child[],
  kind = '',
  ...below: readonly Node[]
): HTMLElement {
  return maker.html(
    'figure',
    kind === '' ? {} : { class: kind },
    ...pictures,
    maker.html('figcaption', {}, ...caption),
    ...below,
  );
}

/** A section of a page with its heading; `id` is what the list of contents points to. */
export function section(maker: Maker, id: string, title: string, ...children: readonly Child[]): HTMLElement {
  return maker.html(
    'section',
    { id, 'aria-labelledby': `${id}-title` },
    maker.html('h2', { id: `${id}-title` }, title),
    ...children,
  );
}

/** The letter of a run and its title. */
export function runTitle(maker: Maker, letter: string, title: string): HTMLElement {
  return maker.html(
    'span',
    { class: 'letter-title' },
    maker.html('span', { class: 'letter' }, letter),
    title,
  );
}

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

/** A table that opens when it is asked for; its name says more than the summary where others have the same. */
export function folded(maker: Maker, summary: string, child: Node, name = summary): HTMLElement {
  return maker.html('details', {}, maker.html('summary', {}, summary), scrolling(maker, name, child));
}

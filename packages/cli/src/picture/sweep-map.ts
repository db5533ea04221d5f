import * as Plot from '@observablehq/plot';
import { shown } from '../render/number.js';
import { zeroLine } from './zero-line.js';
import { letters, type SweepDrawing } from './sweep-line.js';

/** Most cells on an axis for which numbers are written into them. */
const mostNumbers = 12;
/** Dashes of the lines on which the margins of conditions are zero, in turn. */
export const zeroDashes = ['none', '7 4', '2 3'] as const;

/** A tick at each value, where there are few. */
const ticksOf = (
  values: readonly number[],
): { readonly ticks?: number[]; readonly tickFormat?: (value: number) => string } =>
  values.length <= mostNumbers ? { ticks: [...values], tickFormat: String } : {};

/** Edges of cells around values: half way to the neighbours, as far again at the ends. */
function edges(values: readonly number[]): readonly number[] {
  const middles = values.slice(1).map((value, i) => (value + values[i]) / 2);
  const first = 2 * values[0] - middles[0];
  const last = 2 * values[values.length - 1] - middles[middles.length - 1];
  return [first, ...middles, last];
}

/**
 * One quantity over two others: a cell for each run, the darker the higher (so that grey paper tells it as well),
 * with its number; `!` where a condition fails, `?` where the run broke off, and for each condition the line on which
 * its margin is zero.
 */
export function sweepMap(drawing: SweepDrawing & { readonly down: string }): Element {
  const { maker, swept, quantity, colours, frame, across, down } = drawing;
  const [rows, columns] = swept.lists.map(({ values }) => values);
  const [rowEdges, columnEdges] = [edges(rows), edges(columns)];
  const cells = swept.points.map((point, i) => {
    const [row, column] = [Math.floor(i / columns.length), i % columns.length];
    return {
      x: columns[column],
      y: rows[row],
      x1: columnEdges[column],
      x2: columnEdges[column + 1],
      y1: rowEdges[row],
      y2: rowEdges[row + 1],
      value: quantity.of(point),
      mark: point.broke !== undefined ? '?' : swept.conditions.length > 0 && !point.holds ? ' !' : '',
    };
  });
  const told = cells.filter(({ value }) => Number.isFinite(value));
  const low = Math.min(...told.map(({ value }) => value));
  const high = Math.max(...told.map(({ value }) => value));
  const share = (value: number): number => (high > low ? (value - low) / (high - low) : 0);
  const numbers = rows.length <= mostNumbers && columns.length <= mostNumbers;
  const words = ({ value, mark }: (typeof cells)[number]): string =>
    numbers ? `${Number.isFinite(value) ? shown(value) : ''}${mark}` : mark.trim();
  const zeros = swept.conditions.map((_, i) => {
    const margins = swept.points.map((point) => point.margins[i]);
    const strokeDasharray = zeroDashes[i % zeroDashes.length];
    const ends = { x1: 'x1', x2: 'x2', y1: 'y1', y2: 'y2' } as const;
    return Plot.link(zeroLine(columns, rows, margins), {
      ...ends,
      ...{ stroke: colours.limit, strokeWidth: 2.5, strokeDasharray },
    });
  });
  return Plot.plot({
    document: maker.document,
    ...frame,
    marginLeft: 76,
    marginRight: 24,
    marginBottom: 46,
    style: { fontSize: `${letters}px`, background: 'none', color: colours.soft },
    x: { label: across, labelAnchor: 'center', labelArrow: 'none', ...ticksOf(columns) },
    y: { label: down, labelAnchor: 'center', labelArrow: 'none', ...ticksOf(rows) },
    color: { type: 'linear', domain: [0, 1], range: [colours.paper, colours['pool-pale']] },
    marks: [
      Plot.rect(cells, {
        ...{ x1: 'x1', x2: 'x2', y1: 'y1', y2: 'y2', stroke: colours.grid },
        fill: ({ value }: (typeof cells)[number]) => (Number.isFinite(value) ? share(value) : null),
      }),
      ...zeros,
      Plot.text(cells, {
        ...{ x: 'x', y: 'y', text: words, fontSize: letters },
        fill: colours.ink,
      }),
    ],
  });
}

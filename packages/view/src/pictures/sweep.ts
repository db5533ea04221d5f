import * as Plot from '@observablehq/plot';
import { type Display, plainDisplay } from '../display/display.js';
import { valueText } from '../text/numbers.js';
import { askedInSweep, type AskedInSweep, type Sweep, type SweptQuantity } from '../text/sweep.js';
import { type Maker, newMaker } from './document.js';
import { finished, sheet } from './frame.js';
import { type Colours, lightColours } from './palette.js';

/** A piece of a line. */
export interface Piece {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

type Corner = readonly [x: number, y: number, value: number];

/** Where the straight line between the values of two corners is zero, if they differ in sign. */
function crossing([x, y, a]: Corner, [u, v, b]: Corner): readonly [number, number] | undefined {
  if (Number.isNaN(a) || Number.isNaN(b) || a > 0 === b > 0) return undefined;
  const share = a / (a - b);
  return [x + share * (u - x), y + share * (v - y)];
}

/**
 * The line on which a quantity given at the points of a grid is zero, in straight pieces: between four neighbours it
 * runs from edge to edge (marching squares). No piece where one of the four has no value.
 * @param values row after row
 */
export function zeroLine(
  columns: readonly number[],
  rows: readonly number[],
  values: readonly number[],
): readonly Piece[] {
  const corner = (row: number, column: number): Corner => [
    columns[column],
    rows[row],
    values[row * columns.length + column],
  ];
  const pieces: Piece[] = [];
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let column = 0; column + 1 < columns.length; column++) {
      const around = [
        corner(row, column),
        corner(row, column + 1),
        corner(row + 1, column + 1),
        corner(row + 1, column),
      ];
      if (around.some(([, , value]) => Number.isNaN(value))) continue;
      const points = around.flatMap((from, i) => {
        const point = crossing(from, around[(i + 1) % 4]);
        return point === undefined ? [] : [point];
      });
      // Two crossings make one piece; four, with unlike corners over both diagonals, make two.
      for (let i = 0; i + 1 < points.length; i += 2) {
        const [[x1, y1], [x2, y2]] = [points[i], points[i + 1]];
        pieces.push({ x1, y1, x2, y2 });
      }
    }
  }
  return pieces;
}

/** What one panel of a sweep is drawn from. */
interface SweepDrawing {
  readonly maker: Maker;
  readonly swept: Sweep;
  readonly quantity: AskedInSweep;
  readonly colours: Colours;
  readonly frame: { readonly width: number; readonly height: number };
  /** What stands under the horizontal axis. */
  readonly across: string;
}

/** How the letters of a panel are set. */
const letters = 14;

/**
 * One quantity over the values of another: a line with a dot for each run, full where every condition holds, hollow
 * where one fails, a cross at the foot where the run broke off.
 */
function sweepLine({ maker, swept, quantity, colours, frame, across }: SweepDrawing): Element {
  const points = swept.points.map((point) => ({
    x: point.values[0],
    y: quantity.of(point),
    fails: swept.conditions.length > 0 && !point.holds,
  }));
  const known = points.filter(({ y }) => Number.isFinite(y));
  const low = Math.min(0, ...known.map(({ y }) => y));
  const broken = points.filter(({ y }) => !Number.isFinite(y));
  const dot = { x: 'x', y: 'y', r: 5, stroke: colours.water, strokeWidth: 2 } as const;
  return Plot.plot({
    document: maker.document,
    ...frame,
    marginLeft: 64,
    marginRight: 24,
    marginBottom: 46,
    style: { fontSize: `${letters}px`, background: 'none', color: colours.soft },
    x: { label: across, labelAnchor: 'center', labelArrow: 'none', grid: false },
    y: { label: null, grid: true, zero: true, nice: true },
    marks: [
      Plot.ruleY([0], { stroke: colours.soft }),
      Plot.lineY(known, { x: 'x', y: 'y', stroke: colours.water, strokeWidth: 2 }),
      Plot.dot(
        known.filter(({ fails }) => !fails),
        { ...dot, fill: colours.water },
      ),
      Plot.dot(
        known.filter(({ fails }) => fails),
        { ...dot, fill: colours.paper },
      ),
      Plot.dot(broken, {
        x: 'x',
        y: () => low,
        symbol: 'times',
        r: 6,
        stroke: colours.limit,
        strokeWidth: 2,
      }),
    ],
  });
}

/** Most cells on an axis for which numbers are written into them. */
const mostNumbers = 12;
/** Dashes of the lines on which the margins of conditions are zero, in turn. */
const zeroDashes = ['none', '7 4', '2 3'] as const;

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
function sweepMap(drawing: SweepDrawing & { readonly down: string }): Element {
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
  const known = cells.filter(({ value }) => Number.isFinite(value));
  const low = Math.min(...known.map(({ value }) => value));
  const high = Math.max(...known.map(({ value }) => value));
  const share = (value: number): number => (high > low ? (value - low) / (high - low) : 0);
  const numbers = rows.length <= mostNumbers && columns.length <= mostNumbers;
  const cellText = ({ value, mark }: (typeof cells)[number]): string =>
    numbers ? `${Number.isFinite(value) ? maker.display.number(value) : ''}${mark}` : mark.trim();
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
        ...{ x: 'x', y: 'y', text: cellText, fontSize: letters },
        fill: colours.ink,
      }),
    ],
  });
}

/** Size of the picture and of its parts, px. */
const width = 900;
const head = 64;
const panel = { line: 330, map: 470 };

/** What an axis says: the path and its unit. */
const axisText = ({ path, unit }: SweptQuantity['varied']): string =>
  unit === '' ? path : `${path}, ${unit}`;

/**
 * A sweep as one standalone SVG: a line over one quantity, a map over two, one below the other for each measure
 * (for each margin where no measure was asked for). Where a condition fails is known by marks and by the line on
 * which its margin is zero, not by colour alone. The same input gives the same bytes.
 * @param document what the picture is built in
 */
export function sweepPicture(document: Document, swept: Sweep, display: Display = plainDisplay): string {
  const maker = newMaker(document, display);
  const words = display.words.pictures;
  const colours = lightColours;
  const { title, lists, measures } = swept;
  const asked = askedInSweep(swept, display).filter((_, i) => measures.length === 0 || i < measures.length);
  const [one, two] = lists.map(({ varied }) => axisText(varied));
  const each = lists.length === 1 ? panel.line : panel.map;
  const keys = two === undefined ? [] : swept.conditions;
  const foot = head + asked.length * each;
  const height = foot + 16 + keys.length * 24;
  const frame = { width: width - 40, height: each - 34 };
  const parts = asked.flatMap((quantity, i) => {
    const drawing = { maker, swept, quantity, colours, frame };
    const svg =
      two === undefined
        ? sweepLine({ ...drawing, across: one })
        : sweepMap({ ...drawing, down: one, across: two });
    const top = head + i * each;
    svg.setAttribute('x', '20');
    svg.setAttribute('y', String(top + 26));
    const heading = { x: 24, y: top + 18, 'font-size': 16, 'font-weight': 600, fill: colours.soft };
    return [maker.svg('text', heading, quantity.text), svg];
  });
  const svg = sheet(maker, { width, height }, colours, [
    maker.svg('text', { x: 24, y: 38, 'font-size': 22, 'font-weight': 700, fill: colours.ink }, title),
    ...parts,
    ...keys.flatMap(({ text }, i) => {
      const y = foot + 14 + i * 24;
      const line = { x1: 96, x2: 136, y1: y, y2: y, stroke: colours.limit, 'stroke-width': 2.5 };
      const dashes = { 'stroke-dasharray': zeroDashes[i % zeroDashes.length] };
      return [
        maker.svg('line', { ...line, ...dashes }),
        maker.svg('text', { x: 146, y: y + 5, 'font-size': 15, fill: colours.ink }, words.edgeOf(text)),
      ];
    }),
  ]);
  const ranges = lists.map(({ varied, values }) =>
    words.valuesOf(values.length, varied.path, valueText(varied, varied.from), valueText(varied, varied.to)),
  );
  const description = words.over(asked.map(({ text }) => text).join('; '), display.list(ranges));
  return `${finished(maker, svg, { title, description }).outerHTML}\n`;
}

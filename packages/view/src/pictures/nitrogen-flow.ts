import type { NitrogenPaths } from '@leat/core';
import { sankey, type SankeyLink, type SankeyNode } from 'd3-sankey';
import { placedPhrase } from '../text/names.js';
import type { Colours } from './palette.js';
import type { Maker } from './document.js';
import { fateColour } from './palette.js';
import { spreadLabels } from './labels.js';

interface Place {
  readonly name: string;
  readonly kind: 'source' | 'pool' | 'fate';
}
type Node = SankeyNode<Place, object>;
type Link = SankeyLink<Place, object>;

/** Room and letters of a picture of flows. */
export interface FlowFrame {
  readonly width: number;
  /** Pixels for a gram. */
  readonly perGram: number;
  /** Room left and right for names, px. */
  readonly side: number;
  readonly letters: number;
  /** Room between two places of a column, px. */
  readonly gap: number;
}

const thick = 13;

/** What a picture of flows leaves out: links below this share of all that came. */
const least = 5e-4;

/** Sources and fates alone, each fate fed by each source in proportion: what fits on a narrow screen. */
export function outerPaths({ places, links, circled }: NitrogenPaths): NitrogenPaths {
  const held = (index: number, kind: Place['kind'], end: 'from' | 'to'): number =>
    places[index].kind === kind
      ? links.filter((link) => link[end] === index).reduce((total, { amount }) => total + amount, 0)
      : 0;
  const whole = { name: 'system', kind: 'pool' } as const;
  const outer = places.map((_, i) => i).filter((i) => places[i].kind !== 'pool');
  const through = [...outer.map((i) => places[i]), whole];
  return {
    places: through,
    links: outer.map((index, i) =>
      places[index].kind === 'source'
        ? { from: i, to: outer.length, amount: held(index, 'source', 'from') }
        : { from: outer.length, to: i, amount: held(index, 'fate', 'to') },
    ),
    circled,
  };
}

/** Links that are wide enough to be seen. */
function seen(paths: NitrogenPaths): {
  readonly nodes: Place[];
  readonly links: { source: number; target: number; value: number }[];
} {
  const came = paths.links
    .filter(({ from }) => paths.places[from].kind === 'source')
    .reduce((total, { amount }) => total + amount, 0);
  const links = paths.links.filter(({ amount }) => amount >= least * came);
  const used = [...new Set(links.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  return {
    nodes: used.map((index) => ({ ...paths.places[index] })),
    links: links.map(({ from, to, amount }) => ({
      source: used.indexOf(from),
      target: used.indexOf(to),
      value: amount,
    })),
  };
}

/** Room above the highest place for its name, px. */
const edgeOf = (letters: number): number => letters * 2.6;
const foot = 14;

/** Height at which the fullest column just fits, px. */
function heightFor(nodes: readonly Node[], { perGram, gap, letters }: FlowFrame): number {
  const columns = new Map<number, number[]>();
  for (const { x0 = 0, value = 0 } of nodes) columns.set(x0, [...(columns.get(x0) ?? []), value]);
  const heights = [...columns.values()].map(
    (values) => values.reduce((total, value) => total + value * perGram, 0) + (values.length - 1) * gap,
  );
  return Math.max(...heights) + edgeOf(letters) + foot;
}

function layOut(paths: NitrogenPaths, frame: FlowFrame) {
  const { width, side, gap } = frame;
  const top = edgeOf(frame.letters);
  const layer = sankey<Place, object>().nodeWidth(thick).nodePadding(gap).iterations(24);
  const first = layer.extent([
    [side, top],
    [width - side, 400],
  ])(seen(paths));
  const height = heightFor(first.nodes, frame);
  const graph = layer.extent([
    [side, top],
    [width - side, height - foot],
  ])(seen(paths));
  return { ...graph, height };
}

const px = (value: number): string => String(Number(value.toFixed(1)));

const placed = (end: Link['source']): Node => {
  if (typeof end !== 'object') throw new Error('a link that was not laid out');
  return end;
};

/** A name and an amount: on one line, or one below the other. */
function label(
  maker: Maker,
  [name, amount]: readonly [string, string],
  at: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'middle' | 'end' },
  lines: 1 | 2,
  letters: number,
  colours: Colours,
): Element {
  const { x, y, anchor } = at;
  const second = lines === 1 ? { dx: letters * 0.35 } : { x: px(x), dy: '1.1em' };
  return maker.svg(
    'text',
    {
      ...{ x: px(x), y: px(y), dy: lines === 1 ? '0.35em' : '-0.2em', 'text-anchor': anchor },
      ...{ 'font-size': letters, 'font-weight': 600, fill: colours.ink },
      ...{ stroke: colours.paper, 'stroke-width': 3.5, 'stroke-linejoin': 'round', 'paint-order': 'stroke' },
    },
    name,
    maker.svg('tspan', { ...second, fill: colours.soft, 'font-weight': 400 }, amount),
  );
}

/** Names of all places, moved apart: left of sources, right of fates, over the forms. */
function names(
  maker: Maker,
  nodes: readonly Node[],
  { letters, gap }: FlowFrame,
  colours: Colours,
  height: number,
): Element[] {
  const lines = gap > 2 * letters ? 2 : 1;
  const groups = (['source', 'pool', 'fate'] as const).map((kind) =>
    nodes.filter((node) => node.kind === kind),
  );
  return groups.flatMap((group) => {
    const centres = group.map(({ y0 = 0, y1 = 0 }) => (y0 + y1) / 2);
    const places = spreadLabels(centres, lines * letters * 1.2 + 2, [letters, height - letters]);
    return group.map(({ x0 = 0, x1 = 0, y0 = 0, name, kind, value = 0 }, i) => {
      const text = [placedPhrase(name, maker.display), maker.display.amount(value, 'g')] as const;
      if (kind === 'pool')
        return label(
          maker,
          text,
          { x: (x0 + x1) / 2, y: y0 - letters * 1.15, anchor: 'middle' },
          2,
          letters,
          colours,
        );
      const [x, anchor] = kind === 'source' ? ([x0 - 6, 'end'] as const) : ([x1 + 6, 'start'] as const);
      return label(maker, text, { x, y: places[i], anchor }, lines, letters, colours);
    });
  });
}

/** A ribbon of one width from one place to another. */
function ribbon({ source, target, y0 = 0, y1 = 0, width = 0 }: Link): string {
  const [from, to] = [placed(source).x1 ?? 0, placed(target).x0 ?? 0];
  const half = Math.max(width, 0.8) / 2;
  const middle = (from + to) / 2;
  const edge = (a: number, b: number): string => `C${px(middle)},${px(a)} ${px(middle)},${px(b)}`;
  return (
    `M${px(from)},${px(y0 - half)} ${edge(y0 - half, y1 - half)} ${px(to)},${px(y1 - half)} ` +
    `V${px(y1 + half)} ${edge(y1 + half, y0 + half)} ${px(from)},${px(y0 + half)} Z`
  );
}

/** Pixels for a gram so that the largest of some pictures is about so high. */
export function perGramFor(all: readonly NitrogenPaths[], height: number): number {
  const came = all.map(({ places, links }) =>
    links
      .filter(({ from }) => places[from].kind === 'source')
      .reduce((total, { amount }) => total + amount, 0),
  );
  return height / Math.max(...came, 1e-9);
}

/** Where nitrogen came from, what it became and where it went; every width is grams. */
export function nitrogenFlow(
  maker: Maker,
  paths: NitrogenPaths,
  frame: FlowFrame,
  colours: Colours,
): Element {
  const { nodes, links, height } = layOut(paths, frame);
  const colourOf = (link: Link): string => {
    const [from, to] = [placed(link.source), placed(link.target)];
    return colours[fateColour(to.kind === 'fate' ? to.name : from.name)];
  };
  const ribbons = [...links]
    .sort((a, b) => b.value - a.value)
    .map((link) => maker.svg('path', { d: ribbon(link), fill: colourOf(link), 'fill-opacity': 0.42 }));
  const bars = nodes.map(({ x0 = 0, y0 = 0, y1 = 0, name }) =>
    maker.svg('rect', {
      ...{ x: x0.toFixed(1), y: y0.toFixed(1), width: thick, height: Math.max(1, y1 - y0).toFixed(1) },
      fill: colours[fateColour(name)],
    }),
  );
  return maker.svg(
    'svg',
    {
      viewBox: `0 0 ${frame.width} ${height.toFixed(0)}`,
      width: frame.width,
      height: height.toFixed(0),
      'font-family': 'system-ui, sans-serif',
    },
    ...ribbons,
    ...bars,
    ...names(maker, nodes, frame, colours, height),
  );
}

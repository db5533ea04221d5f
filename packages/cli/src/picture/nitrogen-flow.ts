import type { NitrogenPaths } from '@leat/core';
import { sankey, sankeyLinkHorizontal, type SankeyLink, type SankeyNode } from 'd3-sankey';
import { shown } from '../render/number.js';
import type { Colours } from './colours.js';
import type { Maker } from './document.js';
import { fateColour } from './fate-colour.js';
import { spreadLabels } from './spread-labels.js';

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
}

const gap = 17;
const thick = 13;
const top = 8;

/** What a picture of flows leaves out: links below this share of all that came. */
const least = 5e-4;

/** Sources and fates alone, each fate fed by each source in proportion: what fits on a narrow screen. */
export function outerPaths({ places, links, circled }: NitrogenPaths): NitrogenPaths {
  const held = (index: number, kind: Place['kind'], end: 'from' | 'to'): number =>
    places[index].kind === kind
      ? links.filter((link) => link[end] === index).reduce((total, { amount }) => total + amount, 0)
      : 0;
  const whole = { name: 'system', kind: 'pool' } as const;
  const kept = places.map((_, i) => i).filter((i) => places[i].kind !== 'pool');
  const through = [...kept.map((i) => places[i]), whole];
  return {
    places: through,
    links: kept.map((index, i) =>
      places[index].kind === 'source'
        ? { from: i, to: kept.length, amount: held(index, 'source', 'from') }
        : { from: kept.length, to: i, amount: held(index, 'fate', 'to') },
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

/** Height at which the fullest column just fits, px. */
function heightFor(nodes: readonly Node[], perGram: number): number {
  const columns = new Map<number, number[]>();
  for (const { x0 = 0, value = 0 } of nodes) columns.set(x0, [...(columns.get(x0) ?? []), value]);
  const heights = [...columns.values()].map(
    (values) => values.reduce((total, value) => total + value * perGram, 0) + (values.length - 1) * gap,
  );
  return Math.max(...heights) + 2 * top;
}

function layOut(paths: NitrogenPaths, { width, perGram, side }: FlowFrame) {
  const layer = sankey<Place, object>().nodeWidth(thick).nodePadding(gap).iterations(24);
  const first = layer.extent([
    [side, top],
    [width - side, 400],
  ])(seen(paths));
  const height = heightFor(first.nodes, perGram);
  const graph = layer.extent([
    [side, top],
    [width - side, height - top],
  ])(seen(paths));
  return { ...graph, height };
}

const placed = (end: Link['source']): Node => {
  if (typeof end !== 'object') throw new Error('a link that was not laid out');
  return end;
};

/** Names of one column of places, moved apart, left of sources and right of fates, over the forms. */
function names(
  maker: Maker,
  nodes: readonly Node[],
  frame: FlowFrame,
  colours: Colours,
  height: number,
): Element[] {
  const groups = (['source', 'pool', 'fate'] as const).map((kind) =>
    nodes.filter((node) => node.kind === kind),
  );
  return groups.flatMap((group) => {
    const centres = group.map(({ y0 = 0, y1 = 0 }) => (y0 + y1) / 2);
    const pool = group[0]?.kind === 'pool';
    const places = pool ? centres : spreadLabels(centres, frame.letters + 3, [top, height - top]);
    return group.map((node, i) => {
      const { x0 = 0, x1 = 0, y0 = 0, name, kind, value = 0 } = node;
      const at =
        kind === 'source'
          ? { x: x0 - 6, y: places[i], 'text-anchor': 'end' }
          : kind === 'fate'
            ? { x: x1 + 6, y: places[i], 'text-anchor': 'start' }
            : { x: (x0 + x1) / 2, y: y0 - frame.letters / 2, 'text-anchor': 'middle' };
      const amount = maker.svg('tspan', { fill: colours.soft, 'font-weight': 400 }, ` ${shown(value)} g`);
      return maker.svg(
        'text',
        {
          ...at,
          ...{ dy: '0.35em', 'font-size': frame.letters, 'font-weight': 600, fill: colours.ink },
          ...(pool && { stroke: colours.paper, 'stroke-width': 3.5, 'paint-order': 'stroke' }),
        },
        name.replace(/^kept in /, 'in '),
        amount,
      );
    });
  });
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
  const draw = sankeyLinkHorizontal<Place, object>();
  const ribbons = [...links]
    .sort((a, b) => b.value - a.value)
    .map((link) =>
      maker.svg('path', {
        d: draw(link) ?? '',
        fill: 'none',
        stroke:
          colours[fateColour(placed(placed(link.target).kind === 'pool' ? link.source : link.target).name)],
        'stroke-width': Math.max(0.8, Number((link.width ?? 0).toFixed(2))),
        'stroke-opacity': 0.42,
      }),
    );
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

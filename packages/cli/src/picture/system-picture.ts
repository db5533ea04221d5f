import { Graph, layout, type Point } from '@dagrejs/dagre';
import { shown } from '../render/number.js';
import type { DrawnFlow, DrawnVessel } from '../report/told-run.js';
import { short } from '../report/words.js';
import type { Colours } from './colours.js';
import type { Maker } from './document.js';

/** How a system is laid out: wide with all words, or narrow with names alone. */
export interface SystemFrame {
  readonly direction: 'LR' | 'TB';
  readonly vesselWidth: number;
  readonly letters: number;
  /** Whether what a vessel holds stands in it. */
  readonly words: boolean;
  /** Widest way of water, px. */
  readonly widest: number;
}

export const wideSystem: SystemFrame = {
  direction: 'LR',
  vesselWidth: 150,
  letters: 12,
  words: true,
  widest: 13,
};
export const narrowSystem: SystemFrame = {
  direction: 'TB',
  vesselWidth: 80,
  letters: 11,
  words: false,
  widest: 9,
};

const tap = (flow: DrawnFlow): string => `outside ${flow.kind}`;

/** Words broken into lines of at most so many letters. */
function broken(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(short(word, most));
  }
  return lines;
}

interface Words {
  readonly name: readonly string[];
  readonly size: string;
  readonly holds: readonly string[];
}

function wordsOf({ name, kind, volume, holds }: DrawnVessel, frame: SystemFrame): Words {
  const most = Math.floor((frame.vesselWidth - 12) / (frame.letters * 0.53));
  const size = volume < 1 ? `${shown(volume * 1000)} L` : `${shown(volume)} m³`;
  const title = broken(name.replaceAll('-', '-\u200b'), most).map((line) => line.replaceAll('\u200b', ''));
  return frame.words
    ? {
        name: title,
        size: short(`${kind}, ${size}`, most),
        holds: holds.flatMap((line) => broken(line, most)),
      }
    : { name: title, size, holds: [] };
}

const lineHeight = ({ letters }: SystemFrame): number => letters * 1.28;

function heightOf({ name, holds }: Words, frame: SystemFrame): number {
  return (name.length + 1 + holds.length) * lineHeight(frame) + 18;
}

/** A vessel: open above, water in it up to a wavering line, words inside. */
function vesselMark(
  maker: Maker,
  { x, y, width, height }: Point & { width: number; height: number },
  words: Words,
  frame: SystemFrame,
  colours: Colours,
): Element {
  const [left, right, up, down] = [x - width / 2, x + width / 2, y - height / 2, y + height / 2];
  const level = up + 7;
  const wave = width / 4;
  const surface = `M${left},${level} q${wave / 2},-4 ${wave},0 t${wave},0 t${wave},0 t${wave},0`;
  const lines = [...words.name, words.size, ...words.holds];
  return maker.svg(
    'g',
    {},
    maker.svg('path', { d: `${surface} V${down} H${left} Z`, fill: colours.wash }),
    maker.svg('path', {
      d: `M${left},${up} V${down} H${right} V${up}`,
      ...{ fill: 'none', stroke: colours.ink, 'stroke-width': 1.6, 'stroke-linejoin': 'round' },
    }),
    ...lines.map((line, i) =>
      maker.svg(
        'text',
        {
          ...{ x, y: (level + 6 + (i + 0.75) * lineHeight(frame)).toFixed(1), 'text-anchor': 'middle' },
          'font-size': i < words.name.length ? frame.letters + 1 : frame.letters,
          'font-weight': i < words.name.length ? 700 : 400,
          fill: i <= words.name.length - 1 || i > words.name.length ? colours.ink : colours.soft,
        },
        line,
      ),
    ),
  );
}

/** A smooth line through points. */
function curve(points: readonly Point[], direction: 'LR' | 'TB'): string {
  const [first, ...others] = points;
  let d = `M${first.x.toFixed(1)},${first.y.toFixed(1)}`;
  let from = first;
  for (const to of others) {
    const half = direction === 'LR' ? (from.x + to.x) / 2 : (from.y + to.y) / 2;
    const [a, b] =
      direction === 'LR'
        ? [`${half.toFixed(1)},${from.y.toFixed(1)}`, `${half.toFixed(1)},${to.y.toFixed(1)}`]
        : [`${from.x.toFixed(1)},${half.toFixed(1)}`, `${to.x.toFixed(1)},${half.toFixed(1)}`];
    d += ` C${a} ${b} ${to.x.toFixed(1)},${to.y.toFixed(1)}`;
    from = to;
  }
  return d;
}

/** Vessels drawn as open tanks, the ways of water between them as wide as they carry, water from outside dashed. */
export function systemPicture(
  maker: Maker,
  vessels: readonly DrawnVessel[],
  flows: readonly DrawnFlow[],
  frame: SystemFrame,
  colours: Colours,
): Element {
  const graph = new Graph({ multigraph: true });
  const tight = frame.direction === 'TB';
  graph.setGraph({
    rankdir: frame.direction,
    nodesep: tight ? 8 : 22,
    ranksep: tight ? 40 : 58,
    edgesep: 14,
    marginx: tight ? 2 : 8,
    marginy: 12,
  });
  graph.setDefaultEdgeLabel(() => ({}));
  const words = new Map(vessels.map((vessel) => [vessel.name, wordsOf(vessel, frame)]));
  for (const [name, each] of words)
    graph.setNode(name, { width: frame.vesselWidth, height: heightOf(each, frame) });
  const drawn = flows.filter(({ to }) => to !== undefined);
  const widest = Math.max(...drawn.map(({ rate }) => rate), 1e-9);
  drawn.forEach((flow, i) => {
    if (flow.from === undefined)
      graph.setNode(tap(flow), { width: frame.vesselWidth - 10, height: frame.letters * 2.6 });
    graph.setEdge(flow.from ?? tap(flow), flow.to ?? '', {}, String(i));
  });
  layout(graph);
  const { width = 0, height = 0 } = graph.graph();
  const ways = graph.edges().map((edge) => {
    const flow = drawn[Number(edge.name)];
    const outside = flow.from === undefined;
    return maker.svg('path', {
      d: curve(graph.edge(edge).points, frame.direction),
      ...{ fill: 'none', stroke: colours.pool, 'stroke-opacity': outside ? 1 : 0.55 },
      'stroke-width': Math.max(1.6, (frame.widest * flow.rate) / widest).toFixed(2),
      ...(outside && { 'stroke-dasharray': '4 3' }),
    });
  });
  const heads = graph.edges().map((edge) => {
    const { points } = graph.edge(edge);
    const [from, to] = [points[points.length - 2], points[points.length - 1]];
    const angle = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
    const turned = frame.direction === 'LR' ? (to.x >= from.x ? 0 : 180) : to.y >= from.y ? 90 : -90;
    return maker.svg('path', {
      d: 'M-9,-5.5 L1,0 L-9,5.5 Z',
      transform: `translate(${to.x.toFixed(1)},${to.y.toFixed(1)}) rotate(${(points.length > 2 ? turned : angle).toFixed(0)})`,
      fill: colours.ink,
    });
  });
  const taps = drawn
    .filter(({ from }) => from === undefined)
    .map((flow) => {
      const { x, y } = graph.node(tap(flow));
      const lines = [flow.kind.replace('top-up with ', ''), `${shown(flow.rate * 1000)} L/d`];
      return maker.svg(
        'g',
        {},
        ...lines.map((line, i) =>
          maker.svg(
            'text',
            {
              ...{
                x,
                y: y + (i - 0.15) * lineHeight(frame),
                'text-anchor': 'middle',
                'font-size': frame.letters,
              },
              'font-weight': i === 0 ? 600 : 400,
              fill: colours.pool,
            },
            line,
          ),
        ),
      );
    });
  const tanks = vessels.map(({ name }) => {
    const each = words.get(name);
    if (each === undefined) throw new Error(`no words for ${name}`);
    return vesselMark(maker, graph.node(name), each, frame, colours);
  });
  return maker.svg(
    'svg',
    {
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      ...{ width: Math.ceil(width), height: Math.ceil(height), 'font-family': 'system-ui, sans-serif' },
    },
    ...ways,
    ...tanks,
    ...heads,
    ...taps,
  );
}

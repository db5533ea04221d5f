import { Graph, layout, type Point } from '@dagrejs/dagre';
import type { DrawnFlow, DrawnVessel } from './drawn-system.js';
import { loopWays } from './break-loops.js';
import type { SystemFrame } from './system-frame.js';
import { vesselWords, type VesselWords } from './vessel-words.js';

/** A box with its middle. */
interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

/** A vessel in its place. `again` stands for one that is drawn elsewhere, where water goes back to it. */
export interface PlacedVessel {
  readonly box: Box;
  readonly words: VesselWords;
  readonly again: boolean;
  /** Water that comes from outside into it. */
  readonly taps: readonly DrawnFlow[];
}

/** A way of water in its place, from edge to edge. */
export interface PlacedWay {
  readonly points: readonly Point[];
  readonly width: number;
}

/** A system laid out. */
export interface SystemLayout {
  readonly width: number;
  readonly height: number;
  readonly vessels: readonly PlacedVessel[];
  readonly ways: readonly PlacedWay[];
}

interface InnerFlow extends DrawnFlow {
  readonly from: string;
  readonly to: string;
}

const isInner = (flow: DrawnFlow): flow is InnerFlow => flow.from !== undefined && flow.to !== undefined;

const again = (name: string): string => `again ${name}`;

/** Room above a vessel for the words of the water that comes in from outside. */
export const tapRoom = ({ letters }: SystemFrame): number => letters * 3.6;

/** Least room between two ways that leave or enter side by side, px. */
const between = 2;

/** Least stretch of a side for a way: as wide as its arrow, px. */
const leastStretch = 10;

const stretch = (width: number): number => Math.max(width, leastStretch);

/** Gives each end of each way its own stretch of the side of its vessel, in the order of where it comes from or goes to. */
function ends(
  ways: readonly { readonly vessel: string; readonly other: number; readonly width: number }[],
): readonly number[] {
  const offsets = new Array<number>(ways.length).fill(0);
  for (const vessel of new Set(ways.map((way) => way.vessel))) {
    const own = ways.map((_, i) => i).filter((i) => ways[i].vessel === vessel);
    own.sort((a, b) => ways[a].other - ways[b].other || a - b);
    let at = -(own.reduce((sum, i) => sum + stretch(ways[i].width), 0) + between * (own.length - 1)) / 2;
    for (const i of own) {
      offsets[i] = at + stretch(ways[i].width) / 2;
      at += stretch(ways[i].width) + between;
    }
  }
  return offsets;
}

/** Lays a system out along its water, from the vessel whose level moves; ways that lead back end at a copy of it. */
export function layOutSystem(
  vessels: readonly DrawnVessel[],
  flows: readonly DrawnFlow[],
  frame: SystemFrame,
): SystemLayout {
  const graph = new Graph({ multigraph: true });
  graph.setGraph({
    rankdir: frame.direction,
    nodesep: frame.apart,
    ranksep: frame.step,
    edgesep: 10,
    marginx: 3,
    marginy: 6,
  });
  graph.setDefaultEdgeLabel(() => ({}));
  const inner = flows.filter(isInner);
  const tapsOf = (name: string): DrawnFlow[] =>
    flows.filter(({ from, to }) => from === undefined && to === name);
  const start = flows.find(({ from, to }) => from === undefined && to !== undefined)?.to;
  const closing = loopWays(inner, start ?? inner[0]?.from ?? '');
  const boxes = new Map<string, { vessel: DrawnVessel; words: VesselWords; again: boolean }>();
  const add = (id: string, vessel: DrawnVessel, isAgain: boolean): void => {
    const words = vesselWords(vessel, frame, isAgain);
    boxes.set(id, { vessel, words, again: isAgain });
    const room = !isAgain && tapsOf(vessel.name).length > 0 ? tapRoom(frame) : 0;
    graph.setNode(id, { width: frame.vesselWidth, height: words.height + room });
  };
  for (const vessel of vessels) add(vessel.name, vessel, false);
  inner.forEach(({ from, to }, i) => {
    const back = vessels.find(({ name }) => name === to);
    if (closing.has(i) && back !== undefined && !boxes.has(again(to))) add(again(to), back, true);
    graph.setEdge(from, closing.has(i) ? again(to) : to, {}, String(i));
  });
  layout(graph);

  const boxOf = (id: string): Box => {
    const { x, y, width, height } = graph.node(id);
    const own = boxes.get(id)?.words.height ?? height;
    return { x, y: y + (height - own) / 2, width, height: own };
  };
  const edges = graph.edges().map((edge) => ({
    ...edge,
    points: graph.edge(edge).points,
    width: Math.max(1.6, (frame.widest * inner[Number(edge.name)].rate) / widestOf(inner)),
  }));
  const across = ({ x, y }: Point): number => (frame.direction === 'LR' ? y : x);
  const leave = ends(edges.map(({ v, w, width }) => ({ vessel: v, other: across(boxOf(w)), width })));
  const enter = ends(edges.map(({ v, w, width }) => ({ vessel: w, other: across(boxOf(v)), width })));
  const { width = 0, height = 0 } = graph.graph();
  return {
    width,
    height,
    vessels: [...boxes].map(([id, { vessel, words, again: isAgain }]) => ({
      box: boxOf(id),
      words,
      again: isAgain,
      taps: isAgain ? [] : tapsOf(vessel.name),
    })),
    ways: edges.map(({ v, w, points, width: wide }, i) => ({
      points: [
        side(boxOf(v), 'out', leave[i], frame),
        ...(points.length > 3 ? points.slice(1, -1) : []),
        side(boxOf(w), 'in', enter[i], frame),
      ],
      width: wide,
    })),
  };
}

const widestOf = (flows: readonly DrawnFlow[]): number => Math.max(...flows.map(({ rate }) => rate), 1e-9);

/** Point on the side of a vessel where a way leaves or enters. */
function side(
  { x, y, width, height }: Box,
  way: 'in' | 'out',
  offset: number,
  { direction }: SystemFrame,
): Point {
  const sign = way === 'out' ? 1 : -1;
  if (direction === 'LR') return { x: x + (sign * width) / 2, y: y + offset + 4 };
  return { x: x + offset, y: y + (sign * height) / 2 + (way === 'in' ? 7 : 0) };
}

import { Graph, layout } from '@dagrejs/dagre';
import { short } from '../text/names.js';
import { volumeText } from '../text/numbers.js';
import type { DrawnFlow, DrawnVessel } from './drawn-system.js';

/** A place in a picture, px. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** How a system is laid out: wide with all that is in a vessel, or narrow with names alone. */
export interface SystemFrame {
  readonly direction: 'LR' | 'TB';
  readonly vesselWidth: number;
  readonly letters: number;
  /** Whether what a vessel holds stands in it. */
  readonly contents: boolean;
  /** Widest way of water, px. */
  readonly widest: number;
  /** Room between vessels side by side, px. */
  readonly apart: number;
  /** Room from one vessel to the next along the water, px. */
  readonly step: number;
}

export const wideSystem: SystemFrame = {
  direction: 'LR',
  vesselWidth: 134,
  letters: 12,
  contents: true,
  widest: 14,
  apart: 18,
  step: 50,
};

/** For a narrow screen, where few vessels stand side by side. */
export const roomySystem: SystemFrame = {
  direction: 'TB',
  vesselWidth: 156,
  letters: 12,
  contents: true,
  widest: 12,
  apart: 10,
  step: 34,
};

export const narrowSystem: SystemFrame = {
  direction: 'TB',
  vesselWidth: 80,
  letters: 11,
  contents: false,
  widest: 10,
  apart: 8,
  step: 34,
};

/** What stands in a vessel, and how high it must be for that. */
interface VesselText {
  readonly name: readonly string[];
  readonly size: string;
  readonly holds: readonly string[];
  readonly height: number;
}

/** Words broken into lines of at most so many letters, at spaces and behind hyphens. */
function broken(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const piece of text.split(/(?<=[- ])/)) {
    const last = lines.at(-1);
    if (last !== undefined && `${last}${piece}`.trimEnd().length <= most)
      lines[lines.length - 1] = `${last}${piece}`;
    else lines.push(piece);
  }
  return lines.map((line) => short(line.trimEnd(), most));
}

/** Height of a line, px. */
export const lineHeight = ({ letters }: SystemFrame): number => letters * 1.28;

/** What is written into a vessel; of one that is drawn elsewhere, only that water goes back to it. */
function vesselText(
  { name, kind, volume, holds }: DrawnVessel,
  frame: SystemFrame,
  again: boolean,
): VesselText {
  const most = Math.floor((frame.vesselWidth - 10) / (frame.letters * 0.56));
  const amount = volumeText(volume);
  const title = again ? broken(`back to ${name}`, most) : broken(name, most - 1);
  const size = again ? '' : frame.contents ? short(`${kind}, ${amount}`, most) : amount;
  const rest = again || !frame.contents ? [] : holds.flatMap((line) => broken(line, most));
  const lines = title.length + (size === '' ? 0 : 1) + rest.length;
  return { name: title, size, holds: rest, height: lines * lineHeight(frame) + 18 };
}

/** A way from one vessel to another. */
interface Way {
  readonly from: string;
  readonly to: string;
}

/**
 * Ways that close a loop, seen from a vessel: following the water from there, those that lead back to a vessel that
 * was passed on the way. Without them what is left can be drawn from left to right.
 * @returns their indices
 */
export function loopWays(ways: readonly Way[], start: string): ReadonlySet<number> {
  const closing = new Set<number>();
  const done = new Set<string>();
  const follow = (vessel: string, passed: readonly string[]): void => {
    if (done.has(vessel)) return;
    ways.forEach(({ from, to }, i) => {
      if (from !== vessel) return;
      if (to === vessel || passed.includes(to)) closing.add(i);
      else follow(to, [...passed, vessel]);
    });
    done.add(vessel);
  };
  for (const vessel of [start, ...ways.map(({ from }) => from)]) follow(vessel, []);
  return closing;
}

/** A box with its middle. */
interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

/** A vessel in its place. `again` stands for one that is drawn elsewhere, where water goes back to it. */
export interface PlacedVessel {
  readonly box: Box;
  readonly text: VesselText;
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

/** Room above a vessel for the name of the water that comes in from outside. */
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
  const boxes = new Map<string, { vessel: DrawnVessel; text: VesselText; again: boolean }>();
  const add = (id: string, vessel: DrawnVessel, isAgain: boolean): void => {
    const text = vesselText(vessel, frame, isAgain);
    boxes.set(id, { vessel, text, again: isAgain });
    const room = !isAgain && tapsOf(vessel.name).length > 0 ? tapRoom(frame) : 0;
    graph.setNode(id, { width: frame.vesselWidth, height: text.height + room });
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
    const own = boxes.get(id)?.text.height ?? height;
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
    vessels: [...boxes].map(([id, { vessel, text, again: isAgain }]) => ({
      box: boxOf(id),
      text,
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

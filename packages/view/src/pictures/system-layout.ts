import { Graph, layout } from '@dagrejs/dagre';
import { type Display, plainDisplay } from '../display/display.js';
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

/** Room at the bottom of a vessel for fish or gravel, px. */
const lifeRoom = 14;

/** What is written into a vessel, with room under it for what is drawn there. */
function vesselText(
  { name, kind, volume, holds, life }: DrawnVessel,
  frame: SystemFrame,
  display: Display,
): VesselText {
  const most = Math.floor((frame.vesselWidth - 10) / (frame.letters * 0.56));
  const amount = volumeText(volume, display);
  const title = broken(name, most - 1);
  const both = `${kind}, ${amount}`;
  // Where kind and volume do not fit on a line, the kind goes below.
  const fits = frame.contents && both.length <= most;
  const rest = !frame.contents
    ? []
    : [...(fits ? [] : [kind]), ...holds].flatMap((line) => broken(line, most));
  const size = fits ? both : amount;
  const under = life.some((each) => each !== 'plants') ? lifeRoom : 0;
  const lines = title.length + (size === '' ? 0 : 1) + rest.length;
  return { name: title, size, holds: rest, height: lines * lineHeight(frame) + 18 + under };
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

/** A vessel in its place. */
export interface PlacedVessel {
  readonly box: Box;
  readonly text: VesselText;
  readonly life: DrawnVessel['life'];
  /** Water that comes from outside into it. */
  readonly taps: readonly DrawnFlow[];
}

/** A way of water in its place, from edge to edge; `back` closes the loop, by corners around the others. */
export interface PlacedWay {
  readonly back: boolean;
  /** Vessel that a pump draws it from; '' where it flows by itself. */
  readonly pumpedFrom: string;
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

/** Room beside the vessels for the way back, px. */
const laneRoom = 20;

/** The way back around everything: out between two rows of vessels, along the edge of the picture, and in. */
function wayBack(from: Box, to: Box, size: { width: number; height: number }, frame: SystemFrame): Point[] {
  if (frame.direction === 'LR') {
    const [right, y, lane] = [from.x + from.width / 2, from.y + from.height / 2 - 9, size.height - 9];
    const out = right + laneRoom - 6;
    return [
      { x: right, y },
      { x: out, y },
      { x: out, y: lane },
      { x: to.x, y: lane },
      { x: to.x, y: to.y + to.height / 2 },
    ];
  }
  const [x, down, lane] = [from.x + from.width / 2 - 9, from.y + from.height / 2, size.width - 9];
  const out = down + laneRoom - 6;
  return [
    { x, y: down },
    { x, y: out },
    { x: lane, y: out },
    { x: lane, y: to.y },
    { x: to.x + to.width / 2, y: to.y },
  ];
}

/** Lays a system out along its water, in the order of the file, from the vessel whose level moves; what leads back closes the loop. */
export function layOutSystem(
  vessels: readonly DrawnVessel[],
  flows: readonly DrawnFlow[],
  frame: SystemFrame,
  display: Display = plainDisplay,
): SystemLayout {
  const graph = new Graph({ multigraph: true });
  graph.setGraph({
    ...{ rankdir: frame.direction, nodesep: frame.apart, ranksep: frame.step },
    ...{ edgesep: 10, marginx: 3, marginy: 14 },
  });
  graph.setDefaultEdgeLabel(() => ({}));
  const inner = flows.filter(isInner);
  const tapsOf = (name: string): DrawnFlow[] =>
    flows.filter(({ from, to }) => from === undefined && to === name);
  const start = flows.find(({ from, to }) => from === undefined && to !== undefined)?.to;
  const closing = loopWays(inner, start ?? inner[0]?.from ?? '');
  const texts = new Map(vessels.map((vessel) => [vessel.name, vesselText(vessel, frame, display)]));
  for (const { name } of vessels) {
    const room = tapsOf(name).length > 0 ? tapRoom(frame) : 0;
    graph.setNode(name, { width: frame.vesselWidth, height: (texts.get(name)?.height ?? 0) + room });
  }
  inner.forEach(({ from, to }, i) => {
    if (!closing.has(i)) graph.setEdge(from, to, {}, String(i));
  });
  layout(graph, { disableOptimalOrderHeuristic: true });

  const boxOf = (id: string): Box => {
    const { x, y, width, height } = graph.node(id);
    const own = texts.get(id)?.height ?? height;
    return { x, y: y + (height - own) / 2, width, height: own };
  };
  const widthOf = (flow: InnerFlow): number => Math.max(1.6, (frame.widest * flow.rate) / widestOf(inner));
  const edges = graph.edges().map((edge) => {
    const flow = inner[Number(edge.name)];
    return {
      ...edge,
      points: graph.edge(edge).points,
      width: widthOf(flow),
      pumpedFrom: flow.kind === 'pumped' ? flow.from : '',
    };
  });
  const across = ({ x, y }: Point): number => (frame.direction === 'LR' ? y : x);
  const leave = ends(edges.map(({ v, w, width }) => ({ vessel: v, other: across(boxOf(w)), width })));
  const enter = ends(edges.map(({ v, w, width }) => ({ vessel: w, other: across(boxOf(v)), width })));
  const drawn = graph.graph();
  const lane = closing.size > 0 ? laneRoom : 0;
  const size = { width: (drawn.width ?? 0) + lane, height: (drawn.height ?? 0) + lane };
  return {
    ...size,
    vessels: vessels.map(({ name, life }) => ({
      ...{ box: boxOf(name), text: texts.get(name) ?? { name: [name], size: '', holds: [], height: 0 } },
      ...{ life, taps: tapsOf(name) },
    })),
    ways: [
      ...edges.map(({ v, w, points, width, pumpedFrom }, i) => ({
        points: [
          side(boxOf(v), 'out', leave[i], frame),
          ...(points.length > 3 ? points.slice(1, -1) : []),
          side(boxOf(w), 'in', enter[i], frame),
        ],
        ...{ width, pumpedFrom, back: false },
      })),
      ...[...closing].map((i) => ({
        points: wayBack(boxOf(inner[i].from), boxOf(inner[i].to), size, frame),
        ...{
          width: widthOf(inner[i]),
          pumpedFrom: inner[i].kind === 'pumped' ? inner[i].from : '',
          back: true,
        },
      })),
    ],
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

/**
 * The part of @dagrejs/dagre that is used. Its own declarations import one another without endings, which Node's
 * way of finding modules does not follow, so that everything in them is `any`.
 */
export interface Point {
  x: number;
  y: number;
}

export class Graph {
  constructor(options?: { multigraph?: boolean });
  setGraph(label: {
    rankdir: 'LR' | 'TB';
    nodesep: number;
    ranksep: number;
    edgesep: number;
    marginx: number;
    marginy: number;
  }): this;
  graph(): { width?: number; height?: number };
  setDefaultEdgeLabel(make: () => object): this;
  setNode(name: string, label: { width: number; height: number }): this;
  setEdge(from: string, to: string, label: { weight?: number; minlen?: number }, name?: string): this;
  node(name: string): Point & { width: number; height: number };
  edges(): { v: string; w: string; name?: string }[];
  edge(edge: { v: string; w: string; name?: string }): { points: Point[] };
}

/** Gives every node a place and every edge its points. */
export function layout(graph: Graph, options?: { readonly disableOptimalOrderHeuristic?: boolean }): void;

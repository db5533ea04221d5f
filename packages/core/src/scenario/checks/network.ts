import type { Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Flow, Vessel } from '../scenario.js';
import { most } from './ranges.js';

/** One flow as far as it can be told, even where something in it is faulty; a name not told is empty. */
export interface Edge {
  readonly path: Path;
  readonly from: string;
  readonly to: string;
  readonly pumped: boolean;
}

/** All flows: those without fault, and the edges of the network they form. */
export interface FlowReading {
  readonly flows: readonly Flow[];
  readonly edges: readonly Edge[];
  /** Whether every flow was understood and joins vessels that there are. */
  readonly whole: boolean;
}

/** Checks that the ends of a flow are two vessels that there are. */
export function checkEnds(
  report: Report,
  path: Path,
  { from, to }: { readonly from: string; readonly to: string },
  vessels: Named<unknown>,
): void {
  report.known(from, vessels, [...path, 'from'], 'vessel');
  report.known(to, vessels, [...path, 'to'], 'vessel');
  if (from === to) report.fault([...path, 'to'], 'a flow from a vessel to itself');
}

/** Checks that the shares of what leaves a vessel by gravity sum to 1; a fault stands at the last of them. */
export function checkShares(
  report: Report,
  from: string,
  flows: readonly { readonly path: Path; readonly share: number }[],
): void {
  const sum = flows.reduce((total, { share }) => total + share, 0);
  const last = flows[flows.length - 1];
  if (Math.abs(sum - 1) <= 1e-9 || last === undefined) return;
  const got = `a sum of ${Number(sum.toPrecision(6))}`;
  report.fault([...last.path, 'share'], `shares of what leaves ${from} do not sum to 1`, { got });
}

/** The vessels that a pump draws from: there is one, and the fault of more or none is told. */
export function sourcesOf(
  report: Report,
  path: Path,
  name: string,
  { flows, whole }: Pick<FlowReading, 'flows' | 'whole'>,
): ReadonlySet<string> {
  const sources = new Set(
    flows.flatMap((flow) => (flow.kind === 'pumped' && flow.pump === name ? [flow.from] : [])),
  );
  if (sources.size > 1)
    report.fault(path, 'a pump draws from one vessel', { got: [...sources].join(', ') }, true);
  if (sources.size === 0 && whole) report.fault(path, 'no flow names this pump', {}, true);
  return sources;
}

function outgoing<T extends { readonly from: string }>(edges: readonly T[]): Map<string, T[]> {
  const by = new Map<string, T[]>();
  for (const edge of edges) {
    const list = by.get(edge.from);
    if (list === undefined) by.set(edge.from, [edge]);
    else list.push(edge);
  }
  return by;
}

/** The vessels in an order in which gravity flows lead only forwards, and those that go round instead. */
export function gravityOrder(
  names: readonly string[],
  gravity: readonly Pick<Edge, 'from' | 'to'>[],
): { order: string[]; looped: Set<string> } {
  const by = outgoing(gravity);
  const waiting = new Map(names.map((name) => [name, 0]));
  for (const { to } of gravity) waiting.set(to, (waiting.get(to) ?? 0) + 1);
  const order = names.filter((name) => waiting.get(name) === 0);
  for (let next = 0; next < order.length; next += 1) {
    for (const { to } of by.get(order[next] ?? '') ?? []) {
      const left = (waiting.get(to) ?? 0) - 1;
      waiting.set(to, left);
      if (left === 0) order.push(to);
    }
  }
  const done = new Set(order);
  return { order, looped: new Set(names.filter((name) => !done.has(name))) };
}

/** One loop among vessels that each have a gravity flow in from another of them. */
function findLoop(looped: ReadonlySet<string>, gravity: readonly Edge[]): Edge[] {
  const inside = gravity.filter(({ from, to }) => looped.has(from) && looped.has(to));
  const into = new Map(inside.map((edge) => [edge.to, edge]));
  let at = inside[0]?.to ?? '';
  for (const seen = new Set<string>(); !seen.has(at); at = into.get(at)?.from ?? '') seen.add(at);
  const loop: Edge[] = [];
  const first = at;
  do {
    const edge = into.get(at);
    if (edge === undefined) break;
    loop.unshift(edge);
    at = edge.from;
  } while (at !== first);
  return loop;
}

function reachable(start: string, edges: readonly Edge[]): Set<string> {
  const by = outgoing(edges);
  const seen = new Set([start]);
  for (const name of seen) for (const { to } of by.get(name) ?? []) seen.add(to);
  return seen;
}

/** Pumped out of a vessel on a standpipe more than comes in, with everything running and no evaporation. */
function checkDraw(
  report: Report,
  order: readonly string[],
  flows: readonly Flow[],
  vessels: Named<Vessel>,
  reservoir: string,
): void {
  const by = outgoing(flows);
  const inflow = new Map<string, number>();
  const add = (name: string, rate: number): void => {
    inflow.set(name, (inflow.get(name) ?? 0) + rate);
  };
  for (const flow of flows) if (flow.kind === 'pumped') add(flow.to, flow.rate);
  for (const name of order) {
    const vessel = vessels.get(name);
    if (name === reservoir || vessel === undefined) continue;
    const out = by.get(name) ?? [];
    const drawn = out.reduce(
      (sum, flow) => sum + (flow.kind === 'pumped' ? flow.rate : 0),
      vessel.leak + vessel.exchange,
    );
    const comes = inflow.get(name) ?? 0;
    const rest = comes - drawn;
    if (rest < -1e-9 * drawn) {
      const got = `${Number(drawn.toPrecision(6))} m3/d out, ${Number(comes.toPrecision(6))} m3/d in`;
      report.fault(['vessels', name], 'more drawn out than flows in with everything running', { got }, true);
    }
    for (const flow of out) if (flow.kind === 'gravity') add(flow.to, Math.max(rest, 0) * flow.share);
  }
}

/**
 * Checks the network as a whole: a reservoir that there is; a way in and, by gravity, a way out for every
 * other vessel; no loop by gravity alone; everything reached by water from the reservoir; and no vessel
 * drawn down by its pumps.
 */
export function checkNetwork(
  report: Report,
  vessels: Named<Vessel>,
  reading: FlowReading,
  reservoir: string | undefined,
): void {
  const names = [...vessels.keys()];
  if (reservoir === undefined || names.length === 0 || names.length > most.vessels) return;
  if (!report.known(reservoir, names, ['reservoir'], 'vessel')) return;
  const { edges, flows } = reading;
  const gravity = edges.filter(
    ({ pumped, from, to }) =>
      !pumped && from !== reservoir && from !== to && vessels.has(from) && vessels.has(to),
  );
  for (const { from, pumped, path } of edges) {
    if (from === reservoir && !pumped)
      report.fault([...path, 'from'], 'a flow by gravity out of the reservoir', {
        expected: 'a pump and a rate',
      });
  }
  const { order, looped } = gravityOrder(names, gravity);
  const loop = looped.size === 0 ? [] : findLoop(looped, gravity);
  if (loop[0] !== undefined) {
    const got = [...loop.map(({ from }) => from), loop[0].from].join(' > ');
    report.fault(loop[0].path, 'a loop without a pump', { got });
  }
  const hasOut = new Set(edges.filter(({ pumped }) => !pumped).map(({ from }) => from));
  const unsure = edges.some(({ from }) => !vessels.has(from));
  const reached = reachable(reservoir, edges);
  for (const name of names) {
    if (name === reservoir) continue;
    const path = ['vessels', name];
    if (!hasOut.has(name) && !unsure) {
      report.fault(
        path,
        'no way out',
        { expected: 'a flow by gravity, so that its standpipe can pass what flows in' },
        true,
      );
    }
    if (!reached.has(name) && reading.whole)
      report.fault(path, 'no water reaches it from the reservoir', {}, true);
  }
  const sound =
    reading.whole && loop.length === 0 && [...vessels.values()].every((vessel) => vessel !== undefined);
  if (sound) checkDraw(report, order, flows, vessels, reservoir);
}

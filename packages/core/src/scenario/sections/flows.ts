import type { Reader } from '../file/reader.js';
import type { Named } from '../file/report.js';
import { nodeAt, type Path, plainOf } from '../file/tree.js';
import { positive, section, share, word } from '../file/values.js';
import type { Flow, Vessel } from '../scenario.js';

/** One flow of `flows`: pumped (pump, rate) or by gravity (share). */
export const flowSchema = section(
  {
    from: word('the vessel it leaves'),
    to: word('the vessel it enters'),
    pump: word('the pump that drives it; default: none, it flows by gravity').optional(),
    rate: positive(
      'volume-flow',
      'flow while the pump runs; default: none, but a pumped flow needs it',
    ).optional(),
    share: share(
      'share of what leaves the vessel by gravity; default: all of it, where one flow leaves; several sum to 1',
    ).optional(),
  },
  'water led from one vessel to another',
);

/** Most flows of one file. */
const mostFlows = 20_000;

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

function edgeOf(reader: Reader, path: Path): Edge {
  const node = nodeAt(reader.tree, path);
  const plain = node?.kind === 'map' ? plainOf(node) : {};
  const { from, to, pump, rate } = plain as Record<string, unknown>;
  const name = (value: unknown): string => (typeof value === 'string' ? value : '');
  return { path, from: name(from), to: name(to), pumped: pump !== undefined || rate !== undefined };
}

type Given = ReturnType<typeof flowSchema.parse>;

function parseFlow(
  reader: Reader,
  path: Path,
  vessels: Named<Vessel>,
  pumps: ReadonlyMap<string, unknown>,
): Given | undefined {
  const given = reader.parse(flowSchema, path);
  if (given === undefined) return undefined;
  const { from, to, pump, rate, share } = given;
  const before = reader.faults.length;
  reader.known(from, vessels, [...path, 'from'], 'vessel');
  reader.known(to, vessels, [...path, 'to'], 'vessel');
  if (pump !== undefined) reader.known(pump, pumps, [...path, 'pump'], 'pump');
  if (from === to) reader.fault([...path, 'to'], 'a flow from a vessel to itself');
  const pumpExpected = 'pump and rate for a pumped flow, or share for a flow by gravity';
  if (pump !== undefined && rate === undefined)
    reader.fault([...path, 'rate'], 'missing', { expected: pumpExpected });
  if (pump === undefined && rate !== undefined)
    reader.fault([...path, 'pump'], 'missing', { expected: pumpExpected });
  if (share !== undefined && (pump !== undefined || rate !== undefined)) {
    reader.fault([...path, 'share'], 'a share of a pumped flow', { expected: pumpExpected });
  }
  return reader.faults.length > before ? undefined : given;
}

/** Shares of the gravity flows out of each vessel: one flow takes all, several must say theirs and sum to 1. */
function shareOut(reader: Reader, gravity: readonly { path: Path; given: Given }[]): void {
  const groups = new Map<string, { path: Path; given: Given }[]>();
  for (const flow of gravity) groups.set(flow.given.from, [...(groups.get(flow.given.from) ?? []), flow]);
  for (const [from, group] of groups) {
    const silent = group.filter(({ given }) => given.share === undefined);
    if (group.length > 1 && silent.length > 0) {
      for (const { path } of silent)
        reader.fault([...path, 'share'], 'missing', { expected: `the share of what leaves ${from}` });
      continue;
    }
    const sum = group.reduce((total, { given }) => total + (given.share ?? 1), 0);
    const last = group[group.length - 1];
    if (Math.abs(sum - 1) > 1e-9 && last !== undefined) {
      const got = `a sum of ${Number(sum.toPrecision(6))}`;
      reader.fault([...last.path, 'share'], `shares of what leaves ${from} do not sum to 1`, { got });
    }
  }
}

function flowOf(reader: Reader, path: Path, given: Given): Flow {
  const { from, to, pump, rate, share } = given;
  if (pump !== undefined && rate !== undefined) return { kind: 'pumped', from, to, pump, rate };
  return { kind: 'gravity', from, to, share: share ?? reader.fallback([...path, 'share'], 1, 1) };
}

/** Reads the section `flows`. */
export function readFlows(
  reader: Reader,
  vessels: Named<Vessel>,
  pumps: ReadonlyMap<string, unknown>,
): FlowReading {
  const edges: Edge[] = [];
  const good: { path: Path; given: Given }[] = [];
  const before = reader.faults.length;
  reader.listed('flows', mostFlows, (path) => {
    edges.push(edgeOf(reader, path));
    const given = parseFlow(reader, path, vessels, pumps);
    if (given !== undefined) good.push({ path, given });
  });
  const whole = reader.faults.length === before;
  if (whole)
    shareOut(
      reader,
      good.filter(({ given }) => given.pump === undefined),
    );
  return { flows: good.map(({ path, given }) => flowOf(reader, path, given)), edges, whole };
}

import { compact, type Reader } from '../file/reader.js';
import type { Named } from '../file/report.js';
import { nodeAt, type Path, plainOf } from '../file/tree.js';
import { bounded, section, word } from '../file/values.js';
import { checkEnds, checkShares, type Edge, type FlowReading } from '../checks/network.js';
import { flowRanges, most } from '../checks/ranges.js';
import type { Flow, Vessel } from '../scenario.js';

/** One flow of `flows`: pumped (pump, rate) or by gravity (share). */
export const flowSchema = section(
  {
    from: word('the vessel it leaves'),
    to: word('the vessel it enters'),
    pump: word('the pump that drives it; default: none, it flows by gravity').optional(),
    rate: bounded(
      flowRanges.rate,
      'flow while the pump runs; default: none, but a pumped flow needs it',
    ).optional(),
    turnover: bounded(
      flowRanges.turnover,
      'in place of rate: volumes of the vessel it enters, at its standpipe; range: more than 0; default: none',
    ).optional(),
    share: bounded(
      flowRanges.share,
      'share of what leaves the vessel by gravity; default: all of it, where one flow leaves; several sum to 1',
    ).optional(),
  },
  'water led from one vessel to another',
);

function edgeOf(reader: Reader, path: Path): Edge {
  const node = nodeAt(reader.tree, path);
  const plain = node?.kind === 'map' ? plainOf(node) : {};
  const { from, to, pump, rate, turnover } = plain as Record<string, unknown>;
  const name = (value: unknown): string => (typeof value === 'string' ? value : '');
  return {
    path,
    from: name(from),
    to: name(to),
    pumped: [pump, rate, turnover].some((key) => key !== undefined),
  };
}

type Written = ReturnType<typeof flowSchema.parse>;
type Given = Omit<Written, 'turnover'>;

/** Flow of a pumped line, m3 d-1: as written, or so many volumes of the vessel that it enters. */
function rateOf(
  reader: Reader,
  path: Path,
  { rate, turnover, to }: Written,
  vessels: Named<Vessel>,
): number | undefined {
  if (turnover === undefined) return rate;
  if (rate !== undefined)
    reader.fault(
      [...path, 'turnover'],
      'two ways to say how much',
      { expected: 'one of rate, turnover' },
      true,
    );
  const volume = vessels.get(to)?.volume;
  return volume === undefined ? (rate ?? turnover) : turnover * volume;
}

function parseFlow(
  reader: Reader,
  path: Path,
  vessels: Named<Vessel>,
  pumps: ReadonlyMap<string, unknown>,
): Given | undefined {
  const given = reader.parse(flowSchema, path);
  if (given === undefined) return undefined;
  const before = reader.faults.length;
  const { pump, share } = given;
  const rate = rateOf(reader, path, given, vessels);
  checkEnds(reader, path, given, vessels);
  if (pump !== undefined) reader.known(pump, pumps, [...path, 'pump'], 'pump');
  const pumpExpected = 'pump and rate for a pumped flow, or share for a flow by gravity';
  if (pump !== undefined && rate === undefined)
    reader.fault([...path, 'rate'], 'missing', { expected: pumpExpected });
  if (pump === undefined && rate !== undefined)
    reader.fault([...path, 'pump'], 'missing', { expected: pumpExpected });
  if (share !== undefined && (pump !== undefined || rate !== undefined)) {
    reader.fault([...path, 'share'], 'a share of a pumped flow', { expected: pumpExpected });
  }
  return reader.faults.length > before ? undefined : { ...given, ...compact({ rate }) };
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
    checkShares(
      reader,
      from,
      group.map(({ path, given }) => ({ path, share: given.share ?? 1 })),
    );
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
  reader.listed('flows', most.flows, (path) => {
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

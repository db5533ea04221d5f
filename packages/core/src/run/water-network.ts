// Reads numbers as: flow of water
import type { Model } from '../model/model.js';
import type { RainTank, TopUp, Vessel } from '../scenario/scenario.js';

/** A stream that a pump drives at a rate, m3 d-1, while it runs. */
interface PumpedStream {
  readonly stream: number;
  readonly pump: number;
  readonly from: number;
  readonly to: number;
  readonly rate: number;
}

/** A pump and the vessels it draws from, with the volumes at which it trips and starts again, m3. */
interface PumpLevels {
  readonly name: string;
  readonly draws: readonly {
    readonly vessel: number;
    readonly inlet: number;
    readonly restart: number;
  }[];
}

/** A vessel among the streams, each by its index, ascending. */
interface VesselStreams {
  readonly vessel: Vessel;
  /** Volume at the standpipe, and the volume that counts as dry, m3. */
  readonly full: number;
  readonly dry: number;
  /** Volumes at which something changes, whatever goes on elsewhere, m3. */
  readonly levels: readonly number[];
  readonly pumped: readonly number[];
  /** Exchange, leak, evaporation and transpiration; `planting` of the last. */
  readonly losses: readonly {
    readonly stream: number;
    readonly kind: 'exchange' | 'leak' | 'evaporation' | 'transpiration';
    readonly planting: number;
  }[];
  /** Shares of what leaves by gravity. */
  readonly gravity: readonly { readonly stream: number; readonly to: number; readonly share: number }[];
  readonly overflows: readonly number[];
}

/** The water of a model as it is led: all that does not change in a run. */
export interface WaterNetwork {
  readonly vessels: readonly VesselStreams[];
  /** Vessels in an order in which gravity water only runs forward; the reservoir last, for it answers to all that returns. */
  readonly order: readonly number[];
  readonly reservoir: number;
  readonly pumps: readonly PumpLevels[];
  readonly pumped: readonly PumpedStream[];
  readonly valve: TopUp | undefined;
  /** Streams of the float valve, with the index of the source of each. */
  readonly topUps: readonly { readonly stream: number; readonly source: number }[];
  readonly tank: RainTank | undefined;
  readonly streamCount: number;
}

/** Streams that leave each vessel, by their indices, ascending. */
function streamsFrom({ layout, streams }: Model): readonly (readonly number[])[] {
  const leaving = layout.vessels.map((): number[] => []);
  streams.forEach(({ from }, s) => {
    if (from >= 0) leaving[from].push(s);
  });
  return leaving;
}

/** Vessels in an order in which gravity water only runs forward. */
function downhill({ layout, streams }: Model, leaving: readonly (readonly number[])[]): readonly number[] {
  const next = leaving.map((list) => list.filter((s) => streams[s].kind === 'gravity'));
  const reached = layout.vessels.map(() => false);
  const uphill: number[] = [];
  layout.vessels.forEach((_, first) => {
    if (reached[first]) return;
    reached[first] = true;
    // A vessel is done when all that it runs into is; a list and not a recursion, for long chains.
    const path = [{ vessel: first, tried: 0 }];
    for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
      if (top.tried === next[top.vessel].length) {
        uphill.push(top.vessel);
        path.pop();
        continue;
      }
      const { to } = streams[next[top.vessel][top.tried++]];
      if (reached[to]) continue;
      reached[to] = true;
      path.push({ vessel: to, tried: 0 });
    }
  });
  return uphill.reverse();
}

function pumpedStreams({ scenario, streams }: Model): readonly PumpedStream[] {
  return streams.flatMap(({ kind, index, from, to }, stream) => {
    const line = kind === 'pumped' ? scenario.flows[index] : undefined;
    if (line?.kind !== 'pumped') return [];
    const pump = scenario.pumps.findIndex(({ name }) => name === line.pump);
    return [{ stream, pump, from, to, rate: line.rate }];
  });
}

function vesselStreams(
  { scenario, streams }: Model,
  vessel: Vessel,
  leaving: readonly number[],
  dryShare: number,
): VesselStreams {
  const of = (kind: string): readonly number[] => leaving.filter((s) => streams[s].kind === kind);
  const full = vessel.volume;
  const dry = full * dryShare;
  return {
    vessel,
    full,
    dry,
    levels: [full, dry, ...(vessel.drain === undefined ? [] : [vessel.drain.to])],
    pumped: of('pumped'),
    losses: leaving.flatMap((stream) => {
      const { kind, index: planting } = streams[stream];
      return kind === 'exchange' || kind === 'leak' || kind === 'evaporation' || kind === 'transpiration'
        ? [{ stream, kind, planting }]
        : [];
    }),
    gravity: of('gravity').map((stream) => {
      const { index, to } = streams[stream];
      const line = scenario.flows[index];
      return { stream, to, share: line.kind === 'gravity' ? line.share : 0 };
    }),
    overflows: of('overflow'),
  };
}

/** Lays out the water of a model. */
export function layWater(model: Model): WaterNetwork {
  const { scenario, streams, parameters } = model;
  const dryShare = parameters.value('vessel.dry');
  const leaving = streamsFrom(model);
  const reservoir = scenario.vessels.findIndex(({ name }) => name === scenario.reservoir);
  const vessels = scenario.vessels.map((vessel, index) =>
    vesselStreams(model, vessel, leaving[index], dryShare),
  );
  const pumped = pumpedStreams(model);
  return {
    vessels,
    order: [...downhill(model, leaving).filter((vessel) => vessel !== reservoir), reservoir],
    reservoir,
    pumps: scenario.pumps.map(({ name, inlet, restart }, pump) => {
      const drawn = new Set(pumped.filter((line) => line.pump === pump).map(({ from }) => from));
      // No pump draws a vessel lower than what counts as dry.
      const draws = [...drawn].map((vessel) => ({
        vessel,
        inlet: Math.max(inlet, vessels[vessel].dry),
        restart,
      }));
      return { name, draws };
    }),
    pumped,
    valve: scenario.topUp,
    topUps: streams.flatMap(({ kind, index }, stream) =>
      kind === 'top-up' ? [{ stream, source: index }] : [],
    ),
    tank: scenario.rainTank,
    streamCount: streams.length,
  };
}

import { sum } from '../base/sum.js';
import type { Run, RunEvent } from '../run/run.js';
import { waterTaken } from './harvest.js';

/** A pump that sucked air: how many `times`, when `first` (d), and how long in `total` (d). */
export interface StoppedPump {
  readonly pump: string;
  readonly times: number;
  readonly first: number;
  readonly total: number;
}

/** Whether there was water enough. */
export interface WaterVerdict {
  /** `dry`: a vessel ran dry; `pump`: a pump sucked air; `short`: the reservoir stood below its float valve. */
  readonly state: 'dry' | 'pump' | 'short' | 'enough';
  /** Days on which the reservoir stood below its float valve, by outputs. */
  readonly lowDays: number;
  /** The first of them, d. */
  readonly lowFirst?: number;
  /** Least water in the reservoir over the volume at its float valve; absent without a valve. */
  readonly lowest?: number;
  /** Taken in through the float valve, mean m3/d. */
  readonly perDay: number;
  /** Run over the rim of the reservoir, mean m3/d, where it was more than a twentieth of what came in and of what that holds; absent: less. */
  readonly over?: number;
  /** d: when the rain tank first ran empty. */
  readonly rainTankEmpty?: number;
  /** Days on which a source had given all that its cap allows. */
  readonly capDays: number;
  /** The first of them, d. */
  readonly capFirst?: number;
  readonly pumps: readonly StoppedPump[];
  /** Vessels that ran dry, the first at the head. */
  readonly dry: readonly string[];
  /** When the first ran dry, d. */
  readonly dryFirst?: number;
  /** What was first amiss with the water, where it was short or worse. */
  readonly first?: RunEvent;
}

/** Share of the volume at the float valve below which a reservoir is low: less is the play of a day. */
const LOW = 0.95;

/** What ends in a low reservoir. */
const sparing = ['rain-tank-empty', 'cap-reached', 'top-up'];

/** When the reservoir stood low, and how low it came. */
function lowWater({ model, samples }: Run): { days: number; first?: number; lowest?: number } {
  const { topUp, reservoir } = model.scenario;
  if (topUp === undefined) return { days: 0 };
  const vessel = model.layout.vessels.indexOf(reservoir);
  const shares = samples.map(({ volume }) => volume[vessel] / topUp.level);
  const low = samples.filter((_, i) => i > 0 && shares[i] < LOW);
  const [first] = low as readonly (typeof samples)[number][];
  return {
    days: low.length * model.scenario.every,
    ...(low.length > 0 && { first: first.time }),
    lowest: Math.min(...shares),
  };
}

function stopped({ events, samples }: Run): readonly StoppedPump[] {
  const end = samples[samples.length - 1].time;
  const trips = events.filter(({ kind }) => kind === 'pump-trip');
  return [...new Set(trips.map(({ place }) => place))].map((pump) => {
    const own = trips.filter(({ place }) => place === pump);
    const total = own.reduce((days, { time }) => {
      const again = events.find(
        (event) => event.kind === 'pump-restart' && event.place === pump && event.time >= time,
      );
      return days + (again?.time ?? end) - time;
    }, 0);
    return { pump, times: own.length, first: own[0].time, total };
  });
}

/** Share of what came in and of what the reservoir holds beyond which it is told what ran over. */
const WASTED = 0.05;

/** What ran over the rim of the reservoir, m3, where it was more than a shower or a tanker that was too large. */
function runOver(run: Run): number {
  const { model, samples } = run;
  const [first, last] = [samples[0], samples[samples.length - 1]];
  const over = sum(
    model.streams.flatMap(({ kind }, i) => (kind === 'overflow' ? [last.carried[i] - first.carried[i]] : [])),
  );
  const { volume } = model.scenario.vessels[model.layout.vessels.indexOf(model.scenario.reservoir)];
  return over > WASTED * (waterTaken(run) + volume) ? over : 0;
}

/** Whether a run had water enough, from what its water did. */
export function waterVerdict(run: Run): WaterVerdict {
  const { events, samples } = run;
  const of = (kind: string): readonly RunEvent[] => events.filter((event) => event.kind === kind);
  const dry = of('dry');
  const caps = of('cap-reached');
  const [empty] = of('rain-tank-empty') as readonly (RunEvent | undefined)[];
  const pumps = stopped(run);
  const low = lowWater(run);
  const worse = events.find(({ kind }) => kind === 'dry' || kind === 'pump-trip');
  const spare = events.filter(({ kind, time }) => sparing.includes(kind) && time <= (low.first ?? -1)).at(-1);
  const first = spare ?? worse;
  const over = runOver(run);
  const days = samples[samples.length - 1].time - samples[0].time;
  const state =
    dry.length > 0 ? 'dry' : pumps.length > 0 ? 'pump' : low.first !== undefined ? 'short' : 'enough';
  return {
    state,
    lowDays: low.days,
    ...(low.first !== undefined && { lowFirst: low.first }),
    ...(low.lowest !== undefined && { lowest: low.lowest }),
    perDay: days > 0 ? waterTaken(run) / days : 0,
    ...(over > 0 && days > 0 && { over: over / days }),
    ...(empty && { rainTankEmpty: empty.time }),
    capDays: new Set(caps.map(({ time }) => Math.floor(time))).size,
    ...(caps.length > 0 && { capFirst: caps[0].time }),
    pumps,
    dry: [...new Set(dry.map(({ place }) => place))],
    ...(dry.length > 0 && { dryFirst: dry[0].time }),
    ...(first && { first }),
  };
}

import type { Model } from '../model/model.js';
import type { Drain } from '../scenario/scenario.js';
import { layWater, type WaterNetwork } from './water-network.js';

/** Smallest share of a vessel's volume that counts as a difference of level. */
const LEVEL = 1e-12;

/** Days of a weekly ration. */
const WEEK = 7;

/** What is reached after so many days if nothing changes: a volume in a vessel or the rain tank, the end of a ration. */
type Mark =
  | { readonly kind: 'vessel'; readonly after: number; readonly vessel: number; readonly volume: number }
  | { readonly kind: 'rain-tank'; readonly after: number; readonly volume: number }
  | { readonly kind: 'ration'; readonly after: number; readonly source: number };

/** Something the water did, for the event log. */
export interface WaterEvent {
  readonly kind: 'pump-trip' | 'pump-restart' | 'dry' | 'wet' | 'rain-tank-empty' | 'cap-reached';
  /** Pump, vessel, `rain-tank` or the name of the water whose cap is reached. */
  readonly place: string;
}

/** Where the water of a run is and how it runs now. Plain data. */
export interface WaterState {
  /** Of each vessel, m3, and how it changes, m3 d-1. */
  readonly volume: Float64Array;
  readonly slope: Float64Array;
  /** Of each stream, m3 d-1, and what it carried since the start, m3. */
  readonly flow: Float64Array;
  readonly carried: Float64Array;
  /** Water in the rain tank, m3, and how it changes, m3 d-1. */
  rain: number;
  rainSlope: number;
  /** Water that ran over the edge of the rain tank since the start, m3, and how fast it does, m3 d-1. */
  spilled: number;
  spillSlope: number;
  /** Whether each pump has sucked air and stands still. */
  readonly tripped: boolean[];
  /** Whether each vessel has run dry. */
  readonly parched: boolean[];
  /** Whether the siphon of each vessel runs. */
  readonly siphoning: boolean[];
  /** What each top-up source gave on this day and in this week, m3. */
  readonly spent: number[];
  readonly spentInWeek: number[];
  /** Most that each may give on a day and in a week, m3. */
  caps: readonly number[];
  weeklyCaps: readonly number[];
  /** What the water comes to next. */
  mark: Mark | undefined;
}

/** What the forcing asks of the water. */
interface Wanted {
  /** Whether each pump is switched on (timer and actions). */
  readonly pumps: readonly boolean[];
  /** Evaporation of each vessel and transpiration of each planting, m3 d-1. */
  readonly evaporation: ArrayLike<number>;
  readonly transpiration: ArrayLike<number>;
  /** Daily cap of each top-up source, m3; 0 when stopped. */
  readonly caps: readonly number[];
  /** Weekly cap of each top-up source, m3. */
  readonly weeklyCaps: readonly number[];
  /** Rain running into the rain tank, m3 d-1. */
  readonly rain: number;
}

/** The water of a scenario at its start: nothing runs. */
export function startWater({ scenario, streams }: Model): WaterState {
  const startOf = new Map(scenario.start.map((start) => [start.vessel, start.volume]));
  const sources = scenario.topUp?.sources ?? [];
  return {
    volume: Float64Array.from(
      scenario.vessels,
      ({ name, volume }) => scenario.saved?.volumes[name] ?? startOf.get(name) ?? volume,
    ),
    slope: new Float64Array(scenario.vessels.length),
    flow: new Float64Array(streams.length),
    carried: new Float64Array(streams.length),
    rain: scenario.saved?.rainTank ?? scenario.rainTank?.volume ?? 0,
    rainSlope: 0,
    spilled: 0,
    spillSlope: 0,
    tripped: scenario.pumps.map(() => false),
    parched: scenario.vessels.map(() => false),
    siphoning: scenario.vessels.map(() => false),
    spent: sources.map(() => 0),
    spentInWeek: sources.map(() => 0),
    caps: [],
    weeklyCaps: [],
    mark: undefined,
  };
}

/** The nearer of two marks, the first where they are as near; one that is not ahead is none. */
function nearer(mark: Mark | undefined, other: Mark): Mark | undefined {
  return other.after > 0 && (mark === undefined || other.after < mark.after) ? other : mark;
}

/**
 * Water by itself. Within a segment every flow is constant, so volumes run on straight lines and the
 * next mark (standpipe, pump inlet, float, empty tank, spent ration) is reached at a time known
 * exactly. A vessel gives by gravity what it receives less what it loses; one below its standpipe
 * fills first; the reservoir takes all change of level.
 */
export class Hydraulics {
  /** What has come into each vessel so far, m3 d-1, while flows are found. */
  private readonly inflow: Float64Array;
  /** What a mark that was reached since the flows were last found has to say. */
  private readonly reached: WaterEvent[] = [];

  constructor(
    private readonly network: WaterNetwork,
    readonly water: WaterState,
  ) {
    this.inflow = new Float64Array(network.vessels.length);
  }

  /** Sets what is wanted for the segment that begins; finds all flows. Returns what changed state. */
  settle(wanted: Wanted): readonly WaterEvent[] {
    const { network, water, inflow } = this;
    const events = this.reached.splice(0);
    water.caps = wanted.caps;
    water.weeklyCaps = wanted.weeklyCaps;
    this.switchPumps(events);
    water.flow.fill(0);
    inflow.fill(0);
    water.rainSlope = wanted.rain;
    for (const { stream, pump, to, rate } of network.pumped) {
      water.flow[stream] = wanted.pumps[pump] && !water.tripped[pump] ? rate : 0;
      inflow[to] += water.flow[stream];
    }
    for (const vessel of network.order) this.settleVessel(vessel, wanted, events);
    const { tank } = network;
    const runsOver = tank !== undefined && water.rain >= tank.capacity;
    water.spillSlope = runsOver ? Math.max(0, water.rainSlope) : 0;
    water.rainSlope -= water.spillSlope;
    water.mark = this.nextMark();
    return events;
  }

  /** Time until the next mark, d (Infinity: none). */
  untilMark(): number {
    return this.water.mark?.after ?? Infinity;
  }

  /** Moves on by so many days, at most `untilMark()`. */
  advance(days: number): void {
    const { water, network } = this;
    const { volume, slope, carried, flow } = water;
    for (let vessel = 0; vessel < volume.length; vessel++) volume[vessel] += slope[vessel] * days;
    water.rain += water.rainSlope * days;
    water.spilled += water.spillSlope * days;
    for (let s = 0; s < flow.length; s++) carried[s] += flow[s] * days;
    for (const { stream, source } of network.topUps) {
      water.spent[source] += flow[stream] * days;
      water.spentInWeek[source] += flow[stream] * days;
    }
    if (water.mark !== undefined && days >= water.mark.after) this.reach(water.mark);
  }

  /** A new day: daily rations are whole again; on days 0, 7, 14 ... weekly ones too. */
  newDay(day: number): void {
    this.water.spent.fill(0);
    if (day % WEEK === 0) this.water.spentInWeek.fill(0);
  }

  /** Pours water into the rain tank, m3; what does not fit runs over. Returns what stays. */
  fillRainTank(poured: number): number {
    const { water, network } = this;
    const kept = Math.min(poured, (network.tank?.capacity ?? 0) - water.rain);
    water.rain += kept;
    water.spilled += poured - kept;
    return kept;
  }

  private near(vessel: number, level: number): boolean {
    return Math.abs(this.water.volume[vessel] - level) <= LEVEL * this.network.vessels[vessel].full;
  }

  private atOrBelow(vessel: number, level: number): boolean {
    return this.water.volume[vessel] < level || this.near(vessel, level);
  }

  private atOrAbove(vessel: number, level: number): boolean {
    return this.water.volume[vessel] > level || this.near(vessel, level);
  }

  private switchPumps(events: WaterEvent[]): void {
    const { tripped } = this.water;
    this.network.pumps.forEach(({ name, draws }, pump) => {
      if (!tripped[pump] && draws.some(({ vessel, inlet }) => this.atOrBelow(vessel, inlet))) {
        tripped[pump] = true;
        events.push({ kind: 'pump-trip', place: name });
      } else if (tripped[pump] && draws.every(({ vessel, restart }) => this.atOrAbove(vessel, restart))) {
        tripped[pump] = false;
        events.push({ kind: 'pump-restart', place: name });
      }
    });
  }

  /** Finds what leaves a vessel by what enters it, and how its volume changes. */
  private settleVessel(index: number, wanted: Wanted, events: WaterEvent[]): void {
    const { network, inflow, water } = this;
    const { vessel, dry, pumped, losses } = network.vessels[index];
    const { flow, parched } = water;
    let out = 0;
    for (const stream of pumped) out += flow[stream];
    let lost = 0;
    for (const { stream, kind, planting } of losses) {
      if (kind === 'evaporation') flow[stream] = wanted.evaporation[index];
      else if (kind === 'transpiration') flow[stream] = wanted.transpiration[planting];
      else flow[stream] = vessel[kind];
      lost += flow[stream];
    }
    let gain = inflow[index] - out;
    if (index === network.reservoir) gain += this.topUp(gain - lost, wanted.rain);
    const isDry = this.atOrBelow(index, dry);
    // A vessel run dry loses no more than it receives.
    if (isDry && gain - lost < 0) {
      const share = Math.max(0, gain) / lost;
      for (const { stream } of losses) flow[stream] *= share;
      lost *= share;
      if (!parched[index]) events.push({ kind: 'dry', place: vessel.name });
      parched[index] = true;
    } else if (parched[index] && !isDry) {
      parched[index] = false;
      events.push({ kind: 'wet', place: vessel.name });
    }
    this.release(index, gain - lost);
  }

  /** Lets out of a vessel by gravity what it cannot hold of what it gains, m3 d-1. */
  private release(index: number, gain: number): void {
    const { vessel, full, gravity, overflows } = this.network.vessels[index];
    const { drain } = vessel;
    const { flow, slope } = this.water;
    let net = gain;
    let given = 0;
    if (drain !== undefined) {
      given = this.drained(index, drain, net);
      net -= given;
    }
    if (net > 0 && this.atOrAbove(index, full)) {
      given += net;
      net = 0;
    }
    slope[index] = net;
    for (const { stream, to, share } of gravity) {
      flow[stream] = given * share;
      this.inflow[to] += flow[stream];
    }
    for (const stream of overflows) flow[stream] = given;
  }

  /** What the lower outlet of a vessel passes where it gains so much, m3 d-1; a siphon is started or broken here. */
  private drained(index: number, { rate, to, by }: Drain, gain: number): number {
    const { siphoning } = this.water;
    const isDown = this.atOrBelow(index, to);
    if (by !== 'siphon') return isDown ? Math.min(rate, Math.max(0, gain)) : rate;
    if (isDown) siphoning[index] = false;
    else if (gain > 0 && this.atOrAbove(index, this.network.vessels[index].full)) siphoning[index] = true;
    return siphoning[index] ? rate : 0;
  }

  /** What a float at its level lets in from the sources in turn, where the reservoir else gains so much, m3 d-1. */
  private topUp(gain: number, rainIn: number): number {
    const { network, water } = this;
    const { valve, reservoir } = network;
    if (valve === undefined) return 0;
    let request = 0;
    if (this.near(reservoir, valve.level)) request = Math.min(valve.rate, Math.max(0, -gain));
    else if (water.volume[reservoir] < valve.level) request = valve.rate;
    let given = 0;
    for (const { stream, source } of network.topUps) {
      const fromTank = valve.sources[source].kind === 'rain-tank';
      const left = request - given;
      let from = 0;
      if (water.caps[source] === 0) from = 0;
      else if (fromTank) from = water.rain > 0 ? left : Math.min(left, rainIn);
      else if (this.rationLeft(source) > 0) from = left;
      water.flow[stream] = from;
      given += from;
      if (fromTank) water.rainSlope -= from;
    }
    return given;
  }

  /** What a source may still give in its day and week, m3. */
  private rationLeft(source: number): number {
    const { caps, spent, weeklyCaps, spentInWeek } = this.water;
    return Math.min(caps[source] - spent[source], weeklyCaps[source] - spentInWeek[source]);
  }

  private nextMark(): Mark | undefined {
    const { network, water } = this;
    const { vessels, valve, tank } = network;
    const { rain, rainSlope, flow } = water;
    let mark: Mark | undefined;
    for (let vessel = 0; vessel < vessels.length; vessel++) {
      for (const level of vessels[vessel].levels) mark = this.nearerLevel(mark, vessel, level);
    }
    if (valve !== undefined) mark = this.nearerLevel(mark, network.reservoir, valve.level);
    network.pumps.forEach(({ draws }, pump) => {
      for (const { vessel, inlet, restart } of draws) {
        mark = this.nearerLevel(mark, vessel, water.tripped[pump] ? restart : inlet);
      }
    });
    if (tank !== undefined && rainSlope < 0) {
      mark = nearer(mark, { kind: 'rain-tank', after: rain / -rainSlope, volume: 0 });
    }
    if (tank !== undefined && rainSlope > 0 && rain < tank.capacity) {
      const after = (tank.capacity - rain) / rainSlope;
      mark = nearer(mark, { kind: 'rain-tank', after, volume: tank.capacity });
    }
    for (const { stream, source } of network.topUps) {
      if (flow[stream] === 0) continue;
      const left = this.rationLeft(source);
      if (Number.isFinite(left)) mark = nearer(mark, { kind: 'ration', after: left / flow[stream], source });
    }
    return mark;
  }

  /** The nearer of a mark and a level of a vessel. */
  private nearerLevel(mark: Mark | undefined, vessel: number, level: number): Mark | undefined {
    const slope = this.water.slope[vessel];
    if (slope === 0 || this.near(vessel, level)) return mark;
    const after = (level - this.water.volume[vessel]) / slope;
    return after > 0 && (mark === undefined || after < mark.after)
      ? { kind: 'vessel', after, vessel, volume: level }
      : mark;
  }

  /** At a mark the level is the mark itself, not the mark and a rounding. */
  private reach(mark: Mark): void {
    const { water, network, reached } = this;
    if (mark.kind === 'vessel') water.volume[mark.vessel] = mark.volume;
    else if (mark.kind === 'rain-tank') {
      water.rain = mark.volume;
      if (mark.volume === 0) reached.push({ kind: 'rain-tank-empty', place: 'rain-tank' });
    } else {
      this.spendAll(mark.source);
      const source = network.valve?.sources[mark.source];
      if (source?.kind === 'mains') reached.push({ kind: 'cap-reached', place: source.water });
    }
  }

  /** The nearer cap of a source is reached: it is spent to the last drop, not but for a rounding. */
  private spendAll(source: number): void {
    const { caps, spent, weeklyCaps, spentInWeek } = this.water;
    const byDay = caps[source] - spent[source];
    const byWeek = weeklyCaps[source] - spentInWeek[source];
    if (byDay <= byWeek) spent[source] = caps[source];
    if (byWeek <= byDay) spentInWeek[source] = weeklyCaps[source];
  }
}

/** Opens the water of a model; it moves the water given, or that of the start. */
export function openHydraulics(model: Model, water: WaterState = startWater(model)): Hydraulics {
  return new Hydraulics(layWater(model), water);
}

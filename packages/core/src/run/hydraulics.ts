// Reads numbers as: flow of water
import type { Model } from '../model/model.js';
import type { Pump, Vessel } from '../scenario/scenario.js';

/** Smallest share of a vessel's volume that counts as a difference of level. */
const LEVEL = 1e-12;

/** Days of a weekly ration. */
const WEEK = 7;

/** Volume is about to reach a mark at this distance in time. */
interface Crossing {
  readonly after: number;
  readonly vessel: number;
  readonly volume: number;
}

/** Something the water did, for the event log. */
export interface WaterEvent {
  readonly kind: 'pump-trip' | 'pump-restart' | 'dry' | 'wet';
  readonly place: string;
}

/**
 * Water by itself. Within a segment every flow is constant, so volumes run on straight lines and the
 * next mark (standpipe, pump inlet, float, empty tank, spent ration) is reached at a time known
 * exactly. A vessel gives by gravity what it receives less what it loses; one below its standpipe
 * fills first; the reservoir takes all change of level.
 */
export interface Hydraulics {
  readonly volume: Float64Array;
  readonly slope: Float64Array;
  readonly flow: Float64Array;
  readonly carried: Float64Array;
  /** Water in the rain tank, m3. */
  readonly rain: number;
  /** How it changes, m3 d-1. */
  readonly rainSlope: number;
  /** Water that ran over the edge of the rain tank since the start, m3, and how fast it does, m3 d-1. */
  readonly spilled: number;
  readonly spillSlope: number;
  /** Sets what is wanted for the segment that begins; finds all flows. Returns what changed state. */
  settle(wanted: Wanted): readonly WaterEvent[];
  /** Time until the next mark, d (Infinity: none). */
  untilMark(): number;
  /** Moves on by so many days, at most `untilMark()`. */
  advance(days: number): void;
  /** A new day: daily rations are whole again; on days 0, 7, 14 ... weekly ones too. */
  newDay(day: number): void;
  /** Pours water into the rain tank, m3; what does not fit runs over. Returns what stays. */
  fillRainTank(volume: number): number;
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

/** Opens the water of a model at its starting volumes. */
export function openHydraulics(model: Model): Hydraulics {
  const { scenario, streams } = model;
  const vessels: readonly Vessel[] = scenario.vessels;
  const count = vessels.length;
  const reservoir = vessels.findIndex((vessel) => vessel.name === scenario.reservoir);
  const dryShare = model.parameters.value('vessel.dry');
  const full = vessels.map((vessel) => vessel.volume);
  const dry = full.map((volume) => volume * dryShare);
  const leaving = streamsFrom(model);
  const order = downhill(model, leaving);
  const startOf = new Map(scenario.start.map((start) => [start.vessel, start.volume]));
  const volume = Float64Array.from(
    vessels,
    (vessel) => scenario.saved?.volumes[vessel.name] ?? startOf.get(vessel.name) ?? vessel.volume,
  );
  const slope = new Float64Array(count);
  const flow = new Float64Array(streams.length);
  const carried = new Float64Array(streams.length);
  const inflow = new Float64Array(count);
  const pumpOf = streams.map((stream) => {
    const line = stream.kind === 'pumped' ? scenario.flows[stream.index] : undefined;
    return line?.kind === 'pumped' ? scenario.pumps.findIndex((pump) => pump.name === line.pump) : -1;
  });
  const drawn = scenario.pumps.map((_, pump) => [
    ...new Set(streams.filter((_stream, s) => pumpOf[s] === pump).map((stream) => stream.from)),
  ]);
  const gravity = streams.map((stream) => {
    const line = stream.kind === 'gravity' ? scenario.flows[stream.index] : undefined;
    return line?.kind === 'gravity' ? line.share : 0;
  });
  const tripped = scenario.pumps.map(() => false);
  const parched = vessels.map(() => false);
  const spent = (scenario.topUp?.sources ?? []).map(() => 0);
  const spentInWeek = spent.map(() => 0);
  const tank = scenario.rainTank;
  let rain = scenario.saved?.rainTank ?? tank?.volume ?? 0;
  let rainSlope = 0;
  let spilled = 0;
  let spillSlope = 0;
  let caps: readonly number[] = [];
  let weeklyCaps: readonly number[] = [];
  let mark: Crossing | undefined;

  const near = (vessel: number, level: number): boolean =>
    Math.abs(volume[vessel] - level) <= LEVEL * full[vessel];
  const atOrBelow = (vessel: number, level: number): boolean => volume[vessel] < level || near(vessel, level);
  const atOrAbove = (vessel: number, level: number): boolean => volume[vessel] > level || near(vessel, level);

  /** The nearer cap of a source is reached: it is spent to the last drop, not but for a rounding. */
  function spendAll(source: number): void {
    const byDay = caps[source] - spent[source];
    const byWeek = weeklyCaps[source] - spentInWeek[source];
    if (byDay <= byWeek) spent[source] = caps[source];
    if (byWeek <= byDay) spentInWeek[source] = weeklyCaps[source];
  }

  /** No pump draws a vessel lower than what counts as dry. */
  const inletOf = (pump: Pump, vessel: number): number => Math.max(pump.inlet, dry[vessel]);

  function switchPumps(events: WaterEvent[]): void {
    scenario.pumps.forEach((pump, index) => {
      if (!tripped[index] && drawn[index].some((vessel) => atOrBelow(vessel, inletOf(pump, vessel)))) {
        tripped[index] = true;
        events.push({ kind: 'pump-trip', place: pump.name });
      } else if (tripped[index] && drawn[index].every((vessel) => atOrAbove(vessel, pump.restart))) {
        tripped[index] = false;
        events.push({ kind: 'pump-restart', place: pump.name });
      }
    });
  }

  /** What a source may still give in its day and week, m3. */
  const rationLeft = (source: number): number =>
    Math.min(caps[source] - spent[source], weeklyCaps[source] - spentInWeek[source]);

  /** What a float at its level lets in from the sources in turn. */
  function topUp(net: number): number {
    const valve = scenario.topUp;
    if (valve === undefined) return 0;
    let request = 0;
    if (near(reservoir, valve.level)) request = Math.min(valve.rate, Math.max(0, -net));
    else if (volume[reservoir] < valve.level) request = valve.rate;
    let given = 0;
    streams.forEach((stream, s) => {
      if (stream.kind !== 'top-up') return;
      const source = valve.sources[stream.index];
      const left = request - given;
      let from: number;
      if (caps[stream.index] === 0) from = 0;
      else if (source.kind === 'rain-tank') from = rain > 0 ? left : Math.min(left, rainIn);
      else from = rationLeft(stream.index) > 0 ? left : 0;
      flow[s] = from;
      given += from;
      if (source.kind === 'rain-tank') rainSlope -= from;
    });
    return given;
  }
  let rainIn = 0;

  function settleVessel(index: number, wanted: Wanted, events: WaterEvent[]): void {
    const vessel = vessels[index];
    let out = 0;
    let soft = 0;
    for (const s of leaving[index]) {
      const stream = streams[s];
      if (stream.kind === 'pumped') out += flow[s];
      else if (stream.kind === 'exchange') soft += flow[s] = vessel.exchange;
      else if (stream.kind === 'leak') soft += flow[s] = vessel.leak;
      else if (stream.kind === 'evaporation') soft += flow[s] = wanted.evaporation[index];
      else if (stream.kind === 'transpiration') soft += flow[s] = wanted.transpiration[stream.index];
    }
    let gain = inflow[index] - out;
    if (index === reservoir) gain += topUp(gain - soft);
    // A vessel run dry loses no more than it receives.
    if (atOrBelow(index, dry[index]) && gain - soft < 0) {
      const share = Math.max(0, gain) / soft;
      for (const s of leaving[index]) {
        if (streams[s].kind !== 'pumped' && streams[s].kind !== 'gravity') flow[s] *= share;
      }
      soft *= share;
      if (!parched[index]) events.push({ kind: 'dry', place: vessel.name });
      parched[index] = true;
    } else if (parched[index] && !atOrBelow(index, dry[index])) {
      parched[index] = false;
      events.push({ kind: 'wet', place: vessel.name });
    }
    let net = gain - soft;
    let given = 0;
    const drain = vessel.drain;
    if (drain !== undefined) {
      given = atOrBelow(index, drain.to) ? Math.min(drain.rate, Math.max(0, net)) : drain.rate;
      net -= given;
    }
    if (net > 0 && atOrAbove(index, full[index])) {
      given += net;
      net = 0;
    }
    slope[index] = net;
    for (const s of leaving[index]) {
      const stream = streams[s];
      if (stream.kind === 'gravity') {
        flow[s] = given * gravity[s];
        inflow[stream.to] += flow[s];
      } else if (stream.kind === 'overflow') flow[s] = given;
    }
  }

  function settle(wanted: Wanted): readonly WaterEvent[] {
    const events: WaterEvent[] = [];
    caps = wanted.caps;
    weeklyCaps = wanted.weeklyCaps;
    switchPumps(events);
    flow.fill(0);
    inflow.fill(0);
    rainIn = wanted.rain;
    rainSlope = wanted.rain;
    streams.forEach((stream, s) => {
      const line = stream.kind === 'pumped' ? scenario.flows[stream.index] : undefined;
      if (line?.kind !== 'pumped') return;
      flow[s] = wanted.pumps[pumpOf[s]] && !tripped[pumpOf[s]] ? line.rate : 0;
      inflow[stream.to] += flow[s];
    });
    // The reservoir last: its top-up answers to all that returns to it.
    for (const vessel of order) if (vessel !== reservoir) settleVessel(vessel, wanted, events);
    settleVessel(reservoir, wanted, events);
    spillSlope = tank !== undefined && rain >= tank.capacity ? Math.max(0, rainSlope) : 0;
    rainSlope -= spillSlope;
    mark = nextMark();
    return events;
  }

  function nextMark(): Crossing | undefined {
    let next: Crossing | undefined;
    const offer = (after: number, vessel: number, level: number): void => {
      if (after > 0 && (next === undefined || after < next.after)) next = { after, vessel, volume: level };
    };
    const levels = (vessel: number, level: number | undefined): void => {
      if (level === undefined || slope[vessel] === 0 || near(vessel, level)) return;
      offer((level - volume[vessel]) / slope[vessel], vessel, level);
    };
    for (let vessel = 0; vessel < count; vessel++) {
      levels(vessel, full[vessel]);
      levels(vessel, dry[vessel]);
      levels(vessel, vessels[vessel].drain?.to);
    }
    levels(reservoir, scenario.topUp?.level);
    scenario.pumps.forEach((pump, index) => {
      for (const vessel of drawn[index])
        levels(vessel, tripped[index] ? pump.restart : inletOf(pump, vessel));
    });
    if (tank !== undefined && rainSlope < 0) offer(rain / -rainSlope, -1, 0);
    if (tank !== undefined && rainSlope > 0 && rain < tank.capacity) {
      offer((tank.capacity - rain) / rainSlope, -1, tank.capacity);
    }
    streams.forEach((stream, s) => {
      if (stream.kind !== 'top-up' || flow[s] === 0) return;
      const left = rationLeft(stream.index);
      if (Number.isFinite(left)) offer(left / flow[s], -2 - stream.index, 0);
    });
    return next;
  }

  return {
    volume,
    slope,
    flow,
    carried,
    get rain() {
      return rain;
    },
    get rainSlope() {
      return rainSlope;
    },
    get spilled() {
      return spilled;
    },
    get spillSlope() {
      return spillSlope;
    },
    settle,
    untilMark: () => mark?.after ?? Infinity,
    advance(days) {
      for (let vessel = 0; vessel < count; vessel++) volume[vessel] += slope[vessel] * days;
      rain += rainSlope * days;
      spilled += spillSlope * days;
      streams.forEach((stream, s) => {
        carried[s] += flow[s] * days;
        if (stream.kind !== 'top-up') return;
        spent[stream.index] += flow[s] * days;
        spentInWeek[stream.index] += flow[s] * days;
      });
      // At a mark the level is the mark itself, not the mark and a rounding.
      if (mark !== undefined && days >= mark.after) {
        if (mark.vessel >= 0) volume[mark.vessel] = mark.volume;
        else if (mark.vessel === -1) rain = mark.volume;
        else spendAll(-2 - mark.vessel);
      }
    },
    newDay(day) {
      spent.fill(0);
      if (day % WEEK === 0) spentInWeek.fill(0);
    },
    fillRainTank(poured) {
      const kept = Math.min(poured, (tank?.capacity ?? 0) - rain);
      rain += kept;
      spilled += poured - kept;
      return kept;
    },
  };
}

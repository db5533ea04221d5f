import { layWater } from './water-network.js';
/** Smallest share of a vessel's volume that counts as a difference of level. */
const LEVEL = 1e-12;
/** Days of a weekly ration. */
const WEEK = 7;
/** The water of a scenario at its start: nothing runs. */
export function startWater({ scenario, streams }) {
    const startOf = new Map(scenario.start.map((start) => [start.vessel, start.volume]));
    const sources = scenario.topUp?.sources ?? [];
    return {
        volume: Float64Array.from(scenario.vessels, ({ name, volume }) => scenario.saved?.volumes[name] ?? startOf.get(name) ?? volume),
        slope: new Float64Array(scenario.vessels.length),
        flow: new Float64Array(streams.length),
        carried: new Float64Array(streams.length),
        rain: scenario.saved?.rainTank ?? scenario.rainTank?.volume ?? 0,
        rainSlope: 0,
        spilled: 0,
        spillSlope: 0,
        tripped: scenario.pumps.map(() => false),
        parched: scenario.vessels.map(() => false),
        spent: sources.map(() => 0),
        spentInWeek: sources.map(() => 0),
        caps: [],
        weeklyCaps: [],
        mark: undefined,
    };
}
/** The nearer of two marks, the first where they are as near; one that is not ahead is none. */
function nearer(mark, other) {
    return other.after > 0 && (mark === undefined || other.after < mark.after) ? other : mark;
}
/**
 * Water by itself. Within a segment every flow is constant, so volumes run on straight lines and the
 * next mark (standpipe, pump inlet, float, empty tank, spent ration) is reached at a time known
 * exactly. A vessel gives by gravity what it receives less what it loses; one below its standpipe
 * fills first; the reservoir takes all change of level.
 */
export class Hydraulics {
    network;
    water;
    /** What has come into each vessel so far, m3 d-1, while flows are found. */
    inflow;
    /** What a mark that was reached since the flows were last found has to say. */
    reached = [];
    constructor(network, water) {
        this.network = network;
        this.water = water;
        this.inflow = new Float64Array(network.vessels.length);
    }
    /** Sets what is wanted for the segment that begins; finds all flows. Returns what changed state. */
    settle(wanted) {
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
        for (const vessel of network.order)
            this.settleVessel(vessel, wanted, events);
        const { tank } = network;
        const runsOver = tank !== undefined && water.rain >= tank.capacity;
        water.spillSlope = runsOver ? Math.max(0, water.rainSlope) : 0;
        water.rainSlope -= water.spillSlope;
        water.mark = this.nextMark();
        return events;
    }
    /** Time until the next mark, d (Infinity: none). */
    untilMark() {
        return this.water.mark?.after ?? Infinity;
    }
    /** Moves on by so many days, at most `untilMark()`. */
    advance(days) {
        const { water, network } = this;
        const { volume, slope, carried, flow } = water;
        for (let vessel = 0; vessel < volume.length; vessel++)
            volume[vessel] += slope[vessel] * days;
        water.rain += water.rainSlope * days;
        water.spilled += water.spillSlope * days;
        for (let s = 0; s < flow.length; s++)
            carried[s] += flow[s] * days;
        for (const { stream, source } of network.topUps) {
            water.spent[source] += flow[stream] * days;
            water.spentInWeek[source] += flow[stream] * days;
        }
        if (water.mark !== undefined && days >= water.mark.after)
            this.reach(water.mark);
    }
    /** A new day: daily rations are whole again; on days 0, 7, 14 ... weekly ones too. */
    newDay(day) {
        this.water.spent.fill(0);
        if (day % WEEK === 0)
            this.water.spentInWeek.fill(0);
    }
    /** Pours water into the rain tank, m3; what does not fit runs over. Returns what stays. */
    fillRainTank(poured) {
        const { water, network } = this;
        const kept = Math.min(poured, (network.tank?.capacity ?? 0) - water.rain);
        water.rain += kept;
        water.spilled += poured - kept;
        return kept;
    }
    near(vessel, level) {
        return Math.abs(this.water.volume[vessel] - level) <= LEVEL * this.network.vessels[vessel].full;
    }
    atOrBelow(vessel, level) {
        return this.water.volume[vessel] < level || this.near(vessel, level);
    }
    atOrAbove(vessel, level) {
        return this.water.volume[vessel] > level || this.near(vessel, level);
    }
    switchPumps(events) {
        const { tripped } = this.water;
        this.network.pumps.forEach(({ name, draws }, pump) => {
            if (!tripped[pump] && draws.some(({ vessel, inlet }) => this.atOrBelow(vessel, inlet))) {
                tripped[pump] = true;
                events.push({ kind: 'pump-trip', place: name });
            }
            else if (tripped[pump] && draws.every(({ vessel, restart }) => this.atOrAbove(vessel, restart))) {
                tripped[pump] = false;
                events.push({ kind: 'pump-restart', place: name });
            }
        });
    }
    /** Finds what leaves a vessel by what enters it, and how its volume changes. */
    settleVessel(index, wanted, events) {
        const { network, inflow, water } = this;
        const { vessel, dry, pumped, losses } = network.vessels[index];
        const { flow, parched } = water;
        let out = 0;
        for (const stream of pumped)
            out += flow[stream];
        let lost = 0;
        for (const { stream, kind, planting } of losses) {
            if (kind === 'evaporation')
                flow[stream] = wanted.evaporation[index];
            else if (kind === 'transpiration')
                flow[stream] = wanted.transpiration[planting];
            else
                flow[stream] = vessel[kind];
            lost += flow[stream];
        }
        let gain = inflow[index] - out;
        if (index === network.reservoir)
            gain += this.topUp(gain - lost, wanted.rain);
        const isDry = this.atOrBelow(index, dry);
        // A vessel run dry loses no more than it receives.
        if (isDry && gain - lost < 0) {
            const share = Math.max(0, gain) / lost;
            for (const { stream } of losses)
                flow[stream] *= share;
            lost *= share;
            if (!parched[index])
                events.push({ kind: 'dry', place: vessel.name });
            parched[index] = true;
        }
        else if (parched[index] && !isDry) {
            parched[index] = false;
            events.push({ kind: 'wet', place: vessel.name });
        }
        this.release(index, gain - lost);
    }
    /** Lets out of a vessel by gravity what it cannot hold of what it gains, m3 d-1. */
    release(index, gain) {
        const { vessel, full, gravity, overflows } = this.network.vessels[index];
        const { drain } = vessel;
        const { flow, slope } = this.water;
        let net = gain;
        let given = 0;
        if (drain !== undefined) {
            given = this.atOrBelow(index, drain.to) ? Math.min(drain.rate, Math.max(0, net)) : drain.rate;
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
        for (const stream of overflows)
            flow[stream] = given;
    }
    /** What a float at its level lets in from the sources in turn, where the reservoir else gains so much, m3 d-1. */
    topUp(gain, rainIn) {
        const { network, water } = this;
        const { valve, reservoir } = network;
        if (valve === undefined)
            return 0;
        let request = 0;
        if (this.near(reservoir, valve.level))
            request = Math.min(valve.rate, Math.max(0, -gain));
        else if (water.volume[reservoir] < valve.level)
            request = valve.rate;
        let given = 0;
        for (const { stream, source } of network.topUps) {
            const fromTank = valve.sources[source].kind === 'rain-tank';
            const left = request - given;
            let from = 0;
            if (water.caps[source] === 0)
                from = 0;
            else if (fromTank)
                from = water.rain > 0 ? left : Math.min(left, rainIn);
            else if (this.rationLeft(source) > 0)
                from = left;
            water.flow[stream] = from;
            given += from;
            if (fromTank)
                water.rainSlope -= from;
        }
        return given;
    }
    /** What a source may still give in its day and week, m3. */
    rationLeft(source) {
        const { caps, spent, weeklyCaps, spentInWeek } = this.water;
        return Math.min(caps[source] - spent[source], weeklyCaps[source] - spentInWeek[source]);
    }
    nextMark() {
        const { network, water } = this;
        const { vessels, valve, tank } = network;
        const { rain, rainSlope, flow } = water;
        let mark;
        for (let vessel = 0; vessel < vessels.length; vessel++) {
            for (const level of vessels[vessel].levels)
                mark = this.nearerLevel(mark, vessel, level);
        }
        if (valve !== undefined)
            mark = this.nearerLevel(mark, network.reservoir, valve.level);
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
            if (flow[stream] === 0)
                continue;
            const left = this.rationLeft(source);
            if (Number.isFinite(left))
                mark = nearer(mark, { kind: 'ration', after: left / flow[stream], source });
        }
        return mark;
    }
    /** The nearer of a mark and a level of a vessel. */
    nearerLevel(mark, vessel, level) {
        const slope = this.water.slope[vessel];
        if (slope === 0 || this.near(vessel, level))
            return mark;
        const after = (level - this.water.volume[vessel]) / slope;
        return after > 0 && (mark === undefined || after < mark.after)
            ? { kind: 'vessel', after, vessel, volume: level }
            : mark;
    }
    /** At a mark the level is the mark itself, not the mark and a rounding. */
    reach(mark) {
        const { water, network, reached } = this;
        if (mark.kind === 'vessel')
            water.volume[mark.vessel] = mark.volume;
        else if (mark.kind === 'rain-tank') {
            water.rain = mark.volume;
            if (mark.volume === 0)
                reached.push({ kind: 'rain-tank-empty', place: 'rain-tank' });
        }
        else {
            this.spendAll(mark.source);
            const source = network.valve?.sources[mark.source];
            if (source?.kind === 'mains')
                reached.push({ kind: 'cap-reached', place: source.water });
        }
    }
    /** The nearer cap of a source is reached: it is spent to the last drop, not but for a rounding. */
    spendAll(source) {
        const { caps, spent, weeklyCaps, spentInWeek } = this.water;
        const byDay = caps[source] - spent[source];
        const byWeek = weeklyCaps[source] - spentInWeek[source];
        if (byDay <= byWeek)
            spent[source] = caps[source];
        if (byWeek <= byDay)
            spentInWeek[source] = weeklyCaps[source];
    }
}
/** Opens the water of a model; it moves the water given, or that of the start. */
export function openHydraulics(model, water = startWater(model)) {
    return new Hydraulics(layWater(model), water);
}
//# sourceMappingURL=hydraulics.js.map
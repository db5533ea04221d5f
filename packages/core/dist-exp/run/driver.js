import { INSTANT } from '../base/instant.js';
import { openRates } from '../model/rates.js';
import { byKind } from '../scenario/action-kinds.js';
import { rosenbrock } from '../solve/rosenbrock.js';
import { harvestRipe, perform } from './actions.js';
import { openControls } from './controls.js';
import { openFishWatch } from './fish-watch.js';
import { watchDosers } from './dosers.js';
import { adviceFor } from './run.js';
import { freshBuffer, outputTimes } from './sample-buffer.js';
import { Sampler } from './sampler.js';
import { rememberedIn, savedMorning } from './saved.js';
import { Segments } from './segments.js';
import { openParts, startState } from './start.js';
import { absoluteTolerances } from './tolerances.js';
/** Marks of the water in one day that count as chattering. */
const CHATTER = 2000;
const waterWords = {
    'pump-trip': 'sucks air and stops: its vessel is down to the inlet',
    'pump-restart': 'runs again',
    dry: 'ran dry: it loses no more than flows in',
    wet: 'holds water again',
    'rain-tank-empty': 'has given its last water',
    'cap-reached': 'has given what its cap allows',
};
/** The integrator that options name. */
export function integratorOf({ integrator = rosenbrock }) {
    return ({ system }, tolerance) => integrator(system, tolerance);
}
/** Makes a run, one segment of constant forcing after another. All that changes in it is in `state`. */
export class Driver {
    model;
    options;
    parts;
    segments;
    sampler;
    followControls;
    watchFish;
    integrator;
    tolerance;
    /** Actions in the order of the run. */
    actions;
    outputs;
    /**
     * @param from goes on from the state of another run of this model and these options, between two segments, in
     *   place of `start`; it is changed, so give a copy where it is still wanted
     */
    constructor(model, options, openIntegrator, from) {
        this.model = model;
        this.options = options;
        const { scenario } = model;
        const { tolerance = 1e-5, buffer = freshBuffer } = options;
        const rates = openRates(model);
        this.tolerance = { relative: tolerance, absolute: absoluteTolerances(model, tolerance) };
        this.integrator = openIntegrator(rates, this.tolerance);
        const memory = remember(rates, this.integrator, from?.memory ?? rememberedIn(model, scenario.saved));
        this.parts = openParts(model, { ...(from ?? startState(model)), memory });
        const { crops, hydraulics, state } = this.parts;
        const { operation, day } = state;
        this.segments = new Segments({ model, regime: rates.regime, operation, crops, hydraulics, day });
        this.sampler = new Sampler(this.parts, buffer);
        this.followControls = openControls(this.parts);
        this.watchFish = openFishWatch(this.parts);
        this.actions = [...scenario.actions].sort((a, b) => a.at - b.at || byKind(a.action, b.action));
        this.outputs = outputTimes(scenario.days, scenario.every, scenario.saved?.time);
        if (from !== undefined)
            this.segments.enter(state.time);
    }
    /** Where the run stands. Between two segments a structured clone of it is a moment to go on from. */
    get state() {
        return this.parts.state;
    }
    /** What the run has left behind since it was opened. */
    get record() {
        return this.parts.record;
    }
    /** Does what is due at the start, and takes the first samples. What came before it has been done. */
    start() {
        const { state, outputs, model } = this;
        const { time } = state;
        this.skipDone();
        this.begin(false, savedMorning(model) === undefined);
        while (state.nextOutput < outputs.length && outputs[state.nextOutput] <= time + INSTANT) {
            this.sampler.take(outputs[state.nextOutput], state.y, state.x, 0);
            state.nextOutput++;
        }
    }
    /** Runs to the end of the segment and does what is due there. Returns whether the run goes on. */
    advance() {
        const atMark = this.carry();
        if (this.isOver())
            return false;
        this.begin(atMark);
        return !this.isOver();
    }
    /**
     * Runs to the end of the segment, or to a time where that comes first, and leaves what is due there to `begin`.
     * Returns whether the water came to a mark.
     */
    carry(until = Infinity) {
        if (this.isOver())
            return false;
        const { state } = this;
        const { hydraulics } = this.parts;
        const jump = Math.min(this.nextJump(), until);
        const mark = state.time + hydraulics.untilMark();
        const atMark = mark < jump;
        this.integrate(atMark ? mark : jump, atMark);
        return atMark;
    }
    /**
     * Does what is due between two segments and sets the regime of the next.
     * @param morning whether the morning of the day is still to be found, though no day begins
     */
    begin(atMark, morning = false) {
        const { state, segments } = this;
        const boundary = Math.abs(state.time - Math.round(state.time)) <= INSTANT;
        const jumped = boundary && this.beginDay();
        const { time } = state;
        const acted = this.act(time);
        if (boundary || acted || morning)
            segments.morning(Math.floor(time + INSTANT), time, state.y);
        // After a true jump the old step is far too long: begin again with a small one.
        if (this.settle(time) || acted || jumped)
            this.integrator.restart();
        if (atMark && ++state.marks > CHATTER) {
            state.outcome = { kind: 'chattering', time, advice: adviceFor('chattering') };
        }
    }
    /** Takes in an action to be done now, as if it had stood in the scenario, behind those of its instant and kind. */
    add(action) {
        this.skipDone();
        const { actions, state } = this;
        let place = state.nextAction;
        const before = ({ at, action: other }) => at <= state.time + INSTANT && byKind(other, action) <= 0;
        while (place < actions.length && before(actions[place]))
            place++;
        actions.splice(place, 0, { at: state.time, action });
    }
    /** Everything as it stands now. */
    look() {
        return this.sampler.look(this.state.time, this.state.y, this.state.x, 0);
    }
    /** The run up to where it stands. */
    finish() {
        const { model, state, integrator, tolerance } = this;
        const { samples, postings, events, doses } = this.record;
        // What was reached when a run breaks off or is left is told, whatever time it was.
        if (samples[samples.length - 1].time < state.time) {
            this.sampler.take(state.time, state.y, state.x, 0);
        }
        return {
            model,
            outcome: state.outcome ?? { kind: 'done', time: this.isOver() ? model.scenario.days : state.time },
            samples,
            postings,
            events,
            doses,
            ages: state.planted.map((planted) => state.time - planted),
            state,
            work: { ...integrator.work },
            integrator: integrator.name,
            tolerance: tolerance.relative,
        };
    }
    /** Whether the run has come to its end or has broken off. */
    isOver() {
        const { outcome, time } = this.state;
        return outcome !== undefined || time >= this.model.scenario.days - INSTANT;
    }
    /** Passes over the actions that came before now. */
    skipDone() {
        const { state, actions } = this;
        while (state.nextAction < actions.length && actions[state.nextAction].at < state.time - INSTANT)
            state.nextAction++;
    }
    /** The next instant at which the forcing jumps. */
    nextJump() {
        const { actions, segments } = this;
        const { time, nextAction } = this.state;
        const today = Math.floor(time + INSTANT);
        let next = Math.min(today + 1, this.model.scenario.days);
        if (nextAction < actions.length)
            next = Math.min(next, actions[nextAction].at);
        return Math.min(next, segments.nextSwitch(time));
    }
    /** Integrates to the end of the segment, with the samples within it and at its end. */
    integrate(to, atMark) {
        const { model, state, outputs, sampler, tolerance } = this;
        const { hydraulics } = this.parts;
        const from = state.time;
        const times = [];
        for (let next = state.nextOutput; next < outputs.length && outputs[next] < to - INSTANT; next++) {
            times.push(outputs[next]);
        }
        const take = (at, y, x) => {
            sampler.take(at, y, x, at - from);
        };
        const ending = to > from ? this.integrator.advance(from, to, state.y, state.x, { times, take }) : { kind: 'done' };
        state.nextOutput += times.length;
        if (ending.kind !== 'done') {
            hydraulics.advance(ending.time - from);
            state.time = ending.time;
            state.outcome = this.brokenOff(ending);
            return;
        }
        hydraulics.advance(atMark ? hydraulics.untilMark() : to - from);
        state.time = to;
        const ill = belowZero(model, state.y, tolerance.absolute, to);
        if (ill !== undefined)
            state.outcome = ill;
        if (state.nextOutput < outputs.length && outputs[state.nextOutput] <= to + INSTANT) {
            sampler.take(outputs[state.nextOutput++], state.y, state.x, 0);
        }
    }
    /** Begins a day, but for its actions. Returns whether something was harvested, booked as dead or done by a rule. */
    beginDay() {
        const { parts, state } = this;
        state.time = Math.round(state.time);
        state.marks = 0;
        parts.hydraulics.newDay(state.time);
        this.options.onDay?.(state.time);
        const harvested = harvestRipe(parts, state.time);
        watchDosers(parts, state.time);
        const cleared = this.watchFish(state.time);
        return this.followControls(state.time) || harvested || cleared;
    }
    /** Does the actions that are due. Returns whether there were any. */
    act(time) {
        const { parts, state, actions } = this;
        const from = state.nextAction;
        while (state.nextAction < actions.length && actions[state.nextAction].at <= time + INSTANT) {
            const { action, cause } = actions[state.nextAction++];
            perform(parts, action, time, cause);
        }
        return state.nextAction > from;
    }
    /** Sets the regime of the segment that starts at a time; true when the water did something. */
    settle(time) {
        const events = this.segments.settle(time);
        for (const { kind, place } of events)
            this.parts.ledger.say(time, kind, place, waterWords[kind]);
        // A source that gives no more changes the flow; only a pump or a dry vessel is a jump.
        return events.some(({ kind }) => kind !== 'cap-reached' && kind !== 'rain-tank-empty');
    }
    /** How a run ends where the integrator gave up. */
    brokenOff({ kind, time, worst }) {
        const state = worst >= 0 ? this.model.layout.states[worst] : undefined;
        return {
            kind,
            time,
            ...(state && { worst: `${state.component}@${state.place}` }),
            advice: adviceFor(kind),
        };
    }
}
/** What the numerical methods remember, changed by them in place; set to what those of another run remembered. */
function remember({ memory: pH }, { memory: steps }, from) {
    if (from !== undefined) {
        pH.hydrogen.set(from.pH.hydrogen);
        pH.origin.set(from.pH.origin);
        pH.slope.set(from.pH.slope);
        if (steps !== undefined && from.steps !== undefined)
            Object.assign(steps, from.steps);
    }
    return { pH, ...(steps && { steps }) };
}
/** A state more than ten tolerances below zero is an error; alkalinity may truly be negative. */
function belowZero(model, y, absolute, time) {
    for (let s = 0; s < y.length; s++) {
        const { component, place } = model.layout.states[s];
        if (component === 'alkalinity' || !(y[s] < -10 * absolute[s]))
            continue;
        return {
            kind: 'negative-state',
            time,
            worst: `${component}@${place}`,
            advice: adviceFor('negative-state'),
        };
    }
    return undefined;
}
//# sourceMappingURL=driver.js.map
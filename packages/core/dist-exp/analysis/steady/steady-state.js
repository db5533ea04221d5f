import { calendarDays } from '../../base/calendar.js';
import { InputError } from '../../base/faults.js';
import { parseQuantity } from '../../base/units.js';
import { compileChecked } from '../../model/compile.js';
import { constantState, NoSteadyStateError } from './constant-state.js';
import { enter, openCycle, setIons } from './cycle.js';
import { heldSystem, holdRequested, limeHeld, livingHeld } from './held.js';
import { periodicState } from './periodic-state.js';
import { drainedWater, evenTerms, spreadActions, } from './spread-actions.js';
import { steadyCourse } from './steady-course.js';
/** A place for lime where none was laid in. */
const noLime = { kind: 'powder', mass: 0 };
/** The scenario without actions and rules; drained water leaves steadily, and what may hold lime still may. */
function still({ scenario, layout }, drained) {
    return {
        ...scenario,
        actions: [],
        rules: [],
        vessels: scenario.vessels.map((vessel, index) => ({
            ...vessel,
            ...(vessel.lime === undefined && layout.calcite[index] >= 0 && { lime: noLime }),
            exchange: vessel.exchange + (drained.get(vessel.name) ?? 0),
        })),
    };
}
/** Puts the mean of a cycle into force: flows, volumes and coefficients, each by its time. */
function enterMean(regime, { segments, period }) {
    const [first] = segments;
    const mean = (of) => {
        const sums = new Float64Array(of(first).length);
        for (const segment of segments) {
            const share = (segment.to - segment.from) / period;
            const values = of(segment);
            for (let i = 0; i < sums.length; i++)
                sums[i] += share * values[i];
        }
        return sums;
    };
    enter(regime, {
        ...first,
        flow: mean(({ flow }) => flow),
        volume: mean(({ volume, slope, from, to }) => volume.map((value, vessel) => value + (slope[vessel] * (to - from)) / 2)),
        slope: new Float64Array(first.slope.length),
        coefficients: first.coefficients.map((_, j) => mean(({ coefficients }) => coefficients[j])),
    });
}
/** Ionic strengths are settled when none moves by more than this share; so often at most are they found anew. */
const IONS_SETTLED = 1e-7;
const MOST_ROUNDS = 20;
/**
 * The lasting state of a cycle. A run holds ionic strength through each day; here it is that of the state itself,
 * found in rounds: each sets the constants of acids and bases by the state of the one before.
 * @throws NoSteadyStateError when no such state is found
 */
function settled({ model, even, cycle, given }) {
    let { start } = cycle;
    for (let round = 0; round < MOST_ROUNDS; round++) {
        if (cycle.constant)
            enter(cycle.regime, cycle.segments[0]);
        else
            enterMean(cycle.regime, cycle);
        const constant = constantState({ model, system: cycle.system, even }, start, given);
        const states = new Set(constant.held.flatMap((each) => each.states));
        const system = heldSystem(cycle.system, states, even);
        const repeated = cycle.constant ? undefined : periodicState(model, cycle, system, constant);
        const y = repeated?.y ?? constant.y;
        if (setIons(model, cycle, y) < IONS_SETTLED)
            return { constant, repeated, system, y };
        start = withHeld(cycle.start, y, states);
    }
    throw new NoSteadyStateError(`ionic strengths did not settle in ${MOST_ROUNDS} rounds`);
}
/** A state to start from: one found before, with what is held as it was at the very start. */
function withHeld(start, found, held) {
    return found.map((value, state) => (held.has(state) ? start[state] : value));
}
/**
 * The state that a system comes to, and keeps, under the weather of one day, with fish and crops held as they are
 * at the start. Doses, drainings and changes of water that repeat are spread evenly; other actions and rules are left
 * out. With timers, hours of feeding or rations of water that run out, the state is one that repeats.
 * @throws InputError when the water never settles, NoSteadyStateError when no such state is found
 */
export function steadyState(model, options = {}) {
    const day = options.day ?? 0;
    const { spread, leftOut } = spreadActions(model.scenario);
    const frozen = compileChecked(still(model, drainedWater(spread)), model.parameters, {
        ...(model.extension && { extension: model.extension }),
        // The rows were checked when the model was compiled.
        closureDraws: 0,
    });
    const even = evenTerms(spread, frozen);
    const cycle = openCycle(frozen, day, options.crops ?? 'mean');
    const given = [
        ...livingHeld(frozen),
        ...limeHeld(frozen, even),
        ...holdRequested(frozen, options.hold ?? []),
    ];
    const { constant, repeated, system, y } = settled({ model: frozen, even, cycle, given });
    return {
        kind: cycle.constant ? 'constant' : 'periodic',
        period: cycle.period,
        day,
        course: steadyCourse(frozen, cycle, system, y),
        held: constant.held,
        modes: constant.modes,
        stable: constant.modes.every(({ time }) => time > 0),
        spread,
        leftOut: leftOut,
        water: cycle.events,
        marched: constant.marched,
        steps: constant.steps,
        passes: repeated?.passes ?? 0,
        residual: repeated?.residual ?? constant.lastStep,
    };
}
/**
 * The whole day of a run that a text names: a time after the start such as `90 d`, or a date.
 * @param where what to name in a fault, such as an option
 * @throws InputError where it names no day, or one before the start
 */
export function dayOn(text, { startDate }, where) {
    const expected = 'a time after the start such as "30 d", or a date such as 2026-03-01';
    const fault = (problem) => new InputError([{ file: where, got: JSON.stringify(text), problem, expected }]);
    if (/^\d{4}-\d/.test(text)) {
        const date = calendarDays(text);
        if (date === undefined)
            throw fault('no such date');
        const day = Math.floor(date - (calendarDays(startDate) ?? Number.NaN));
        if (day < 0)
            throw fault(`before the start, ${startDate}`);
        return day;
    }
    const answer = parseQuantity(text, 'time');
    if ('problem' in answer)
        throw fault(answer.problem);
    return Math.floor(answer.value);
}
//# sourceMappingURL=steady-state.js.map
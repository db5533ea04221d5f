import { InputError } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import { unitIn, waterState } from '../../model/layout.js';
import { unitOf, waterComponents } from '../../processes/components.js';
import { packPattern, packRows } from '../../solve/sparse-rows.js';
/** Stock and crops: they grow until somebody takes them out. */
export function livingHeld(model) {
    const { fish, batches } = model.layout;
    const of = (component, states, reason) => states.length === 0 ? [] : [{ component, place: 'everywhere', reason, states }];
    return [
        ...of('fish', fish.flatMap(({ mass, number }) => [mass, number]), 'fish grow and die until they are taken out'),
        ...of('crops', batches.flatMap(({ mass, nitrogen, fruit }) => fruit < 0 ? [mass, nitrogen] : [mass, nitrogen, fruit]), 'crops grow from planting to harvest and begin anew'),
    ];
}
/**
 * Lime that lies in the water, and scale: they go and come over years. What is dosed settles, and is not held.
 * @param even what repeated actions bring
 */
export function limeHeld(model, even) {
    const dosed = new Set([
        ...even.map(({ state }) => state),
        ...model.instances
            .filter(({ doser }) => doser !== undefined)
            .flatMap(({ row }) => model.rows[row].entries.map(({ state }) => state)),
    ]);
    const states = model.layout.calcite.filter((state) => state >= 0 && !dosed.has(state));
    if (states.length === 0)
        return [];
    return [
        { component: 'calcite', place: 'everywhere', reason: 'lime dissolves and falls over years', states },
    ];
}
/** All states of one component, over all places. */
export function statesOf(model, component) {
    return model.layout.states.flatMap((state, index) => (state.component === component ? [index] : []));
}
/**
 * Where a component is held: in the reservoir, so that the other vessels follow it, or, on a surface, at a state of
 * it.
 */
function heldAt(model, component, state) {
    const { layout, scenario } = model;
    const water = waterComponents.find((name) => name === component);
    return water === undefined
        ? { place: layout.states[state].place, states: [state] }
        : {
            place: scenario.reservoir,
            states: [waterState(layout.vessels.indexOf(scenario.reservoir), water)],
        };
}
/** Holds what never settles: it drifts for ever, or may be anything. */
export function holdDrifting(model, component, state, drift) {
    const reason = drift === 0
        ? 'nothing brings it in or takes it out: the whole stays what it was'
        : 'it drifts for years: what comes in and what goes out do not meet';
    return {
        component,
        reason,
        drift,
        unit: `${unitIn(model.layout, component)}/d`,
        ...heldAt(model, component, state),
    };
}
/**
 * Holds components of the water in the reservoir because the user wants it.
 * @throws InputError where there is no such component
 */
export function holdRequested(model, components) {
    return components.map((name) => {
        const component = waterComponents.find((each) => each === name);
        if (component !== undefined)
            return {
                component,
                reason: 'held as asked',
                drift: 0,
                unit: `${unitOf[component]}/d`,
                ...heldAt(model, component, -1),
            };
        const near = nearest(name, waterComponents);
        throw new InputError([
            {
                problem: 'no such component of the water',
                got: name,
                expected: waterComponents.join(', '),
                ...(near === undefined ? {} : { nearest: near }),
            },
        ]);
    });
}
function rowOf(rows, row) {
    const entries = [];
    for (let e = rows.start[row]; e < rows.start[row + 1]; e++)
        entries.push([rows.column[e], rows.value[e]]);
    return entries;
}
/**
 * A rate system in which some states stay as they are, whatever the rates say, and in which others gain and
 * lose evenly besides. Rates of the original keep their places; those of the even terms follow.
 */
export function heldSystem(system, held, even) {
    const moving = even.filter(({ state }) => !held.has(state));
    const stoichiometry = packRows([
        ...Array.from({ length: system.rates }, (_, row) => rowOf(system.stoichiometry, row).filter(([state]) => !held.has(state))),
        ...moving.map(({ state }) => [[state, 1]]),
    ]);
    const { start, column } = system.dependence;
    const dependence = packPattern([
        ...Array.from({ length: system.rates }, (_, row) => [...column.subarray(start[row], start[row + 1])]),
        ...moving.map(({ state }) => [state]),
    ]);
    const partials = column.length;
    return {
        states: system.states,
        rates: system.rates + moving.length,
        stoichiometry,
        dependence,
        evaluate(t, y, r) {
            system.evaluate(t, y, r);
            moving.forEach(({ state, gain, loss }, i) => {
                r[system.rates + i] = gain - loss * y[state];
            });
        },
        differentiate(t, y, dr, rt) {
            system.differentiate(t, y, dr, rt);
            moving.forEach(({ loss }, i) => {
                dr[partials + i] = -loss;
                rt[system.rates + i] = 0;
            });
        },
    };
}
//# sourceMappingURL=held.js.map
import { waterComponents } from '../../processes/components.js';
import { ownInWater, waterState } from '../../model/layout.js';
import { dosedTo } from '../../model/dosed.js';
import { concentrationsOf } from '../../run/ledger.js';
import { isSpreadable } from '../../scenario/action-kinds.js';
/** Days between like actions, where there are at least two at equal distances that go on to the end of the run. */
function interval(actions, days) {
    const times = actions.map(({ at }) => at).sort((a, b) => a - b);
    if (times.length < 2)
        return undefined;
    const every = (times[times.length - 1] - times[0]) / (times.length - 1);
    const even = times.every((time, i) => Math.abs(time - times[0] - i * every) < 1e-6);
    const goesOn = times[times.length - 1] + every >= days - 1e-6;
    return even && goesOn && every > 0 ? every : undefined;
}
/** Sorts the actions of a scenario into those that are spread evenly and those that are left out. */
export function spreadActions(scenario) {
    const like = new Map();
    for (const timed of scenario.actions) {
        const key = JSON.stringify(timed.action);
        like.set(key, [...(like.get(key) ?? []), timed]);
    }
    const spread = [];
    const leftOut = new Set();
    for (const actions of like.values()) {
        const { action } = actions[0];
        const every = interval(actions, scenario.days);
        if (every !== undefined && isSpreadable(action))
            spread.push({ action, every });
        else
            leftOut.add(action.kind);
    }
    return { spread, leftOut: [...leftOut] };
}
/** Water that repeated drainings take out of each vessel, m3 d-1; the float makes it good. */
export function drainedWater(spread) {
    const drained = new Map();
    for (const { action, every } of spread) {
        if (action.kind !== 'drain-solids' || action.water === 0)
            continue;
        drained.set(action.vessel, (drained.get(action.vessel) ?? 0) + action.water / every);
    }
    return drained;
}
/** What an action of each kind that can be spread does per day when it is done `every` so many days. */
const spreads = {
    dose: ({ vessel, product, mass }, every, { layout, parameters }) => dosedTo(layout, parameters, vessel, product, mass).map(([state, amount]) => ({
        state,
        gain: amount / every,
        loss: 0,
    })),
    'drain-solids': ({ vessel, share }, every, { layout }) => {
        const at = layout.vessels.indexOf(vessel);
        const loss = (2 * share) / (every * (2 - share));
        return [layout.settled[at], layout.settledRefractory[at]].flatMap((state) => state < 0 ? [] : [{ state, gain: 0, loss }]);
    },
    'change-water': (action, every, { layout, scenario }) => {
        const vessel = layout.vessels.indexOf(action.vessel);
        const there = scenario.vessels[vessel].volume;
        const perDay = Math.min(there, action.volume ?? (action.share ?? 0) * there) / every;
        const water = scenario.waters.find(({ name }) => name === action.water);
        if (water === undefined)
            throw new RangeError(`no water named ${action.water}`);
        const loss = perDay / there;
        return [
            ...concentrationsOf(water).map((concentration, c) => ({
                state: waterState(vessel, waterComponents[c]),
                gain: concentration * perDay,
                loss,
            })),
            ...ownInWater(layout).map(({ states }) => ({ state: states[vessel], gain: 0, loss })),
        ];
    },
};
/**
 * What repeated actions do per day to the states. A share s drained every P days is spread as a loss of
 * 2 s / (P (2 - s)) a day: with a steady inflow the mean of what lies there is then the same.
 */
export function evenTerms(spread, model) {
    return spread.flatMap(({ action, every }) => spreads[action.kind](action, every, model));
}
//# sourceMappingURL=spread-actions.js.map
import { sum } from '../base/sum.js';
import { ownInWater } from '../model/layout.js';
import { waterComponents } from '../processes/components.js';
/** What an action did through an account, in plain words. */
const postingNames = {
    feed: 'feed given',
    'source water': 'water filled in',
    air: 'air',
    sludge: 'sludge taken out',
    discharge: 'water let out',
    'stocked fish': 'fish stocked',
    'graded fish': 'fish graded',
    'harvested fish': 'fish harvested',
    'dead fish': 'fish lost',
    seedlings: 'planting',
    'harvested crop': 'harvest of crops',
    dosing: 'dosing',
    treatment: 'killed by treatment',
};
/** What a stream does to the vessels it enters (into) or leaves, in plain words. */
function streamName(model, stream, into) {
    const { vessels } = model.layout;
    if (stream.from >= 0 && stream.to >= 0) {
        return into ? `carried in from ${vessels[stream.from]}` : `carried out to ${vessels[stream.to]}`;
    }
    switch (stream.kind) {
        case 'top-up':
            return `top-up with ${stream.water ?? 'water'}`;
        case 'exchange':
            return 'water exchange';
        default:
            return stream.kind;
    }
}
/** What is there before anything happened. */
export const START = 'state at the start';
/** Name of what each row does to the states it changes, by row and whether it adds to the store. */
function rowNames(model) {
    const titles = new Map(model.instances.map(({ row, process }) => [row, process.title]));
    const rowsFrom = (first, count, stream) => first < 0 ? [] : Array.from({ length: count }, (_, c) => [first + c, stream]);
    const own = ownInWater(model.layout).length;
    const streams = new Map(model.streams.flatMap((stream, s) => [
        ...rowsFrom(model.streamRow[s], waterComponents.length, stream),
        ...rowsFrom(model.ownStreamRow[s], own, stream),
    ]));
    return (row, into) => {
        const stream = streams.get(row);
        return stream === undefined ? (titles.get(row) ?? model.rows[row].id) : streamName(model, stream, into);
    };
}
function stateHistory(run, sample, states) {
    const { model, postings, samples } = run;
    const nameOf = rowNames(model);
    const rows = model.rows.flatMap((row, index) => {
        const coefficient = sum(row.entries.map((entry) => (states.has(entry.state) ? entry.coefficient : 0)));
        if (coefficient === 0 || sample.x[index] === 0)
            return [];
        return [[nameOf(index, coefficient > 0), coefficient * sample.x[index]]];
    });
    const posted = postings.map(({ state, account, amount }) => [
        postingNames[account],
        states.has(state) ? amount : 0,
    ]);
    const atStart = sum(Array.from(states, (state) => samples[0].y[state]));
    const postedThen = posted.slice(0, samples[0].posted).map(([, amount]) => -amount);
    return [[START, sum([atStart, ...postedThen])], ...rows, ...posted.slice(0, sample.posted)];
}
function waterHistory(run, sample, vessels) {
    const { model, postings, samples } = run;
    const inside = new Set(vessels.map((vessel) => model.layout.vessels[vessel]));
    const streams = model.streams.flatMap((stream, s) => {
        const into = vessels.includes(stream.to);
        if (into === vessels.includes(stream.from))
            return [];
        return [[streamName(model, stream, into), into ? sample.carried[s] : -sample.carried[s]]];
    });
    const posted = postings.map(({ component, vessel, account, amount }) => [
        postingNames[account],
        component === 'water' && inside.has(vessel) ? amount : 0,
    ]);
    const atStart = vessels.map((vessel) => samples[0].volume[vessel]);
    const postedThen = posted.slice(0, samples[0].posted).map(([, amount]) => -amount);
    return [[START, sum([...atStart, ...postedThen])], ...streams, ...posted.slice(0, sample.posted)];
}
/**
 * All that brought a store to where it stands at a sample, from the integrated extents of rows and streams
 * and from the postings; amounts of one cause are added. Their sum is `heldBy`, to rounding.
 */
export function historyOf(run, sample, store) {
    if (store.kind === 'size')
        return new Map([[store.name, store.value]]);
    const items = store.kind === 'states'
        ? stateHistory(run, sample, new Set(store.states))
        : waterHistory(run, sample, store.vessels);
    const groups = new Map();
    for (const [cause, amount] of items) {
        const group = groups.get(cause);
        if (group === undefined)
            groups.set(cause, [amount]);
        else
            group.push(amount);
    }
    return new Map([...groups].map(([cause, amounts]) => [cause, sum(amounts)]));
}
/** What a store holds at a sample. */
export function heldBy(sample, store) {
    if (store.kind === 'size')
        return store.value;
    if (store.kind === 'states')
        return sum(store.states.map((state) => sample.y[state]));
    return sum(store.vessels.map((vessel) => sample.volume[vessel]));
}
//# sourceMappingURL=why-history.js.map
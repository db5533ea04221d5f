import { sum } from '../base/sum.js';
import { contentPosted, leavesOrComes } from './crossings.js';
import { outsideName, storeName } from './fates.js';
/** The first circle that is met going from link to link in their order, as indices; undefined where there is none. */
function circleIn(links) {
    const clear = new Set();
    const search = (place, path, seen) => {
        const back = seen.indexOf(place);
        if (back >= 0)
            return path.slice(back);
        if (clear.has(place))
            return undefined;
        for (const [i, link] of links.entries()) {
            if (link.from !== place)
                continue;
            const found = search(link.to, [...path, i], [...seen, place]);
            if (found !== undefined)
                return found;
        }
        clear.add(place);
        return undefined;
    };
    for (const { from } of links) {
        const found = search(from, [], []);
        if (found !== undefined)
            return found;
    }
    return undefined;
}
/**
 * Takes out what only goes round: of every circle of links the smallest amount, from each of its links. What every
 * place receives less what it gives stays as it was.
 * @returns the links that are left, and all that was taken out, counted once for each circle
 */
export function removeCircles(links) {
    let left = links.filter(({ amount }) => amount > 0);
    let circled = 0;
    for (let circle = circleIn(left); circle !== undefined; circle = circleIn(left)) {
        const around = new Set(circle);
        const least = Math.min(...circle.map((i) => left[i].amount));
        circled += least;
        left = left
            .map((link, i) => (around.has(i) ? { ...link, amount: link.amount - least } : link))
            .filter(({ amount }) => amount > 0);
    }
    return { links: left, circled };
}
const pools = {
    tan: 'ammonia',
    nitrite: 'nitrite',
    nitrate: 'nitrate',
    solids: 'solids',
    refractory: 'solids',
    settled: 'solids',
    'settled-refractory': 'solids',
    'organic-nitrogen': 'organic nitrogen',
    aob: 'biofilm',
    nob: 'biofilm',
    heterotrophs: 'biofilm',
    'crop-mass': 'crops',
    'crop-nitrogen': 'crops',
    'fruit-mass': 'crops',
    'fish-mass': 'fish',
    'fish-dead': 'dead fish',
};
const poolOf = (component) => `pool|${pools[component] ?? component}`;
const nitratePool = poolOf('nitrate');
const nitrogenGas = `outside|${outsideName('air', 'dinitrogen')}`;
function moves(items) {
    const held = new Map();
    for (const [place, amount] of items)
        held.set(place, (held.get(place) ?? 0) + amount);
    return held;
}
const outside = (place, kind) => place.replace(/^outside\|/, `${kind}|`);
/** Shares what the givers lost among the takers, in proportion; nitrogen gas comes of nitrate while there is any. */
function linked(moved) {
    const left = new Map(moved);
    const links = [];
    const give = (giver, taker, amount) => {
        links.push({ from: outside(giver, 'source'), to: outside(taker, 'fate'), amount });
    };
    const gas = left.get(nitrogenGas) ?? 0;
    const fromNitrate = Math.min(gas, -(left.get(nitratePool) ?? 0));
    if (fromNitrate > 0) {
        give(nitratePool, nitrogenGas, fromNitrate);
        left.set(nitrogenGas, gas - fromNitrate);
        left.set(nitratePool, (left.get(nitratePool) ?? 0) + fromNitrate);
    }
    const givers = [...left].filter(([, amount]) => amount < 0);
    const takers = [...left].filter(([, amount]) => amount > 0);
    const taken = sum(takers.map(([, amount]) => amount));
    for (const [giver, lost] of givers)
        for (const [taker, gained] of takers)
            give(giver, taker, (-lost * gained) / taken);
    return links;
}
/** Links by the rows of the model: processes, and what water carries over the edge of the system. */
function byRows(run) {
    const first = run.samples[0];
    const last = run.samples[run.samples.length - 1];
    return run.model.rows.flatMap((row, index) => {
        const extent = last.x[index] - first.x[index];
        if (extent === 0)
            return [];
        const items = row.entries.map(({ component, state, place, coefficient, content }) => {
            const where = state >= 0 ? poolOf(component) : `outside|${outsideName(place, component)}`;
            return [where, content.nitrogen === 0 ? 0 : coefficient * extent * content.nitrogen];
        });
        return linked(moves(items));
    });
}
/** Links by what jumped: stocking, harvests, drained solids, changed water. */
function byPostings(run) {
    const { model, samples, postings } = run;
    return postings
        .slice(samples[0].posted, samples[samples.length - 1].posted)
        .filter(leavesOrComes)
        .flatMap(({ account, component, state, amount }) => {
        const content = contentPosted(model, state, component, 'nitrogen');
        if (amount === 0 || content === 0)
            return [];
        const moved = amount * content;
        return linked(moves([
            [`outside|${outsideName(account, component)}`, -moved],
            [poolOf(component), moved],
        ]));
    });
}
/** Links to what is kept in the system at the end, and from what was drawn out of what it held at the start. */
function byStores(run) {
    const { layout, contents } = run.model;
    const first = run.samples[0];
    const last = run.samples[run.samples.length - 1];
    const stored = moves(layout.states.flatMap(({ component }, i) => contents[i].nitrogen === 0
        ? []
        : [[`${poolOf(component)}|${storeName(component)}`, contents[i].nitrogen * (last.y[i] - first.y[i])]]));
    return [...stored].flatMap(([place, amount]) => {
        const [kind, pool, store] = place.split('|');
        const inside = `${kind}|${pool}`;
        if (amount > 0)
            return [{ from: inside, to: `fate|kept in ${store}`, amount }];
        return amount < 0 ? [{ from: `source|drawn from ${store}`, to: inside, amount: -amount }] : [];
    });
}
/** Adds links of one pair of places, and lets what went both ways between two pools cancel. */
function netted(links) {
    const key = (from, to) => `${from}>${to}`;
    const totals = new Map();
    for (const { from, to, amount } of links) {
        const found = totals.get(key(from, to));
        if (found === undefined)
            totals.set(key(from, to), [amount]);
        else
            found.push(amount);
    }
    return [...totals].map(([pair, amounts]) => {
        const [from, to] = pair.split('>');
        return { from, to, amount: sum([...amounts, ...(totals.get(key(to, from)) ?? []).map((back) => -back)]) };
    });
}
/**
 * The ways of nitrogen through the whole system from the first sample of a run to its last, g N: from its sources
 * (feed, source water, what the stores held) through its forms (fish, solids, ammonia, nitrite, nitrate, biofilm,
 * crops) to its fates, from the integrated extents and the postings. Where a process takes from several or
 * gives to several at once, each giver counts for each taker in proportion, except that nitrogen gas comes of nitrate
 * before anything else. Every pool gives what it receives, to
 * rounding. What went to and fro or round is taken out (`circled` says how much went round), so that
 * the links can be drawn from left to right.
 */
export function nitrogenPaths(run) {
    const all = netted([...byRows(run), ...byPostings(run), ...byStores(run)]);
    const { links, circled } = removeCircles(all);
    const names = [...new Set(links.flatMap(({ from, to }) => [from, to]))];
    return {
        places: names.map((each) => {
            const [kind, name] = each.split('|');
            return { name, kind: kind };
        }),
        links: links.map(({ from, to, amount }) => ({
            from: names.indexOf(from),
            to: names.indexOf(to),
            amount,
        })),
        circled,
    };
}
//# sourceMappingURL=nitrogen-paths.js.map
import { sum } from '../base/sum.js';
import { streamKinds } from '../model/streams.js';
import { accounts } from '../processes/components.js';
import { budgetOf } from './budget.js';
const airNames = {
    dinitrogen: 'nitrogen gas',
    'ammonia-gas': 'ammonia to air',
    'oxygen-gas': 'oxygen of the air',
    'carbon-dioxide-gas': 'carbon dioxide of the air',
};
const storeNames = {
    tan: 'water',
    nitrite: 'water',
    nitrate: 'water',
    dissolved: 'water',
    'organic-nitrogen': 'water',
    alkalinity: 'water',
    carbon: 'water',
    oxygen: 'water',
    chloride: 'water',
    calcium: 'water',
    water: 'vessels',
    solids: 'solids',
    refractory: 'solids',
    settled: 'solids',
    'settled-refractory': 'solids',
    aob: 'biofilm',
    nob: 'biofilm',
    acclimation: 'biofilm',
    awake: 'biofilm',
    heterotrophs: 'biofilm',
    calcite: 'lime',
    'crop-mass': 'standing crop',
    'crop-nitrogen': 'standing crop',
    'fruit-mass': 'standing crop',
    'fish-mass': 'living fish',
    'fish-fat': 'living fish',
    'fish-dead': 'dead fish in the water',
    'fish-dead-fat': 'dead fish in the water',
};
/** What stands on the far side of the edge of the system, in plain words: an account, or a gas of the air. */
export function outsideName(account, component) {
    return (account === 'air' ? airNames[component] : undefined) ?? account;
}
/** Where in the system a component is held, in plain words. */
export function storeName(component) {
    return storeNames[component] ?? component;
}
/** Every name that `to` of the fates of some budget may hold. */
export const fateNames = [
    ...new Set([
        ...accounts,
        ...Object.values(airNames),
        ...streamKinds,
        ...Object.values(storeNames).map((name) => `kept in ${name}`),
    ]),
];
function crossedName(line) {
    if (line.component === 'water')
        return line.by === 'action' ? line.beyond : line.by;
    return outsideName(line.beyond, line.component);
}
/** Amounts by name, largest first; amounts of one name are added. */
function shares(items, total) {
    const names = [...new Set(items.map(({ name }) => name))];
    return names
        .map((name) => {
        const amount = sum(items.filter((item) => item.name === name).map((item) => item.amount));
        return { name, amount, share: amount / total };
    })
        .filter(({ amount }) => amount !== 0)
        .sort((a, b) => b.amount - a.amount);
}
/**
 * Reads a budget of the whole system as a story: so much came from feed, from source water, or out of
 * what was there ("drawn from water"); so much went to each account or stays in fish, crop, water,
 * biofilm and solids. Shares of `to` sum to 1 but for the residual.
 */
export function fatesOf(budget) {
    const stored = shares(budget.stores.map(({ component, amount }) => ({ name: storeName(component), amount })), 1);
    const came = budget.lines.filter(({ amount }) => amount > 0);
    const went = budget.lines.filter(({ amount }) => amount < 0);
    const from = [
        ...came.map((line) => ({ name: crossedName(line), amount: line.amount })),
        ...stored
            .filter(({ amount }) => amount < 0)
            .map(({ name, amount }) => ({ name: `drawn from ${name}`, amount: -amount })),
    ];
    const to = [
        ...went.map((line) => ({ name: crossedName(line), amount: -line.amount })),
        ...stored
            .filter(({ amount }) => amount > 0)
            .map(({ name, amount }) => ({ name: `kept in ${name}`, amount })),
    ];
    const total = sum(from.map(({ amount }) => amount));
    return { total, from: shares(from, total), to: shares(to, total), residual: budget.residual };
}
/** Indices of at most `most` samples, evenly over the run, the first and the last among them. */
function spread(count, most) {
    const steps = Math.min(count, most) - 1;
    if (steps < 1)
        return [count - 1];
    return [...new Set(Array.from({ length: steps + 1 }, (_, i) => Math.round((i * (count - 1)) / steps)))];
}
/**
 * Where nitrogen (g N) or water (m3) had gone by each time of a run: the fates of the run up to there, over the
 * whole system. At the start all is 0.
 * @param most most times, at least 2; the first and last output times are always among them
 */
export function fatesOver(run, quantity, most) {
    const at = spread(run.samples.length, most);
    const fates = at.map((index) => fatesOf(budgetOf({ ...run, samples: run.samples.slice(0, index + 1) }, quantity, 'system')));
    const amounts = (name) => fates.map(({ to }) => to.find((share) => share.name === name)?.amount ?? 0);
    const names = [...new Set([...fates].reverse().flatMap(({ to }) => to.map(({ name }) => name)))];
    return {
        time: at.map((index) => run.samples[index].time),
        parts: names.map((name) => ({ name, amounts: amounts(name) })),
    };
}
//# sourceMappingURL=fates.js.map
import { conserved } from '../processes/components.js';
import { sum } from '../base/sum.js';
import { crossings } from './crossings.js';
import { concernsOf } from './crossings.js';
/** Contents of every state inside the boundary (for water: of every vessel). */
function contents(run, quantity, boundary, sample) {
    if (quantity === 'water') {
        const volumes = boundary === 'system' ? [...sample.volume] : [sample.volume[boundary]];
        return volumes.map((amount) => ({ component: 'water', amount }));
    }
    const { layout, contents: content } = run.model;
    const inside = boundary === 'system' ? [...layout.states.keys()] : concernsOf(run.model, boundary).states;
    return inside
        .map((i) => ({ state: layout.states[i], factor: content[i][quantity], held: sample.y[i] }))
        .filter(({ factor }) => factor !== 0)
        .map(({ state, factor, held }) => ({ component: state.component, amount: factor * held }));
}
/** Puts like with like, in the order in which each kind is first seen. */
function grouped(items, key) {
    const groups = new Map();
    for (const item of items) {
        const group = groups.get(key(item));
        if (group === undefined)
            groups.set(key(item), [item]);
        else
            group.push(item);
    }
    return [...groups.values()];
}
function linesOf(crossed) {
    const key = (c) => `${c.beyond}|${c.component}|${c.by}|${c.amount >= 0 ? '+' : '-'}`;
    return grouped(crossed, key).map((group) => ({
        name: `${group[0].beyond}: ${group[0].component}`,
        beyond: group[0].beyond,
        component: group[0].component,
        by: group[0].by,
        amount: sum(group.map((crossing) => crossing.amount)),
    }));
}
/**
 * Balance of one conserved quantity over a whole run.
 * @param boundary `system`, or the index of a vessel. The rain tank stands outside: its water comes in
 *   as top-up; what runs over its edge is the series `rain-tank-spilled@system`.
 */
export function budgetOf(run, quantity, boundary) {
    const crossed = crossings(run, quantity, boundary);
    const start = contents(run, quantity, boundary, run.samples[0]);
    const end = contents(run, quantity, boundary, run.samples[run.samples.length - 1]);
    const changes = [...end, ...start.map(({ component, amount }) => ({ component, amount: -amount }))];
    const came = sum(crossed.filter(({ amount }) => !(amount < 0)).map(({ amount }) => amount));
    const went = sum(crossed.filter(({ amount }) => amount < 0).map(({ amount }) => -amount));
    const stored = sum(changes.map(({ amount }) => amount));
    return {
        quantity,
        place: boundary === 'system' ? 'system' : run.model.layout.vessels[boundary],
        in: came,
        out: went,
        stored,
        residual: sum([came, -went, -stored]),
        throughput: sum([came, went, ...start.map(({ amount }) => Math.abs(amount))]),
        lines: linesOf(crossed),
        stores: grouped(changes, ({ component }) => component).map((group) => ({
            component: group[0].component,
            amount: sum(group.map(({ amount }) => amount)),
        })),
    };
}
/** Budgets of every conserved quantity: of the whole system first, then of each vessel in turn. */
export function budgetsOf(run) {
    const boundaries = ['system', ...run.model.layout.vessels.keys()];
    return boundaries.flatMap((boundary) => conserved.map((quantity) => budgetOf(run, quantity, boundary)));
}
/** Residual of a budget as a share of its throughput: 0 where both are 0, infinite where it cannot be told. */
export function relativeResidual(budget) {
    if (budget.residual === 0)
        return 0;
    const share = Math.abs(budget.residual) / budget.throughput;
    return Number.isNaN(share) ? Infinity : share;
}
/**
 * The budget that closes worst, and the `share` of its throughput by which it does not close. Throws RangeError when
 * there is none.
 */
export function worstResidual(budgets) {
    if (budgets.length === 0)
        throw new RangeError('no budgets to compare');
    return budgets
        .map((budget) => ({ budget, share: relativeResidual(budget) }))
        .reduce((worst, next) => (next.share > worst.share ? next : worst));
}
//# sourceMappingURL=budget.js.map
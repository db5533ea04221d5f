import { InputError } from '../base/faults.js';
import { nearest } from '../base/nearest.js';
import { sum } from '../base/sum.js';
import { seriesNames } from './series.js';
import { heldBy, historyOf, START } from './why-history.js';
import { quantitiesOf } from './why-quantities.js';
function quantityOf(run, quantity) {
    const measures = quantitiesOf(run);
    const found = measures.find(({ name }) => name === quantity);
    if (found !== undefined)
        return found;
    const names = measures.map(({ name }) => name);
    if (seriesNames(run).includes(quantity)) {
        const place = quantity.slice(quantity.indexOf('@') + 1);
        const expected = names.filter((name) => name.endsWith(`@${place}`) && !name.includes('-amount@'));
        const problem = 'not a sum of what processes and flows did, so it has no parts';
        throw new InputError([{ got: quantity, problem, expected: `one of ${expected.join(', ')}` }]);
    }
    const near = nearest(quantity, names);
    const fault = { problem: 'no such quantity', got: quantity };
    throw new InputError([near === undefined ? fault : { ...fault, nearest: near }]);
}
/** A day that a person writes is rounded further than the times of a run are, d: wider than `INSTANT`. */
const ROUNDED = 1e-9;
function sampleAt({ run, day }) {
    const found = run.samples.find(({ time }) => Math.abs(time - day) <= ROUNDED);
    if (found !== undefined)
        return found;
    const times = run.samples.map(({ time }) => time);
    const close = times.reduce((best, time) => (Math.abs(time - day) < Math.abs(best - day) ? time : best));
    const expected = `an output time of the run, ${times[0]} to ${times[times.length - 1]} d`;
    throw new InputError([
        {
            got: `${day} d`,
            problem: 'not an output time',
            expected,
            ...(Number.isFinite(day) && { nearest: `${close} d` }),
        },
    ]);
}
const one = { held: 1, history: new Map() };
function sideOf(moment, sample, store) {
    if (store === undefined)
        return one;
    return { held: heldBy(sample, store), history: historyOf(moment.run, sample, store) };
}
/** Change of each cause from one history to the other. */
function changes(from, to) {
    const causes = new Set([...from.keys(), ...to.keys()]);
    return new Map([...causes].map((cause) => [cause, (to.get(cause) ?? 0) - (from.get(cause) ?? 0)]));
}
/**
 * Whether a cause did more or less. Water tells it for a flow; where that is the same to rounding, as for
 * what is no flow, the amount does.
 */
function doing(name, histories) {
    for (const [from, to] of histories) {
        const before = Math.abs(from.get(name) ?? 0);
        const after = Math.abs(to.get(name) ?? 0);
        if (Math.abs(after - before) > 1e-9 * Math.max(before, after))
            return { did: after > before ? 'more' : 'less' };
    }
    return {};
}
/** Value of a measure at both moments and the parts of the difference, in no order. */
function split([from, to], [a, b], [first, second]) {
    const amountA = sideOf(from, a, first.amount);
    const amountB = sideOf(to, b, second.amount);
    const perA = sideOf(from, a, first.per);
    const perB = sideOf(to, b, second.per);
    const byAmount = (1 / perA.held + 1 / perB.held) / 2;
    const byPer = -(amountA.held + amountB.held) / 2 / (perA.held * perB.held);
    const amounts = changes(amountA.history, amountB.history);
    const pers = changes(perA.history, perB.history);
    const histories = [
        [perA.history, perB.history],
        [amountA.history, amountB.history],
    ];
    const parts = [...new Set([...amounts.keys(), ...pers.keys()])].map((name) => ({
        name,
        value: byAmount * (amounts.get(name) ?? 0) + byPer * (pers.get(name) ?? 0),
        ...(name === START || (first.per?.kind === 'size' && name === first.per.name)
            ? {}
            : doing(name, histories)),
    }));
    return { from: amountA.held / perA.held, to: amountB.held / perB.held, parts };
}
/**
 * Why one quantity differs between two moments: of two runs, or of one run at two days. The parts are
 * the processes, flows and actions that made the difference, from the integrated extents and the
 * postings; they sum to it but for rounding (`residual`).
 *
 * An amount A is a sum of what each cause k brought, so its difference is one too. A concentration
 * c = A/V (and any amount per another) is split by the exact identity for finite differences
 *
 *     c2 - c1 = (A2 - A1) (1/V1 + 1/V2)/2  -  (V2 - V1) (A1 + A2)/2 / (V1 V2)
 *
 * where both A2 - A1 and V2 - V1 are sums over causes. So a flow has one part: what it carried and how
 * much its water diluted or (evaporation) concentrated.
 *
 * @param quantity such as `nitrate@sump`, `nitrate@system` (mean of all water), `nitrate-amount@sump`,
 *   `crop-nitrogen@lettuce`; days must be output times
 * @throws InputError for an unknown quantity (with the nearest name), one that is no such sum (such as
 *   pH), a day that is no output time, and one on which the quantity has no value
 */
export function why(quantity, from, to, options = {}) {
    const measures = [quantityOf(from.run, quantity), quantityOf(to.run, quantity)];
    const samples = [sampleAt(from), sampleAt(to)];
    const own = split([from, to], samples, measures);
    for (const [moment, value] of [
        [from, own.from],
        [to, own.to],
    ]) {
        if (Number.isFinite(value))
            continue;
        throw new InputError([{ got: `${quantity} at ${moment.day} d`, problem: 'has no value then' }]);
    }
    const difference = own.to - own.from;
    let parts = own.parts;
    const [first, second] = measures;
    if (options.around === 'system' && first.whole !== undefined && second.whole !== undefined) {
        const mean = split([from, to], samples, [first.whole, second.whole]);
        const place = quantity.slice(quantity.indexOf('@') + 1);
        const apart = own.to - mean.to - (own.from - mean.from);
        parts = [...mean.parts, { name: `${place} against the mean of all water`, value: apart }];
    }
    return {
        quantity,
        unit: first.unit,
        difference,
        from: own.from,
        to: own.to,
        parts: parts
            .filter(({ value }) => value !== 0)
            .sort((p, q) => Math.abs(q.value) - Math.abs(p.value) || (p.name < q.name ? -1 : 1)),
        residual: sum([difference, ...parts.map(({ value }) => -value)]),
    };
}
//# sourceMappingURL=why.js.map
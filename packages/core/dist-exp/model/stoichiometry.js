import { createRandom } from '../base/random.js';
import { drawParameters } from '../library/parameters.js';
import { conserved, contentOf, } from '../processes/components.js';
import { sparseLu } from '../solve/sparse-lu.js';
import { packPattern } from '../solve/sparse-rows.js';
import { drawNumbers } from './own-numbers.js';
import { scopeTo } from './scope.js';
/**
 * Works out the coefficients that a row leaves to conservation: one linear equation for each
 * quantity that a term closes (never more than a handful). Rows are not exchanged: a term must itself hold some
 * of what it closes.
 * @throws RangeError when the equations do not fix the unknowns.
 */
export function closeRow(process, values, content = contentOf) {
    const terms = process
        .stoichiometry(values)
        .map((term) => ({ term, content: content(term.component, values) }));
    const unknown = terms.filter(({ term }) => typeof term.coefficient !== 'number');
    const closes = unknown.map(({ term }) => term.coefficient.closes);
    const equations = sparseLu(packPattern(closes.map(() => [...unknown.keys()])));
    closes.forEach((quantity, row) => {
        unknown.forEach(({ content }, column) => {
            equations.values[equations.place(row, column)] = content[quantity];
        });
    });
    if (!equations.factor())
        throw new RangeError(`${process.id}: ${closes.join(', ')} do not fix the coefficients left open`);
    const found = Float64Array.from(closes, (quantity) => -terms.reduce((sum, { term, content }) => typeof term.coefficient === 'number' ? sum + term.coefficient * content[quantity] : sum, 0));
    equations.solve(found);
    let next = 0;
    return terms.map(({ term, content }) => ({
        ...term,
        content,
        coefficient: typeof term.coefficient === 'number' ? term.coefficient : found[next++],
    }));
}
/** Share of the row's own turnover of a quantity that counts as rounding. */
const ROUNDING = 1e-12;
/** Quantities that a row does not keep: composition x row, against the sum of its absolute parts. */
export function leaksOf(process, terms) {
    return conserved.flatMap((quantity) => {
        const parts = terms.map((term) => term.coefficient * term.content[quantity]);
        const amount = parts.reduce((sum, part) => sum + part, 0);
        const turnover = parts.reduce((sum, part) => sum + Math.abs(part), 0);
        return Math.abs(amount) <= ROUNDING * turnover ? [] : [{ process, quantity, amount }];
    });
}
/**
 * Checks that a process keeps every conserved quantity with each of the given sets of values.
 * @throws RangeError saying what the row makes or destroys.
 */
export function checkClosure(process, sets, content = contentOf) {
    for (const values of sets) {
        const [leak] = leaksOf(process.id, closeRow(process, values, content));
        if (leak !== undefined) {
            const verb = leak.amount > 0 ? 'makes' : 'destroys';
            throw new RangeError(`the row ${leak.process} ${verb} ${Math.abs(leak.amount).toPrecision(4)} of ${leak.quantity} per ${process.unit}; a row must close for ${conserved.join(', ')}`);
        }
    }
}
/** Most sets of given numbers that are remembered. */
const mostChecked = 16;
/**
 * Rows that were found to close, by what decides their draws: how many, and the numbers that the user gave. The draws
 * themselves are always the same, so a row that closed at them closes again.
 */
const checked = new Map();
function closedAt(count, overrides) {
    const name = JSON.stringify([count, overrides]);
    const closed = checked.get(name) ?? new Set();
    checked.delete(name);
    checked.set(name, closed);
    const [oldest] = checked.keys();
    if (checked.size > mostChecked)
        checked.delete(oldest);
    return closed;
}
/**
 * A check that the row of a process closes at so many random draws of the numbers. What was checked when an earlier
 * system was compiled is not reckoned again: a slider compiles the same rows at every move.
 * @param own what a user's own processes need beside: content of their components, and their numbers; these are checked anew
 * @returns the check; it throws RangeError as `checkClosure` does
 */
export function checkAtDraws(count, overrides, own) {
    if (count === 0)
        return () => undefined;
    const closed = own === undefined ? closedAt(count, overrides) : new Set();
    let draws;
    return (process, subject) => {
        const row = `${process.id} ${JSON.stringify(subject)}`;
        if (closed.has(row))
            return;
        if (draws === undefined) {
            const random = createRandom(1);
            draws = Array.from({ length: count }, () => drawNumbers(drawParameters(random, overrides), own?.numbers, random));
        }
        checkClosure(process, draws.map((draw) => scopeTo(draw, subject)), own?.content);
        closed.add(row);
    };
}
//# sourceMappingURL=stoichiometry.js.map
import { keyOf, uniformAt } from '../../base/hashes.js';
import { quantile } from '../../library/distributions.js';
import { createParameters, parametersAt } from '../../library/parameters.js';
import { compileChecked } from '../../model/compile.js';
import { simulate } from '../../run/stepping.js';
import { reusedBuffer } from '../../run/sample-buffer.js';
/** Most tries at a legal draw. */
const mostTries = 1000;
/** Whether a value makes sense for a row: finite, and above 0 where its low end is. */
const legal = (row, value) => Number.isFinite(value) && (row.low <= 0 || value > 0);
function valueOf(row, u) {
    let value = quantile(row, u);
    // The far tail of a normal distribution may fall below 0: another draw then, fixed by the first.
    const key = keyOf(Math.floor(u * 2 ** 53), row.id);
    for (let tries = 0; !legal(row, value) && tries < mostTries; tries++)
        value = quantile(row, uniformAt(key, tries));
    if (!legal(row, value))
        throw new RangeError(`no legal draw of ${row.id} in ${mostTries} tries`);
    return value;
}
/** The values of rows at uniform numbers (0..1), one for each, by id. Throws RangeError where a row has no legal value. */
export function drawnValues(rows, u) {
    return new Map(rows.map((row, i) => [row.id, valueOf(row, u[i])]));
}
/**
 * Runs of one system with numbers of the tables drawn from their ranges. Reading, compiling and running are
 * all done anew with the drawn numbers; only the text is parsed, and closure checked at random draws, once.
 * @param rows what is drawn
 * @returns the run at uniform numbers (0..1), one for each row. It throws InputError where the drawn numbers make no system.
 */
export function openRuns(open, rows, { reuse = false, ...options } = {}) {
    const given = createParameters(open.reading.scenario.overrides);
    const buffer = reuse ? reusedBuffer() : undefined;
    const simulation = { ...options, ...(buffer && { buffer }) };
    return (u) => {
        buffer?.clear();
        const values = drawnValues(rows, u);
        const scenario = open.again(parametersAt(values, given));
        return simulate(compileChecked(scenario, parametersAt(values, given), { closureDraws: 0 }), simulation);
    };
}
//# sourceMappingURL=open-runs.js.map
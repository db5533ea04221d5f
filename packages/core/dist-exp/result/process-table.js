import { conserved } from '../processes/components.js';
import { sum } from '../base/sum.js';
function closure(row) {
    const share = (quantity) => {
        const moved = row.entries.map(({ coefficient, content }) => coefficient * content[quantity]);
        const scale = sum(moved.map(Math.abs));
        return scale === 0 ? 0 : sum(moved) / scale;
    };
    return Object.fromEntries(conserved.map((quantity) => [quantity, share(quantity)]));
}
function entriesOf(row) {
    return row.entries.map(({ component, coefficient, state, place }) => ({
        component,
        ...(state < 0 ? { outside: place } : {}),
        coefficient,
    }));
}
/**
 * The stoichiometric table of a model: each process once, not at each place; a process whose
 * coefficients differ from place to place (species, feed, crop) once for each set. Transport by water is
 * left out: it moves each component one for one.
 */
export function processTable(model) {
    const found = new Map();
    for (const row of model.rows) {
        if (row.process === 'transport')
            continue;
        const key = JSON.stringify([row.process, entriesOf(row)]);
        const same = found.get(key);
        if (same === undefined)
            found.set(key, { row, rows: [row.id] });
        else
            same.rows.push(row.id);
    }
    return [...found.values()].map(({ row, rows }) => ({
        process: row.process,
        unit: row.unit,
        rows,
        entries: entriesOf(row),
        closure: closure(row),
    }));
}
//# sourceMappingURL=process-table.js.map
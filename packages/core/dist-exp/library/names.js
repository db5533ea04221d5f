import { tableRows } from './table-rows.js';
const general = new Set(['constants', 'parameters']);
function subjectsOf(group, rows) {
    const found = new Set();
    for (const { id, table } of rows) {
        const [first, subject] = id.split('.');
        if (first === group && subject !== undefined && !general.has(table))
            found.add(subject);
    }
    return [...found];
}
/** Each group of our own tables is looked up once: they do not change. */
const known = new Map();
/**
 * The subjects of a group in the order of the tables: `names('feed')` is `['grower-32', ...]`. Of our tables, or
 * of the rows given (those of a scenario hold what the user added).
 */
export function names(group, rows) {
    if (rows !== undefined)
        return subjectsOf(group, rows);
    const subjects = known.get(group) ?? subjectsOf(group, tableRows.values());
    known.set(group, subjects);
    return [...subjects];
}
//# sourceMappingURL=names.js.map
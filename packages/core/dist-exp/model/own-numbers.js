import { draw } from '../library/distributions.js';
import { withRows } from '../library/parameters.js';
/** A number of a user's own as a row beside ours. */
function rowOf(number) {
    const { id, value, unit, low = value, high = value, source, mark } = number;
    return {
        ...{ table: 'own', id, value, unit, low, high, source, mark },
        distribution: number.distribution ?? (low < high ? 'uniform' : 'fixed'),
        conditions: number.conditions ?? '',
        page: number.page ?? '-',
        given: 'own numbers',
    };
}
/** The numbers of others, and a user's own beside them. */
export function withNumbers(others, numbers = []) {
    return withRows(new Map(numbers.map((number) => [number.id, rowOf(number)])), others);
}
/** The same, with the user's own drawn at random. */
export function drawNumbers(others, numbers = [], random) {
    const rows = numbers.map(rowOf).map((row) => ({
        ...row,
        value: row.distribution === 'fixed' ? row.value : draw(row, random),
    }));
    return withRows(new Map(rows.map((row) => [row.id, row])), others);
}
//# sourceMappingURL=own-numbers.js.map
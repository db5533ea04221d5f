import { groupProducts, SumsOfProducts } from './sums-of-products.js';
/** Packs rows of (column, value) pairs. */
export function packRows(rows) {
    const pattern = packPattern(rows.map((row) => row.map(([column]) => column)));
    return { ...pattern, value: Float64Array.from(rows.flatMap((row) => row.map(([, value]) => value))) };
}
/** Packs rows of columns. */
export function packPattern(rows) {
    const start = new Int32Array(rows.length + 1);
    rows.forEach((row, index) => {
        start[index + 1] = start[index] + row.length;
    });
    return { start, column: Int32Array.from(rows.flat()) };
}
/** What rates do to states: `apply(rows.value, r, out)` fills out with Sᵀ r. */
export function stoichiometryProduct(rows, states) {
    const entries = Int32Array.from(rows.column, (_, p) => p);
    return new SumsOfProducts(groupProducts(rows.column, entries, rowsOf(rows), states), 'set');
}
/** `apply(values, v, out)` adds R v to out, with the values of R given apart from its places. */
export function addedProduct(pattern) {
    const left = Int32Array.from(pattern.column, (_, p) => p);
    return new SumsOfProducts({ start: pattern.start, left, right: pattern.column }, 'add');
}
/** The row of each entry. */
function rowsOf({ start, column }) {
    const rows = new Int32Array(column.length);
    for (let k = 0; k + 1 < start.length; k++)
        rows.fill(k, start[k], start[k + 1]);
    return rows;
}
//# sourceMappingURL=sparse-rows.js.map
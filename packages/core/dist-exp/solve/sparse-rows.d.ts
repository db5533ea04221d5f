import type { SparsePattern, SparseRows } from './contract.js';
import { SumsOfProducts } from './sums-of-products.js';
/** Packs rows of (column, value) pairs. */
export declare function packRows(rows: readonly (readonly (readonly [number, number])[])[]): SparseRows;
/** Packs rows of columns. */
export declare function packPattern(rows: readonly (readonly number[])[]): SparsePattern;
/** What rates do to states: `apply(rows.value, r, out)` fills out with Sᵀ r. */
export declare function stoichiometryProduct(rows: SparseRows, states: number): SumsOfProducts;
/** `apply(values, v, out)` adds R v to out, with the values of R given apart from its places. */
export declare function addedProduct(pattern: SparsePattern): SumsOfProducts;
//# sourceMappingURL=sparse-rows.d.ts.map
import type { TableRow } from './table-row.js';
type Spread = Pick<TableRow, 'value' | 'low' | 'high' | 'distribution'>;
/**
 * The value of a row below which a share u (0..1) of its draws lies.
 *
 * Normal and lognormal have their median at `value` and their 5 % and 95 % points at `low` and `high`,
 * each side with its own spread. Uniform and triangular (peak at `value`) end hard at `low` and `high`.
 */
export declare function quantile(row: Spread, u: number): number;
/**
 * One draw of a row. A draw that is not finite, or not above 0 where `low` is, is drawn again.
 * Throws RangeError when `random` gives no legal draw in a thousand tries.
 */
export declare function draw(row: TableRow, random: () => number): number;
export {};
//# sourceMappingURL=distributions.d.ts.map
import type { TableRow } from './table-row.js';
/**
 * What a number holds for, in words: as the user said it, else as our tables do. It stands apart from its row, so that a
 * program that shows no sources is not sent it.
 */
export declare function conditionsOf({ id, conditions }: Pick<TableRow, 'id' | 'conditions'>): string;
/** A row with all that is known of it, for who writes it down. */
export declare function wholeRow(row: TableRow): TableRow & Required<Pick<TableRow, 'conditions'>>;
//# sourceMappingURL=conditions.d.ts.map
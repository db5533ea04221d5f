import type { TableRow } from './table-row.js';
/** Every number of the science by its id, in the order of the tables. */
export declare const tableRows: ReadonlyMap<string, TableRow>;
//# sourceMappingURL=table-rows.d.ts.map
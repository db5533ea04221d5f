import type { Parameters } from './parameters.js';
import { type Source } from './sources.js';
import type { TableRow } from './table-row.js';
/** The tables by the names under which they are listed. */
export declare const tableNames: readonly ["fish", "crops", "media", "feeds", "dosing", "waters", "aerators", "lime", "limits", "constants", "parameters", "weather", "log"];
/** Name of a table of the library. */
export type TableName = (typeof tableNames)[number];
/** What a word stands for in the library. */
export type Found = {
    readonly kind: 'number';
    readonly row: TableRow;
} | {
    readonly kind: 'table';
    readonly table: TableName;
    readonly rows: readonly TableRow[];
}
/** Rows whose ids begin alike: a species, a crop, the constants of one process ... */
 | {
    readonly kind: 'part';
    readonly part: string;
    readonly rows: readonly TableRow[];
} | {
    readonly kind: 'sources';
    readonly sources: readonly Source[];
} | {
    readonly kind: 'source';
    readonly source: Source;
    readonly rows: readonly TableRow[];
};
/**
 * What a word stands for: an id, a table, the beginning of ids (`fish.nile-tilapia`, `aob`), the name of a species,
 * crop ... alone, `sources`, or the key of a source.
 * @param parameters whose rows are looked in
 * @throws InputError with the nearest word when it stands for nothing
 */
export declare function lookUp(word: string, parameters: Pick<Parameters, 'rows'>): Found;
//# sourceMappingURL=look-up.d.ts.map
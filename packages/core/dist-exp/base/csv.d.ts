/** The most that is read of a separated text: `characters` in all, `rows` with that of the names, and `columns`. */
export interface CsvLimits {
    readonly characters: number;
    readonly rows: number;
    readonly columns: number;
}
/** Why a text or a table is not read; `count` is how many characters, rows or columns it has. */
export type CsvFlaw = {
    readonly kind: 'not-text' | 'empty';
} | {
    readonly kind: 'too-long' | 'too-many-rows' | 'too-many-columns';
    readonly count: number;
};
/** What is wrong with the size of a table of cells; undefined where nothing is. */
export declare function tableFlaw(rows: readonly (readonly string[])[], most: CsvLimits): CsvFlaw | undefined;
/**
 * Cuts separated text (comma, semicolon or tab, found by the first line) into rows of cells, as a spreadsheet saves and
 * numbers them: blank rows count, save those at the end; spaces around a cell do not.
 * @returns the rows, or why they are not read
 */
export declare function readCsv(text: string, most: CsvLimits): {
    readonly rows: readonly (readonly string[])[];
} | CsvFlaw;
//# sourceMappingURL=csv.d.ts.map
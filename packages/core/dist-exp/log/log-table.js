import { readCsv, tableFlaw } from '../base/csv.js';
import { InputError } from '../base/faults.js';
/** Longest text read, characters; most rows and columns. */
const most = { characters: 20_000_000, rows: 100_000, columns: 200 };
function faultOf(flaw, file) {
    const fault = (problem, expected, got) => new InputError([{ file, problem, expected, ...(got === undefined ? {} : { got: String(got) }) }]);
    switch (flaw.kind) {
        case 'not-text':
            return fault('not text', 'a CSV file, or a spreadsheet with the ending .xlsx');
        case 'too-long':
            return fault('too long', `at most ${most.characters} characters`);
        case 'empty':
            return fault('empty', 'a row of names, then one row a day');
        case 'too-many-rows':
            return fault('too many rows', `at most ${most.rows}`, flaw.count);
        case 'too-many-columns':
            return fault('too many columns', `at most ${most.columns}`, flaw.count);
    }
}
/**
 * Parses separated text (comma, semicolon or tab, found by the first line), as a spreadsheet saves it. Rows are
 * numbered as a spreadsheet numbers them.
 * @throws InputError where the text is no table: binary, empty, or beyond all size
 */
export function csvTable(text, file) {
    const read = readCsv(text, most);
    if ('kind' in read)
        throw faultOf(read, file);
    return { file, rows: read.rows };
}
/**
 * A table of cells that were read elsewhere, such as from a spreadsheet.
 * @throws InputError where it is empty or beyond all size
 */
export function logTable(rows, file, oddities = []) {
    const flaw = tableFlaw(rows, most);
    if (flaw !== undefined)
        throw faultOf(flaw, file);
    return { file, rows, oddities };
}
//# sourceMappingURL=log-table.js.map
import { InputError } from '../base/faults.js';
/** Cells up to the last that holds something: what a spreadsheet writes behind them says nothing. */
const filledCells = (cells) => cells.reduce((filled, cell, place) => (cell === '' ? filled : place + 1), 0);
/**
 * The rows below the header that have not as many cells as it has, blank rows left out.
 * @param header row of the header, 1-based
 */
export function raggedRows(table, header) {
    const names = table.rows[header - 1]?.length ?? 0;
    return table.rows.slice(header).flatMap((cells, index) => {
        const filled = filledCells(cells);
        const row = header + index + 1;
        if (filled > names)
            return [{ row, cells: filled, long: true }];
        return filled > 0 && cells.length < names ? [{ row, cells: cells.length, long: false }] : [];
    });
}
/**
 * Refuses a log in which most rows are ragged: a comma that was meant as a decimal sign parts cells, and what stands under
 * a name is then of another.
 * @param ragged the rows that put the reading of the others in doubt
 * @throws InputError
 */
export function refuseRagged(table, header, ragged) {
    const filled = table.rows.slice(header).filter((cells) => filledCells(cells) > 0).length;
    if (ragged.length * 2 <= filled)
        return;
    const names = table.rows[header - 1]?.length ?? 0;
    const [first] = ragged;
    throw new InputError([
        {
            file: table.file,
            line: first.row,
            problem: `${ragged.length} of ${filled} rows have not as many cells as the header`,
            got: `${first.cells} cells for ${names} names`,
            expected: 'a cell for each name; a decimal comma stands in quotes ("0,25"), or the columns are parted by semicolons or tabs',
        },
    ]);
}
//# sourceMappingURL=ragged.js.map
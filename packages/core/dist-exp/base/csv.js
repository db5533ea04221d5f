import { dsvFormat } from 'd3-dsv';
/** The separator that stands most often in the first line of a text: comma, semicolon or tab. */
function separatorOf(text) {
    const [first = ''] = text.split(/\r?\n/, 1);
    const counts = [',', ';', '\t'].map((mark) => ({ mark, count: first.split(mark).length }));
    return counts.reduce((best, each) => (each.count > best.count ? each : best)).mark;
}
/** What is wrong with the size of a table of cells; undefined where nothing is. */
export function tableFlaw(rows, most) {
    if (!rows.some((cells) => cells.some((cell) => cell !== '')))
        return { kind: 'empty' };
    if (rows.length > most.rows)
        return { kind: 'too-many-rows', count: rows.length };
    const widest = rows.reduce((width, cells) => Math.max(width, cells.length), 0);
    return widest > most.columns ? { kind: 'too-many-columns', count: widest } : undefined;
}
/**
 * Cuts separated text (comma, semicolon or tab, found by the first line) into rows of cells, as a spreadsheet saves and
 * numbers them: blank rows count, save those at the end; spaces around a cell do not.
 * @returns the rows, or why they are not read
 */
export function readCsv(text, most) {
    if (text.includes('\0'))
        return { kind: 'not-text' };
    if (text.length > most.characters)
        return { kind: 'too-long', count: text.length };
    const plain = text.replace(/^\uFEFF/, '').trimEnd();
    const rows = dsvFormat(separatorOf(plain)).parseRows(plain, (cells) => cells.map((cell) => cell.trim()));
    return tableFlaw(rows, most) ?? { rows };
}
//# sourceMappingURL=csv.js.map
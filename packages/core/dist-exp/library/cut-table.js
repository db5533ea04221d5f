import { nearest } from '../base/nearest.js';
/** The columns of a table, ours or the user's. */
const tableColumns = [
    'id',
    'value',
    'unit',
    'low',
    'high',
    'distribution',
    'conditions',
    'source',
    'page',
    'mark',
];
/** Most rows of one table. */
const mostRows = 5000;
/** Cells of a line with the place of each: spaces around a cell do not count. */
function cutLine(line) {
    let at = 0;
    return line.split('\t').map((raw) => {
        const column = at + 1 + (raw.length - raw.trimStart().length);
        at += raw.length + 1;
        return { text: raw.trim(), column };
    });
}
function* headerFaults(header) {
    const names = header.map(({ text }) => text);
    const missing = tableColumns.filter((name) => !names.includes(name));
    const expected = `the columns ${tableColumns.join(', ')}, separated by tabs`;
    const strange = header.filter(({ text }) => !tableColumns.includes(text));
    for (const { text, column } of strange) {
        const near = nearest(text, missing);
        yield {
            column,
            problem: 'unknown column',
            got: JSON.stringify(text.slice(0, 60)),
            ...(near === undefined ? { expected } : { nearest: near }),
        };
    }
    if (missing.length > 0 && strange.length === 0)
        yield { column: 1, problem: `missing columns: ${missing.join(', ')}`, expected };
    const twice = header.find(({ text }, index) => names.indexOf(text) !== index && strange.length === 0);
    if (twice !== undefined)
        yield { column: twice.column, problem: 'column given twice', got: twice.text };
}
/**
 * Cuts the text of a table into lines and cells, each with its place in the line, which a CSV reader would lose; quotes
 * mean nothing. The first line names the columns, in any order; empty lines and
 * lines that begin with # are passed over. Never throws.
 */
export function cutTable(text, file) {
    const written = text
        .replace(/^\uFEFF/, '')
        .split(/\r?\n/)
        .map((line, index) => ({ line, number: index + 1 }))
        .filter(({ line }) => line.trim() !== '' && !line.startsWith('#'));
    const [first, ...rest] = written;
    if (first === undefined) {
        const expected = `a first line with ${tableColumns.join(', ')}`;
        return { lines: [], faults: [{ file, line: 1, column: 1, problem: 'an empty table', expected }] };
    }
    const header = cutLine(first.line);
    const faults = [...headerFaults(header)].map((fault) => ({ file, line: first.number, ...fault }));
    if (faults.length > 0)
        return { lines: [], faults };
    if (rest.length > mostRows) {
        const [got, expected] = [String(rest.length), `at most ${mostRows}`];
        return { lines: [], faults: [{ file, problem: 'too many rows', got, expected }] };
    }
    const lines = rest.flatMap(({ line, number }) => {
        const cells = cutLine(line);
        if (cells.length !== header.length) {
            const expected = `${header.length}, separated by tabs`;
            const problem = 'wrong number of cells';
            faults.push({ file, line: number, column: 1, problem, got: String(cells.length), expected });
            return [];
        }
        const at = (name) => {
            const cell = cells[header.findIndex((column) => column.text === name)];
            return { name, ...cell };
        };
        return [
            { number, cells: Object.fromEntries(tableColumns.map((name) => [name, at(name)])) },
        ];
    });
    return { lines, faults };
}
//# sourceMappingURL=cut-table.js.map
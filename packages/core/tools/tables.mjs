/**
 * Turns src/library/data/*.tsv into modules, so that core needs no file: what every run reads, what checks and draws read
 * beside that, where numbers came from, and what they hold for. `npm run generate` writes them.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const library = join(dirname(fileURLToPath(import.meta.url)), '..', 'src', 'library');

const columns = 'id value unit low high distribution conditions source page mark'.split(' ');
const sourceColumns = 'key citation year doi note'.split(' ');
const correlationColumns = 'a b rank conditions source page mark'.split(' ');
const numeric = new Set(['value', 'low', 'high', 'rank']);

/** Lines of one TSV as arrays of cells; throws on a wrong header, cell count, blank or non-number. */
function readTable(file, header) {
  const lines = readFileSync(join(library, 'data', file), 'utf8').split('\n');
  if (lines.pop() !== '') throw new Error(`${file}: the last line must end with a line feed`);
  const [first, ...rest] = lines.map((line) => line.split('\t'));
  if (first.join() !== header.join()) throw new Error(`${file}:1: header must be ${header.join(', ')}`);
  return rest.map((cells, index) => {
    const place = `${file}:${index + 2}`;
    if (cells.length !== header.length) {
      throw new Error(`${place}: ${cells.length} cells, expected ${header.length}`);
    }
    return cells.map((cell, at) => {
      if (cell === '' || cell.trim() !== cell) throw new Error(`${place}: ${header[at]} is blank or padded`);
      if (!numeric.has(header[at])) return cell;
      if (!Number.isFinite(Number(cell))) throw new Error(`${place}: ${header[at]} is no number: ${cell}`);
      return Number(cell);
    });
  });
}

const quote = (cell) =>
  typeof cell === 'number' || cell === null
    ? String(cell)
    : `'${cell.replace(/\\/g, '\\\\').replace(/'/g, "\\'")}'`;
const literal = (cells) => `  [${cells.map(quote).join(', ')}],`;

const tableFiles = () =>
  readdirSync(join(library, 'data'))
    .filter((file) => file.endsWith('.tsv') && !['sources.tsv', 'correlations.tsv'].includes(file))
    .sort();

/** Every id, and every subject (`fish.nile-tilapia`) of the tables that have subjects. */
export function ids() {
  const all = new Set();
  const subjects = new Set();
  for (const file of tableFiles()) {
    for (const [id] of readTable(file, columns)) {
      all.add(id);
      if (file !== 'limits.tsv' && !generalTables.includes(file.slice(0, -'.tsv'.length)))
        subjects.add(id.split('.').slice(0, 2).join('.'));
    }
  }
  return { all, subjects };
}

/** Tables kept in a file of their own, so that rows drawn before them keep their draws. */
const parts = { salads: 'crops', garden: 'crops' };

/** Rows with short ids: one that has the words of the row before it, but for its last, is a dot and that last. */
const shortened = (rows) =>
  rows.map(([id, ...rest], index) => {
    const end = id.lastIndexOf('.') + 1;
    return index > 0 && rows[index - 1][0].replace(/[^.]*$/, '') === id.slice(0, end)
      ? [id.slice(end - 1), ...rest]
      : [id, ...rest];
  });

/** Short ids of which a subject with the same names as the one before it is told by its words and a dot alone. */
function withoutEqualNames(short) {
  const subjects = [];
  for (const id of short) {
    if (id.startsWith('.')) subjects.at(-1).push(id);
    else subjects.push([id]);
  }
  const namesOf = ([first, ...others]) => [first.slice(first.lastIndexOf('.')), ...others].join();
  return subjects.flatMap((subject, index) =>
    index > 0 && namesOf(subject) === namesOf(subjects[index - 1])
      ? [subject[0].slice(0, subject[0].lastIndexOf('.') + 1)]
      : subject,
  );
}

/** Groups of subjects, as `SubjectGroup` has them. */
const groups = 'fish crop feed media dose water aerator lime limit'.split(' ');

/** Columns in which a word that stands in the row before too is left blank. */
const repeating = new Set(['table', 'distribution', 'source', 'page', 'mark']);

/** The words of a column, file by file, blank where they are those of the row before. */
function withoutRepeats(files) {
  let before;
  return files.map((cells) =>
    cells.map((cell) => {
      const same = cell === before;
      before = cell;
      return same ? '' : cell;
    }),
  );
}

/** Low and high of each row, null where it is the value. */
const endsOf = (rows) =>
  rows.flatMap((cells) => {
    const [value, low, high] = ['value', 'low', 'high'].map((name) => cells[columns.indexOf(name)]);
    return [low === value ? null : low, high === value ? null : high];
  });

/** Numbers whose range a run itself reads: between its ends lies what holds fish of a measured feed conversion. */
const rangeRead = /^fish\.[^.]+\.maintenance$/;

/** Tables whose ids are no subjects, whatever their form. */
const generalTables = ['constants', 'parameters', 'log', 'weather'];

/** One column of the tables, a line for each file. */
const column = (name, files) => [
  `  ${name}: [`,
  ...files.map((cells) => `    ${cells.map(quote).join(', ')},`),
  '  ],',
];

const made =
  '// Generated from data/*.tsv by tools/tables.mjs. Do not edit: change the tables, then npm run generate.';

const readFiles = () =>
  tableFiles().map((file) => {
    const name = file.slice(0, -'.tsv'.length);
    return { table: parts[name] ?? name, rows: readTable(file, columns) };
  });

/** The columns named, each with its cells file by file as `cellsOf` gives them. */
const columnsOf = (files, names) =>
  names.flatMap((name) => {
    const at = columns.indexOf(name);
    const cells = files.map(({ table, rows }) => rows.map((row) => (name === 'table' ? table : row[at])));
    return column(name, repeating.has(name) ? withoutRepeats(cells) : cells);
  });

/** The text of the generated module of what every run reads. Same tables, same text. */
export function numbersModule() {
  const files = readFiles();
  const rows = files.flatMap((file) => file.rows);
  const [low, high] = [columns.indexOf('low'), columns.indexOf('high')];
  const general = files
    .filter(({ table }) => generalTables.includes(table))
    .flatMap((file) => file.rows.map(([id]) => id.split('.')))
    .filter((words) => words.length === 3 && groups.includes(words[0]))
    .map((words) => words.slice(0, 2).join('.'));
  return [
    made,
    "import type { NumberColumns } from './table-row.js';",
    '',
    '/** The numbers by column: like beside like takes less to send, and so do ids that go on from the one before them. */',
    'export const numberColumns: NumberColumns = {',
    ...column(
      'id',
      files.map((file) => withoutEqualNames(shortened(file.rows).map(([id]) => id))),
    ),
    ...columnsOf(files, ['value']),
    '  ranges: {',
    ...rows
      .filter(([id]) => rangeRead.test(id))
      .map((row) => `    '${row[0]}': [${row[low]}, ${row[high]}],`),
    '  },',
    `  general: [${[...new Set(general)].map(quote).join(', ')}],`,
    '};',
    '',
  ].join('\n');
}

/** The text of the generated module of what checks and draws read. Same tables, same text. */
export function tablesModule() {
  const files = readFiles();
  const correlations = readTable('correlations.tsv', correlationColumns).map(literal);
  return [
    made,
    "import type { CorrelationCells, RangeColumns } from './table-row.js';",
    '',
    '/** What is known of the numbers beside their values, in the order of the tables. */',
    'export const rangeColumns: RangeColumns = {',
    ...columnsOf(files, ['table', 'unit', 'distribution']),
    ...column(
      'ends',
      files.map((file) => endsOf(file.rows)),
    ),
    '};',
    '',
    `/** One row a correlation: ${correlationColumns.join(', ')}. */`,
    'export const correlationCells: readonly CorrelationCells[] = [',
    ...correlations,
    '];',
    '',
  ].join('\n');
}

/** The text of the generated module of where numbers came from. Same tables, same text. */
export function originsModule() {
  return [
    made,
    "import type { OriginColumns, SourceCells } from './table-row.js';",
    '',
    '/** Where each number came from, in the order of the tables. */',
    'export const originColumns: OriginColumns = {',
    ...columnsOf(readFiles(), ['source', 'page', 'mark']),
    '};',
    '',
    `/** One row a source: ${sourceColumns.join(', ')}. */`,
    'export const sourceCells: readonly SourceCells[] = [',
    ...readTable('sources.tsv', sourceColumns).map(literal),
    '];',
    '',
  ].join('\n');
}

/** The text of the generated module of what numbers hold for, in words. Same tables, same text. */
export function conditionsModule() {
  const [at, files] = [columns.indexOf('conditions'), readFiles()];
  return [
    made,
    '',
    '/** What each number holds for, in the order of the tables: the longest of all that is known of it. */',
    'export const conditionCells: readonly string[] = [',
    ...files.map(({ rows }) => `  ${rows.map((cells) => quote(cells[at])).join(', ')},`),
    '];',
    '',
  ].join('\n');
}

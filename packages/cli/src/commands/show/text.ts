import { type Found, marks, type Source, type TableName, type TableRow, type Use } from '@leat/core';
import { columns, wrap } from '../../terminal/columns.js';

/** One column of a list of subjects: its heading, and the properties it is made of, `low-high` where there are two. */
type Column = readonly [heading: string, ...properties: string[]];

/** What a list of subjects shows of each; tables without an entry are listed number by number. */
const shownOf: Partial<Record<TableName, readonly Column[]>> = {
  fish: [
    ['feeds degC', 'temperature-low', 'temperature-high'],
    ['best degC', 'temperature-optimum-low', 'temperature-optimum-high'],
    ['eats g/g/d', 'appetite'],
    ['TGC x1000', 'thermal-growth'],
    ['body N', 'body-nitrogen'],
    ['NH3-N max', 'limit-ammonia'],
    ['NO2-N max', 'limit-nitrite'],
    ['O2 min', 'limit-oxygen'],
  ],
  crops: [
    ['days', 'days'],
    ['per m2', 'density'],
    ['dry share', 'dry-matter'],
    ['N at 1 t/ha', 'nitrogen-a'],
    ['N g/m2/d', 'nitrogen-uptake'],
    ['Kc', 'kc-full'],
    ['pH', 'ph-low', 'ph-high'],
    ['Cl max', 'chloride-high'],
    ['ECe dS/m', 'salt-threshold'],
  ],
  media: [
    ['surface m2/m3', 'surface'],
    ['porosity', 'porosity'],
  ],
  feeds: [
    ['protein', 'protein'],
    ['g COD/g', 'demand'],
  ],
  dosing: [
    ['alkalinity eq/g', 'alkalinity'],
    ['carbon mol/g', 'carbon'],
    ['chloride g/g', 'chloride'],
    ['NH4-N g/g', 'tan'],
    ['NO3-N g/g', 'nitrate'],
    ['calcium mol/g', 'calcium'],
  ],
  aerators: [['oxygen share', 'oxygen-share']],
  lime: [['area m2/g', 'area']],
  waters: [
    ['TAN', 'tan'],
    ['NO2-N', 'nitrite'],
    ['NO3-N', 'nitrate'],
    ['alkalinity eq/m3', 'alkalinity'],
    ['pH', 'ph'],
    ['O2', 'oxygen'],
    ['Cl', 'chloride'],
    ['Ca mol/m3', 'calcium'],
  ],
};

/** A table of subjects, one line each; undefined for a table that has none. Concentrations are mg/L. */
function subjectLines(table: TableName, rows: readonly TableRow[]): readonly string[] | undefined {
  const shown = shownOf[table];
  if (shown === undefined) return undefined;
  const values = new Map(rows.map(({ id, value }) => [id, value]));
  const subjects = [...new Set(rows.map(({ id }) => id.split('.').slice(0, 2).join('.')))];
  const body = subjects.map((subject) => [
    subject.slice(subject.indexOf('.') + 1),
    ...shown.map(([, ...properties]) =>
      properties.map((property) => String(values.get(`${subject}.${property}`) ?? '-')).join('-'),
    ),
  ]);
  return columns(
    [[table, ...shown.map(([heading]) => heading)], ...body],
    ['left', ...shown.map(() => 'right' as const)],
  );
}

/** A number with all that is known of it. */
export interface ShownNumber {
  readonly row: TableRow;
  /** Our entry of its source; null where the user named a source of their own. */
  readonly source: Source | null;
  readonly uses: readonly Use[];
  /** Our row, where the user put another in its place. */
  readonly library?: TableRow;
}

const width = 98;

/** How a number is drawn, in words. */
const spreads: Readonly<Record<TableRow['distribution'], string>> = {
  fixed: 'fixed: never drawn',
  uniform: 'uniform: anywhere between, never outside',
  triangular: 'triangular: most often near the value, never outside',
  normal: 'normal: one draw in ten falls outside',
  lognormal: 'lognormal: one draw in ten falls outside',
};

function sourceText(source: Source): string {
  const year = source.year === 'none' ? 'no year' : source.year;
  const doi = source.doi === 'none' ? 'no DOI recorded' : `doi:${source.doi}`;
  const note = source.note === '-' ? '' : `. ${source.note}`;
  return `${source.citation} (${year}; ${doi})${note}`;
}

function useText({ kind, name, title }: Use): string {
  return kind === 'process' ? `process ${name}: ${title ?? ''}` : name;
}

/** A label and what it says, lines after the first under the text. */
function labelled(label: string, text: string): readonly string[] {
  return wrap(`  ${label.padEnd(12)}${text}`, width, ' '.repeat(14));
}

function numberLines({ row, source, uses, library }: ShownNumber): readonly string[] {
  const range = row.low === row.high ? 'none' : `${row.low} .. ${row.high} ${row.unit}`;
  const whence = source === null ? row.source : `${row.source}: ${sourceText(source)}`;
  return [
    row.id,
    ...labelled('value', `${row.value} ${row.unit}`),
    ...labelled('range', `${range} (${spreads[row.distribution]})`),
    ...labelled('conditions', row.conditions),
    ...labelled('source', whence),
    ...labelled('page', row.page === '-' ? 'not recorded' : row.page),
    ...labelled('mark', `${row.mark}: ${marks[row.mark]}`),
    ...(row.given === undefined ? [] : labelled('given in', row.given)),
    ...(library === undefined
      ? []
      : labelled('in place of', `${library.value} ${library.unit} (${library.low} .. ${library.high})`)),
    ...(uses.length === 0
      ? labelled('used by', 'not used by the model; kept for reading')
      : uses.flatMap((use, index) => labelled(index === 0 ? 'used by' : '', useText(use)))),
  ];
}

function rowLines(numbers: readonly ShownNumber[]): readonly string[] {
  const body = numbers.map(({ row, uses }) => [
    row.id,
    String(row.value),
    row.unit,
    row.low === row.high ? '' : `${row.low} .. ${row.high}`,
    row.mark,
    row.given ?? row.source,
    uses.length === 0 ? 'not used by the model' : '',
  ]);
  return columns(
    [['id', 'value', 'unit', 'range', 'mark', 'source', ''], ...body],
    ['left', 'right', 'left', 'left', 'left', 'left', 'left'],
  );
}

/** Marks that stand in a list, in words. */
function legend(numbers: readonly ShownNumber[]): string {
  const used = (Object.keys(marks) as (keyof typeof marks)[]).filter((mark) =>
    numbers.some(({ row }) => row.mark === mark),
  );
  return used.map((mark) => `${mark} ${marks[mark]}`).join('; ');
}

/** What was found in the library, in words: a number in full, or a list with one line each. */
export function foundLines(found: Found, shown: (row: TableRow) => ShownNumber): readonly string[] {
  switch (found.kind) {
    case 'number':
      return numberLines(shown(found.row));
    case 'sources':
      return found.sources.flatMap((source) => wrap(`${source.key}: ${sourceText(source)}`, width, '  '));
    case 'source':
      return [
        ...wrap(`${found.source.key}: ${sourceText(found.source)}`, width, '  '),
        '',
        ...rowLines(found.rows.map(shown)),
      ];
    case 'table': {
      const subjects = subjectLines(found.table, found.rows);
      if (subjects !== undefined) return subjects;
      break;
    }
    case 'part':
      break;
  }
  const numbers = found.rows.map(shown);
  return [...rowLines(numbers), '', ...wrap(legend(numbers), width)];
}

import { InputError } from '../base/faults.js';
import { nearestSubject } from './other-names.js';
import type { Parameters } from './parameters.js';
import { rowsOf } from './rows-in-use.js';
import { sourceList, type Source } from './sources.js';
import type { TableRow } from './table-row.js';

/** The tables by the names under which they are listed. */
export const tableNames = /* @__PURE__ */ Object.freeze([
  'fish',
  'crops',
  'media',
  'feeds',
  'dosing',
  'waters',
  'aerators',
  'lime',
  'limits',
  'constants',
  'parameters',
  'weather',
  'log',
] as const);

/** Name of a table of the library. */
export type TableName = (typeof tableNames)[number];

/** What a word stands for in the library. */
export type Found =
  | { readonly kind: 'number'; readonly row: TableRow }
  | { readonly kind: 'table'; readonly table: TableName; readonly rows: readonly TableRow[] }
  /** Rows whose ids begin alike: a species, a crop, the constants of one process ... */
  | { readonly kind: 'part'; readonly part: string; readonly rows: readonly TableRow[] }
  | { readonly kind: 'sources'; readonly sources: readonly Source[] }
  | { readonly kind: 'source'; readonly source: Source; readonly rows: readonly TableRow[] };

/** Tables by the other names that a person may try. */
const aliases: Readonly<Record<string, TableName>> = {
  crop: 'crops',
  medium: 'media',
  feed: 'feeds',
  dose: 'dosing',
  water: 'waters',
  aerator: 'aerators',
  device: 'aerators',
  limestone: 'lime',
  limit: 'limits',
};

const isTable = (word: string): word is TableName => (tableNames as readonly string[]).includes(word);

/** Every beginning of an id that ends before a dot: `fish.nile-tilapia` and `fish` of a row of a fish. */
function beginnings(id: string): readonly string[] {
  const steps = id.split('.');
  return steps.slice(1).map((_, index) => steps.slice(0, index + 1).join('.'));
}

/** What may be asked for, for suggestions. */
function everyWord(rows: readonly TableRow[]): readonly string[] {
  const parts = rows.flatMap(({ id }) => [id, ...beginnings(id)]);
  const subjects = rows.filter(({ id }) => id.split('.').length > 2).map(({ id }) => id.split('.')[1]);
  const keys = sourceList.map(({ key }) => key);
  return [...new Set([...tableNames, 'sources', ...subjects, ...parts, ...keys])];
}

/**
 * What a word stands for: an id, a table, the beginning of ids (`fish.nile-tilapia`, `aob`), the name of a species,
 * crop ... alone, `sources`, or the key of a source.
 * @param parameters whose rows are looked in
 * @throws InputError with the nearest word when it stands for nothing
 */
export function lookUp(word: string, parameters: Pick<Parameters, 'ids' | 'number'>): Found {
  const rows = [...rowsOf(parameters)];
  if (word === 'sources') return { kind: 'sources', sources: sourceList };
  const row = rows.find(({ id }) => id === word);
  if (row !== undefined) return { kind: 'number', row };
  const table = isTable(word) ? word : Object.hasOwn(aliases, word) ? aliases[word] : undefined;
  if (table !== undefined) return { kind: 'table', table, rows: rows.filter((each) => each.table === table) };
  const part = rows.filter(({ id }) => id.startsWith(`${word}.`));
  if (part.length > 0) return { kind: 'part', part: word, rows: part };
  const subject = rows.filter(({ id }) => id.split('.').length > 2 && id.split('.')[1] === word);
  if (subject.length > 0) return { kind: 'part', part: word, rows: subject };
  const source = sourceList.find(({ key }) => key === word);
  if (source !== undefined)
    return { kind: 'source', source, rows: rows.filter((each) => each.source === word) };
  const near = nearestSubject(word, everyWord(rows));
  throw new InputError([
    {
      got: word,
      problem: 'nothing of this name in the library',
      ...(near === undefined
        ? { expected: `an id, a source, or one of ${[...tableNames, 'sources'].join(', ')}` }
        : { nearest: near }),
    },
  ]);
}

import {
  createParameters,
  lookUp,
  numberUses,
  readOwnTables,
  rowOf,
  rowsOf,
  sourceList,
  tableNames,
  type Found,
  type Parameters,
  type TableRow,
} from '@leat/core';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { FileError } from '../../files/read.js';
import { openScenario } from '../shared/referenced-files.js';
import { readText } from '../../files/read.js';
import { columns, linesText } from '../../terminal/columns.js';
import { foundLines, type ShownNumber } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { savedDocument } from '../../files/saved-document.js';

/** What `leat show` was asked. */
export interface ShowOptions {
  /** A scenario in which the numbers stand. */
  readonly in?: string;
  readonly set: readonly string[];
  readonly tables: readonly string[];
  readonly allowPath: readonly string[];
  readonly fit?: string;
  readonly json?: boolean;
}

/** The numbers in use: ours, with the tables of the user, or all that a scenario gives anew. */
function parametersFor(options: ShowOptions, streams: Streams): Parameters {
  if (options.in === undefined) {
    if (options.set.length > 0) throw new FileError('--set: needs a scenario: --in names it');
    if (options.fit !== undefined) throw new FileError('--fit: needs a scenario: --in names it');
    const { overrides, notes } = readOwnTables(options.tables, (path) => readText(path));
    streams.note(linesText(notes));
    return createParameters(overrides);
  }
  const { scenario, notes } = openScenario(options.in, options);
  const parameters = createParameters(scenario.overrides);
  streams.note(linesText([...notes, ...parameters.warnings]));
  return parameters;
}

function documentOf(found: Found, shown: (row: TableRow) => ShownNumber): object {
  switch (found.kind) {
    case 'number':
      return { kind: 'number', ...shown(found.row) };
    case 'sources':
      return found;
    default:
      return { ...found, rows: found.rows.map(shown) };
  }
}

/**
 * `leat show [WHAT]`: a number of the library with all that is known of it and what reads it, a species, crop ... ,
 * a table, or the bibliography; without a word, what there is. Throws InputError with the nearest word.
 */
export function showCommand(what: string | undefined, options: ShowOptions, streams: Streams): ExitCode {
  const parameters = parametersFor(options, streams);
  const rows = [...rowsOf(parameters)];
  if (what === undefined) {
    const counts = tableNames.map((table) => ({
      table,
      numbers: rows.filter((row) => row.table === table).length,
    }));
    const lines = [
      ...columns(
        counts.map(({ table, numbers }) => [table, `${numbers} numbers`]),
        ['left', 'right'],
      ),
      ...columns([['sources', `${sourceList.length} sources`]], ['left', 'right']),
      'leat show fish lists one, leat show nile-tilapia one of it, leat show fish.nile-tilapia.mortality one number.',
    ];
    streams.result(
      options.json === true
        ? savedDocument('leat-numbers', { kind: 'tables', tables: counts })
        : linesText(lines),
    );
    return exit.done;
  }
  const ours = createParameters();
  const uses = numberUses();
  const shown = (row: TableRow): ShownNumber => {
    const source = sourceList.find(({ key }) => key === row.source) ?? null;
    const library = row.given === undefined || !ours.has(row.id) ? undefined : rowOf(ours, row.id);
    return {
      row,
      source,
      uses: uses(row.id),
      ...(library && { library }),
    };
  };
  const found = lookUp(what, parameters);
  streams.result(
    options.json === true
      ? savedDocument('leat-numbers', documentOf(found, shown))
      : linesText(foundLines(found, shown)),
  );
  return exit.done;
}

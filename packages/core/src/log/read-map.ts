import * as z from 'zod';
import { InputError, type Fault } from '../base/faults.js';
import { readTree } from '../scenario/file/read-tree.js';
import { Reader } from '../scenario/file/reader.js';
import { choice, count, positive, section, word } from '../scenario/file/values.js';
import { nearest } from '../base/nearest.js';
import { convert } from '../base/units.js';
import { calendarDays } from '../base/calendar.js';
import { wordMeanings } from './action-words.js';
import type { ColumnUse, InstrumentChange, LogMap } from './log-map.js';
import type { LogTable } from './log-table.js';
import { dimensionOf, measurables } from '../scenario/measurables.js';

const steps = z
  .array(z.number())
  .min(2)
  .refine((values) => values.every((value, i) => i === 0 || value > values[i - 1]), {
    error: 'steps must rise, such as [0, 0.25, 0.5, 1]',
  });

const readingsSchema = section(
  {
    reads: choice('what the readings are of', measurables),
    in: word('vessel whose water is tested'),
    unit: word('unit of the numbers, such as mg N/L; not for pH').optional(),
    steps: steps.optional(),
    resolution: z.number().positive().optional(),
    instrument: word('name of the kit or meter, where a quantity is read by more than one').optional(),
    changes: z
      .array(
        section(
          {
            from: word('first date of the other kit, such as 2026-05-01'),
            unit: word('unit of its numbers; default: as before').optional(),
            steps: steps.optional(),
            resolution: z.number().positive().optional(),
            instrument: word('name of the other kit or meter; default: its date').optional(),
          },
          'another kit from a date on',
        ),
      )
      .optional(),
  },
  'a column of readings',
);
const actionsSchema = section(
  {
    'acts-on': word('vessel that it is done to'),
    water: word('water that comes in at a change').optional(),
    fish: word('cohort that is lost, stocked or harvested').optional(),
    pump: word('pump that stops').optional(),
    what: word('what the column is of, where its cells are bare amounts, such as baking soda').optional(),
    unit: word('unit of bare numbers, such as g or %').optional(),
  },
  'a column of what was done',
);
const feedSchema = section(
  { feed: word('cohort that is fed, or all'), unit: word('unit of mass, or one of the measures') },
  'a column of feed',
);

/** The version of the form of a map. */
const formVersion = 1;

const top = section(
  {
    version: z.literal(formVersion).optional(),
    header: count('row of the header; default 1', 1, 1000).optional(),
    date: section(
      {
        column: word('name of the column of dates'),
        time: word('name of the column of the time of day').optional(),
        order: choice('order of dates in figures', ['day-month-year', 'month-day-year']).optional(),
      },
      'the column of dates',
    ),
    columns: z.record(z.string(), z.unknown()),
    sheet: word('name of the sheet of a spreadsheet; default: the first').optional(),
    measures: z.record(z.string(), positive('mass', 'mass of one measure of feed')).optional(),
    volumes: z.record(z.string(), positive('volume', 'volume of one measure of water')).optional(),
    words: z
      .record(
        z.string(),
        choice('product of the library, or kind of action', [...wordMeanings()] as [string, ...string[]]),
      )
      .optional(),
    actions: z.array(z.unknown()).optional(),
  },
  'how the columns of a log are read',
);

/** What a column of readings may be written in: '' for pH. */
function unitFault(
  reads: (typeof measurables)[number],
  unit: string | undefined,
): Partial<Fault> | undefined {
  const dimension = dimensionOf[reads];
  if (dimension === undefined) {
    return unit === undefined || unit === '' || unit === 'pH'
      ? undefined
      : { problem: 'pH has no unit', got: unit };
  }
  if (unit === undefined) return { problem: 'missing', expected: `the unit of ${reads}` };
  const answer = convert(1, unit, dimension);
  return 'problem' in answer ? { ...answer, got: unit } : undefined;
}

function columnUse(
  reader: Reader,
  name: string,
  measures: ReadonlyMap<string, number>,
): ColumnUse | undefined {
  const path = ['columns', name];
  const node = reader.tree.kind === 'map' ? reader.tree.entries.get('columns')?.node : undefined;
  const entry = node?.kind === 'map' ? node.entries.get(name)?.node : undefined;
  if (entry?.kind === 'scalar') {
    if (entry.value === 'notes' || entry.value === 'skip') return { kind: entry.value };
    reader.fault(path, 'unknown word', { expected: 'notes, skip, or a map with reads, feed or acts-on' });
    return undefined;
  }
  if (reader.has([...path, 'feed'])) {
    const given = reader.parse(feedSchema, path);
    if (given === undefined) return undefined;
    const measure = measures.get(given.unit);
    const answer = measure === undefined ? convert(1, given.unit, 'mass') : { value: measure };
    if ('value' in answer) return { kind: 'feed', cohort: given.feed, grams: answer.value };
    const near = nearest(given.unit, measures.keys());
    reader.fault([...path, 'unit'], answer.problem, {
      expected: 'a unit of mass, or one of the measures of this file',
      ...(near === undefined ? {} : { nearest: near }),
    });
    return undefined;
  }
  if (reader.has([...path, 'acts-on'])) {
    const given = reader.parse(actionsSchema, path);
    if (given === undefined) return undefined;
    const { water, fish, pump, what = '', unit = '' } = given;
    const on = {
      vessel: given['acts-on'],
      ...(water === undefined ? {} : { water }),
      ...(fish === undefined ? {} : { fish }),
      ...(pump === undefined ? {} : { pump }),
    };
    return { kind: 'actions', on, what, unit };
  }
  const given = reader.parse(readingsSchema, path);
  if (given === undefined) return undefined;
  const wrong = unitFault(given.reads, given.unit);
  if (wrong !== undefined) {
    const { problem = '', ...rest } = wrong;
    reader.fault([...path, 'unit'], problem, rest);
    return undefined;
  }
  const { reads, in: vessel, unit = '', steps: card, resolution, instrument } = given;
  const changes = changesOf(reader, [...path, 'changes'], reads, unit, given.changes ?? []);
  return {
    kind: 'readings',
    reads,
    vessel,
    unit: dimensionOf[reads] === undefined ? '' : unit,
    ...(card === undefined ? {} : { steps: card }),
    ...(resolution === undefined ? {} : { resolution }),
    ...(instrument === undefined ? {} : { instrument }),
    ...(changes.length === 0 ? {} : { changes }),
  };
}

/** Other kits of a column, in the order of time; faults where a date is none or a unit does not fit. */
function changesOf(
  reader: Reader,
  path: readonly string[],
  reads: (typeof measurables)[number],
  usual: string,
  given: readonly {
    readonly from: string;
    readonly unit?: string | undefined;
    readonly steps?: readonly number[] | undefined;
    readonly resolution?: number | undefined;
    readonly instrument?: string | undefined;
  }[],
): readonly InstrumentChange[] {
  return given
    .map(({ from, unit = usual, steps: card, resolution, instrument }, i): InstrumentChange => {
      const place = [...path, String(i)];
      if (calendarDays(from) === undefined)
        reader.fault([...place, 'from'], 'not a date', { got: from, expected: 'such as 2026-05-01' });
      const wrong = unitFault(reads, dimensionOf[reads] === undefined ? undefined : unit);
      if (wrong !== undefined) {
        const { problem = '', ...rest } = wrong;
        reader.fault([...place, 'unit'], problem, rest);
      }
      return {
        from,
        unit: dimensionOf[reads] === undefined ? '' : unit,
        ...(card === undefined ? {} : { steps: card }),
        ...(resolution === undefined ? {} : { resolution }),
        ...(instrument === undefined ? {} : { instrument }),
      };
    })
    .sort((a, b) => (a.from < b.from ? -1 : 1));
}

/** The sheet of a spreadsheet that a map names; undefined where it names none, or is no map. */
export function sheetOfMap(text: string): string | undefined {
  const { tree } = readTree(text, '');
  const node = tree?.kind === 'map' ? tree.entries.get('sheet')?.node : undefined;
  return node?.kind === 'scalar' && typeof node.value === 'string' ? node.value : undefined;
}

/**
 * Reads the small YAML file that says what the columns of a log hold, and holds it against the header of the log.
 * @param file its name, for messages
 * @throws InputError with every fault: unknown keys and words, units that do not fit, columns that the log lacks
 */
export function readLogMap(text: string, file: string, table: LogTable): LogMap {
  const { tree, faults } = readTree(text, file);
  if (tree === undefined || faults.length > 0) throw new InputError(faults);
  const reader = new Reader(tree, undefined);
  const version = tree.kind === 'map' ? tree.entries.get('version')?.node : undefined;
  if (version !== undefined && !(version.kind === 'scalar' && version.value === formVersion)) {
    reader.fault(['version'], 'a map of another version', { expected: `version ${formVersion}` });
    throw new InputError(reader.faults);
  }
  const given = reader.parse(top, []);
  if (given === undefined) throw new InputError(reader.faults);
  const measures = new Map(Object.entries(given.measures ?? {}));
  const header = given.header ?? 1;
  const names = (table.rows[header - 1] ?? []).filter((name) => name !== '');
  if (names.length === 0)
    reader.fault(['header'], `nothing in row ${header} of ${table.file}`, {
      expected: 'the row of column names',
    });
  const inHeader = (name: string, path: readonly string[]): void => {
    if (names.length === 0 || names.includes(name)) return;
    const near = nearest(name, names);
    reader.fault(
      path,
      `no such column in row ${header} of ${table.file}`,
      near === undefined
        ? { got: name, expected: `one of ${names.slice(0, 12).join(', ')}${names.length > 12 ? ' ...' : ''}` }
        : { got: name, nearest: near },
      path[0] === 'columns',
    );
  };
  inHeader(given.date.column, ['date', 'column']);
  if (given.date.time !== undefined) inHeader(given.date.time, ['date', 'time']);
  const columns = new Map<string, ColumnUse>();
  for (const name of Object.keys(given.columns)) {
    inHeader(name, ['columns', name]);
    const use = columnUse(reader, name, measures);
    if (use !== undefined) columns.set(name, use);
  }
  if (reader.faults.length > 0) throw new InputError(reader.faults);
  const { column, time, order } = given.date;
  return {
    header,
    date: column,
    ...(time === undefined ? {} : { time }),
    ...(order === undefined ? {} : { order }),
    columns,
    measures,
    volumes: new Map(Object.entries(given.volumes ?? {})),
    words: new Map(Object.entries(given.words ?? {}).map(([said, stands]) => [said.toLowerCase(), stands])),
    actions: (given.actions ?? []).map((action) => JSON.stringify(action)),
  };
}

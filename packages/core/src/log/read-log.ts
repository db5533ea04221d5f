import { isoDate } from '../base/calendar.js';
import { InputError } from '../base/faults.js';
import { convert } from '../base/units.js';
import { createParameters } from '../library/parameters.js';
import { dateOrder, readDate, readTime } from './dates.js';
import type { ColumnUse, DateOrder, LogMap } from './log-map.js';
import type { LogTable } from './log-table.js';
import { raggedRows, refuseRagged } from './ragged.js';
import { hasComma, readCell, saysNothing } from './read-cell.js';
import { coarseSteps, instrumentOn, readReading } from './read-readings.js';
import { spikesIn } from './spikes.js';
import { proposalIn, readTold } from './told-actions.js';
import { withoutTotals } from './totals.js';
import type { LogAction, LogFeed, LogNote, LogReading, Oddity, WaterLog } from './water-log.js';

interface DatedRow {
  readonly row: number;
  readonly cells: readonly string[];
  readonly date: string;
  readonly hour: number;
}

/** Years that a log may be of; others are slips. */
const years = { first: 1950, last: 2200 };

/** The order of day and month: the map's, or as the dates themselves tell. */
function orderFor(table: LogTable, map: LogMap, texts: readonly string[], oddities: Oddity[]): DateOrder {
  if (map.order !== undefined) return map.order;
  const answer = dateOrder(texts);
  if ('problem' in answer) {
    throw new InputError([
      {
        file: table.file,
        key: map.date,
        problem: answer.problem,
        expected: 'in the map, date: { column: ..., order: day-month-year } or month-day-year',
      },
    ]);
  }
  if (answer.evidence === 'the rows run on day by day') {
    oddities.push({
      row: map.header,
      column: map.date,
      text: map.date,
      problem: 'day and month could be either way round',
      done: `read as ${answer.order}, because then ${answer.evidence}`,
    });
  }
  return answer.order;
}

/**
 * Tells of the rows that have not as many cells as the header; a file that is mostly of those in which something may stand
 * under another's name is refused.
 * @returns rows that have more cells than the header: which of them is which cannot be known
 */
function tellRagged(table: LogTable, map: LogMap, oddities: Oddity[]): ReadonlySet<number> {
  const header = table.rows[map.header - 1] ?? [];
  const isWords = (name: string): boolean =>
    ['notes', 'skip', undefined].includes(map.columns.get(name)?.kind);
  const ragged = raggedRows(table, map.header);
  refuseRagged(
    table,
    map.header,
    ragged.filter(({ long, cells }) => long || !header.slice(cells).every(isWords)),
  );
  for (const { row, cells, long } of ragged) {
    const text = (table.rows[row - 1] ?? []).join(' | ');
    const problem = `${cells} cells for the ${header.length} names of the header`;
    const done = long ? 'the whole row is left out' : 'read as far as it goes';
    oddities.push({ row, column: '', text, problem, done });
  }
  return new Set(ragged.flatMap(({ row, long }) => (long ? [row] : [])));
}

/** Tells of columns that hold something and have no name. */
function tellNameless(table: LogTable, map: LogMap, oddities: Oddity[]): void {
  const header = table.rows[map.header - 1] ?? [];
  const below = table.rows.slice(map.header);
  header.forEach((name, place) => {
    const held = below.map((cells) => cells[place] ?? '').filter((cell) => cell !== '');
    if (name !== '' || held.length === 0) return;
    const problem = `column ${place + 1} has no name and holds ${held.length} cells`;
    oddities.push({ row: map.header, column: '', text: held[0], problem, done: 'left out' });
  });
}

/** Whether numbers of the columns that are read have a comma. */
function commasIn(table: LogTable, map: LogMap): boolean {
  const places = (table.rows[map.header - 1] ?? []).flatMap((name, place) =>
    ['readings', 'feed'].includes(map.columns.get(name)?.kind ?? '') ? [place] : [],
  );
  return table.rows.slice(map.header).some((cells) => places.some((place) => hasComma(cells[place] ?? '')));
}

/** Rows with a date that can be read; a missing year is that of the row above. */
function datedRows(table: LogTable, map: LogMap, place: number, oddities: Oddity[]): DatedRow[] {
  const unfit = tellRagged(table, map, oddities);
  const rows = table.rows
    .slice(map.header)
    .map((cells, index) => ({ cells, row: map.header + index + 1 }))
    .filter(({ row }) => !unfit.has(row));
  const filled = rows.filter(({ cells }) => cells.some((cell) => cell !== ''));
  const texts = filled.map(({ cells }) => cells[place] ?? '').filter((text) => text !== '');
  const order = orderFor(table, map, texts, oddities);
  const timePlace = map.time === undefined ? -1 : (table.rows[map.header - 1] ?? []).indexOf(map.time);
  const dated: DatedRow[] = [];
  let year: number | undefined;
  let last = '';
  const seen = new Map<string, number>();
  for (const { cells, row } of filled) {
    const text = cells[place] ?? '';
    const report = (problem: string, done: string): void => {
      oddities.push({ row, column: map.date, text, problem, done });
    };
    const date = readDate(text, order, table.serialStart);
    if (date === undefined) {
      report(text === '' ? 'no date' : 'not a date', 'the whole row is left out');
      continue;
    }
    const full = date.year ?? year;
    if (full === undefined) {
      report('a date without a year, and none above it has one', 'the whole row is left out');
      continue;
    }
    if (full < years.first || full > years.last) {
      report(`no log is of the year ${full}`, 'the whole row is left out');
      continue;
    }
    if (date.year === undefined) report('no year', `taken as ${full}, that of the row above`);
    year = full;
    const day = isoDate({ ...date, year: full });
    if (day < last) report(`earlier than the row above (${last})`, 'kept at its own date');
    const before = seen.get(day);
    if (before !== undefined) report(`the date of row ${before} again`, 'both are kept');
    seen.set(day, row);
    last = day;
    const time = timePlace < 0 ? undefined : readTime(cells[timePlace] ?? '');
    if (Number.isNaN(time))
      oddities.push({
        row,
        column: map.time ?? '',
        text: cells[timePlace],
        problem: 'not a time of day',
        done: 'taken as the beginning of the day',
      });
    const hour = time === undefined || Number.isNaN(time) ? date.hour : time;
    dated.push({ row, cells, date: day, hour });
  }
  return dated;
}

/** Most decimals of the plain numbers of a column that are in its unit. */
function decimalsOf(rows: readonly DatedRow[], place: number): number {
  return rows.reduce((most, { cells }) => {
    const cell = readCell(cells[place] ?? '', undefined);
    return 'decimals' in cell && cell.unit === '' ? Math.max(most, cell.decimals ?? 0) : most;
  }, 0);
}

/** Grams of one of what a cell counts in: a measure of the map, or a unit of mass. */
function gramsOf(unit: string, measures: ReadonlyMap<string, number>): number | undefined {
  const measure = measures.get(unit) ?? measures.get(unit.replace(/s$/i, ''));
  if (measure !== undefined) return measure;
  const answer = convert(1, unit.replace(/^gr(?:ams?)?$/i, 'g'), 'mass');
  return 'value' in answer ? answer.value : undefined;
}

function readFeed(
  text: string,
  use: Extract<ColumnUse, { kind: 'feed' }>,
  measures: ReadonlyMap<string, number>,
  commas: boolean,
): { grams: number; odd?: string } | { problem: string } | undefined {
  if (text === '') return undefined;
  if (saysNothing(text)) return { grams: 0, odd: 'no feed' };
  // Of what is fed a half is no date.
  const whole = text.replace(/^(\d)\/(\d{1,2})(?=\D|$)/, (all, part, of) =>
    Number(of) > Number(part) ? String(Number((Number(part) / Number(of)).toPrecision(4))) : all,
  );
  const cell = readCell(whole, undefined, commas);
  if ('problem' in cell) return cell;
  if (!Number.isFinite(cell.low) || !Number.isFinite(cell.high)) return { problem: 'feed without a bound' };
  if (cell.low < 0) return { problem: 'less than nothing' };
  const each = cell.unit === '' ? use.grams : gramsOf(cell.unit, measures);
  if (each === undefined) return { problem: `"${cell.unit}" is no unit of mass and no measure of the map` };
  const grams = ((cell.low + cell.high) / 2) * each;
  const odd = [cell.odd, each === use.grams ? undefined : `another unit than the column's (${cell.unit})`]
    .filter((part) => part !== undefined)
    .join(', ');
  return odd === '' ? { grams } : { grams, odd };
}

/**
 * Reads a log by its map. Every value that is not as it should be is an oddity with its row and what was done;
 * nothing is dropped or mended without one.
 * @throws InputError where no column of dates is there, or day and month cannot be told apart
 */
export function readLog(table: LogTable, map: LogMap): WaterLog {
  const header = table.rows[map.header - 1] ?? [];
  const datePlace = header.indexOf(map.date);
  if (datePlace < 0) {
    throw new InputError([
      { file: table.file, line: map.header, problem: 'no column of dates', got: map.date },
    ]);
  }
  const parameters = createParameters();
  const oddities: Oddity[] = [...(table.oddities ?? [])];
  tellNameless(table, map, oddities);
  const rows = datedRows(table, map, datePlace, oddities);
  const commas = commasIn(table, map);
  const readings: LogReading[] = [];
  const feed: LogFeed[] = [];
  const notes: LogNote[] = [];
  const actions: LogAction[] = [];
  header.forEach((column, place) => {
    if (place === datePlace || column === '' || column === map.time) return;
    const use = map.columns.get(column);
    const report = (row: number, text: string, problem: string, done: string): void => {
      oddities.push({ row, column, text, problem, done });
    };
    if (use === undefined) {
      report(map.header, column, 'a column that the map does not name', 'left out');
      return;
    }
    if (header.indexOf(column) < place)
      report(map.header, column, 'two columns of one name', 'both are read alike');
    const writing = { decimals: use.kind === 'readings' ? decimalsOf(rows, place) : 0, commas };
    for (const { row, cells, date, hour } of rows) {
      const text = cells[place] ?? '';
      if (use.kind === 'actions') {
        const told = readTold(text, use, { date, row }, map);
        actions.push(...told.actions);
        for (const { problem, done } of told.oddities) report(row, text, problem, done);
      } else if (use.kind === 'readings') {
        const answer = readReading(
          text,
          instrumentOn(use, date),
          writing,
          { date, hour, row, column },
          parameters,
        );
        if (answer.reading !== undefined) readings.push(answer.reading);
        if (answer.oddity !== undefined) report(row, text, answer.oddity.problem, answer.oddity.done);
      } else if (use.kind === 'feed') {
        const answer = readFeed(text, use, map.measures, commas);
        if (answer === undefined) continue;
        if ('problem' in answer) report(row, text, answer.problem, 'left out');
        else {
          feed.push({ date, row, column, cohort: use.cohort, grams: answer.grams });
          if (answer.odd !== undefined) report(row, text, answer.odd, `kept as ${answer.grams} g`);
        }
      } else if (use.kind === 'notes' && text !== '') {
        notes.push({ date, row, text });
        const action = proposalIn(text, date, map);
        if (action !== undefined)
          report(row, text, 'something was done to the system', `not acted on; in the scenario: ${action}`);
      }
    }
  });
  const dates = rows.map(({ date }) => date).sort();
  const order = (a: { row: number }, b: { row: number }): number => a.row - b.row;
  return {
    file: table.file,
    from: dates[0] ?? '',
    to: dates[dates.length - 1] ?? '',
    days: new Set(dates).size,
    readings: readings.sort(order),
    feed: withoutTotals(feed, oddities).sort(order),
    notes,
    actions: actions.sort(order),
    added: map.actions,
    oddities: [...oddities, ...coarseSteps(readings, map), ...spikesIn(readings, parameters)].sort(order),
  };
}

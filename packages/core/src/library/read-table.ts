import type { Fault } from '../base/faults.js';
import { nearest } from '../base/nearest.js';
import { convert, describeDimension, type Dimension } from '../base/units.js';
import type { Override } from './own-row.js';
import { type Cell, cutTable, type Line } from './cut-table.js';
import { idFault, overrideRow } from './override.js';
import { formOf, isOpenGroup } from './properties.js';
import { citationOf, sourceList } from './sources.js';
import { distributions, type Mark, marks, type RangedRow } from './table-row.js';

/** The rows of a table of the user, where each stands, and what is wrong with them. */
export interface TableReading {
  readonly rows: readonly Override[];
  /** Line of every id that the table names, those of faulty rows too. */
  readonly lines: ReadonlyMap<string, number>;
  readonly faults: readonly Fault[];
}

const isMark = (text: string): text is Mark => Object.hasOwn(marks, text);

function distributionOf(text: string): RangedRow['distribution'] | undefined {
  return distributions.find((known) => known === text);
}

/** One of a few words, or a fault with the nearest. */
function wordFault(text: string, allowed: readonly string[]): Partial<Fault> {
  const near = nearest(text, allowed);
  return {
    got: JSON.stringify(text),
    expected: `one of ${allowed.join(', ')}`,
    ...(near === undefined ? {} : { nearest: near }),
  };
}

/** A source is a key of the bibliography, or a citation in words. */
function sourceFault(text: string): Fault | undefined {
  const expected = 'a key of `leat show sources`, or a citation in words';
  if (text === '' || text === '-') return { problem: 'no source', expected };
  if (citationOf(text) !== undefined || /\s/.test(text)) return undefined;
  const near = nearest(
    text,
    sourceList.map(({ key }) => key),
  );
  return {
    problem: 'no such source',
    got: JSON.stringify(text),
    expected,
    ...(near === undefined ? {} : { nearest: near }),
  };
}

/** Unit of a number of ours or of a new one that may be added; the id was checked before. */
function unitOf(id: string, rows: ReadonlyMap<string, RangedRow>): string {
  const own = rows.get(id);
  if (own !== undefined) return own.unit;
  const [group, , property] = id.split('.');
  if (!isOpenGroup(group)) throw new RangeError(`no number "${id}" in the tables`);
  return formOf(group, property).unit;
}

/** One line as a row; its faults go to `report`. undefined where it has any. */
function readRow(
  { cells }: Line,
  where: string,
  rows: ReadonlyMap<string, RangedRow>,
  report: (cell: Cell, fault: Fault) => void,
): Override | undefined {
  let sound = true;
  const fault = (cell: Cell, found: Fault): void => {
    sound = false;
    report(cell, found);
  };
  const { id, unit, distribution, conditions, source, page, mark } = cells;
  const wrongId = rows.has(id.text) ? undefined : idFault(id.text, rows);
  if (wrongId !== undefined) fault(id, { got: id.text, ...wrongId });
  const inUnit = wrongId === undefined ? unitOf(id.text, rows) : undefined;
  const numbers = [cells.value, cells.low, cells.high].map((cell): number => {
    const number = cell.text === '' ? Number.NaN : Number(cell.text);
    if (!Number.isFinite(number)) {
      const expected = 'a number with a decimal point, such as 0.025 or 2.5e-2';
      fault(cell, { problem: 'not a number', got: JSON.stringify(cell.text), expected });
      return Number.NaN;
    }
    return number;
  });
  let unitReported = false;
  const converted = numbers.map((number) => {
    if (inUnit === undefined || Number.isNaN(number)) return number;
    const answer = toTableUnit(number, unit.text, inUnit, id.text);
    if ('value' in answer) return answer.value;
    // The three numbers share a unit, so what is wrong with it is said once.
    if (!unitReported) fault(unit, answer);
    unitReported = true;
    return Number.NaN;
  });
  const spread = distributionOf(distribution.text);
  if (spread === undefined)
    fault(distribution, { problem: 'unknown distribution', ...wordFault(distribution.text, distributions) });
  for (const cell of [conditions, page])
    if (cell.text === '') fault(cell, { problem: 'empty', expected: 'words, or - for none' });
  const wrongSource = sourceFault(source.text);
  if (wrongSource !== undefined) fault(source, wrongSource);
  if (!isMark(mark.text))
    fault(mark, { problem: 'unknown mark', ...wordFault(mark.text, Object.keys(marks)) });
  if (!sound || spread === undefined || !isMark(mark.text)) return undefined;
  const [value, low, high] = converted;
  const row = { unit: inUnit ?? '', distribution: spread, conditions: conditions.text };
  const whence = { source: source.text, page: page.text, mark: mark.text };
  const override: Override = { id: id.text, value, low, high, row: { ...row, ...whence }, where };
  const { faults } = overrideRow(override, rows);
  for (const { problem, got, expected } of faults)
    fault(cells.value, {
      problem,
      ...(got === undefined ? {} : { got }),
      ...(expected === undefined ? {} : { expected }),
    });
  return faults.length > 0 ? undefined : override;
}

/**
 * Reads a table of the user: tab-separated, with the columns of our own tables. A row stands in place of ours, or
 * adds a property to a new species, crop, medium, feed, water or dosing product. Numbers are converted to
 * the unit of the tables. Never throws: every fault names line and column.
 *
 * @param text of the file
 * @param file its name, for messages
 * @param rows the rows that hold so far (ours, and those of tables read before)
 */
export function readTable(text: string, file: string, rows: ReadonlyMap<string, RangedRow>): TableReading {
  const { lines: cut, faults: shape } = cutTable(text, file);
  const faults: Fault[] = [...shape];
  const found: Override[] = [];
  const lines = new Map<string, number>();
  for (const line of cut) {
    const { id } = line.cells;
    const place = { file, line: line.number };
    const report = (cell: Cell, fault: Fault): void => {
      const key = cell === id || id.text === '' ? cell.name : `${cell.name} of ${id.text}`;
      faults.push({ ...place, column: cell.column, key, ...fault });
    };
    const before = lines.get(id.text);
    if (before !== undefined) {
      report(id, {
        problem: `given twice`,
        got: id.text,
        expected: `one row (the first is on line ${before})`,
      });
      continue;
    }
    lines.set(id.text, line.number);
    const row = readRow(line, `${file}:${line.number}`, rows, report);
    if (row !== undefined) found.push(row);
  }
  return { rows: found, lines, faults };
}

/** What else a unit of the tables may be written in. Nitrogen must say as what it is counted. */
const dimensions: Readonly<Record<string, readonly Dimension[]>> = {
  degC: ['temperature'],
  'g/m3': ['concentration'],
  'eq/m3': ['alkalinity'],
  '1/d': ['share-rate', 'rate'],
  '1': ['share'],
  'g/g': ['share'],
  d: ['time'],
  'm/d': ['depth-rate'],
};

/** Properties whose g/m3 are of nitrogen, and of which ion. */
const nitrogen: Readonly<Record<string, Dimension>> = {
  tan: 'ammonia',
  nitrite: 'nitrite',
  nitrate: 'nitrate',
  'limit-ammonia': 'ammonia',
  'limit-nitrite': 'nitrite',
  'limit-nitrate': 'nitrate',
  'lethal-ammonia': 'ammonia',
  'lethal-nitrite': 'nitrite',
};

function dimensionsOf(unit: string, id: string): readonly Dimension[] {
  const property = id.slice(id.lastIndexOf('.') + 1);
  if (unit === 'g/m3' && Object.hasOwn(nitrogen, property)) return [nitrogen[property]];
  return Object.hasOwn(dimensions, unit) ? dimensions[unit] : [];
}

/**
 * A number of a row in the unit of the tables. The unit written must be that one, or one that converts to it.
 * @returns the value, or what is wrong: a problem and what was expected
 */
function toTableUnit(
  value: number,
  written: string,
  unit: string,
  id: string,
): { readonly value: number } | Fault {
  if (written === unit) return { value };
  const allowed = dimensionsOf(unit, id);
  const answers = allowed.map((dimension) => convert(value, written, dimension));
  const good = answers.find((answer) => 'value' in answer);
  if (good !== undefined) return good;
  const said = answers.find(
    (answer) => 'problem' in answer && /ambiguous|negative|below/.test(answer.problem),
  );
  const also = allowed.length === 0 ? '' : `, or ${describeDimension(allowed[0])}`;
  const near = nearest(written, [unit]);
  return {
    problem: said !== undefined && 'problem' in said ? said.problem : 'not a unit of this number',
    got: written,
    expected: `${unit} as in our table${also}`,
    ...(near === undefined ? {} : { nearest: near }),
  };
}

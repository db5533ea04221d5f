import { formatQuantity, internalUnit, type Dimension } from '../units.js';
import { loadText, resolvePath } from './include-tree.js';
import { readCsvColumn } from './read-csv-column.js';
import type { Reader } from './reader.js';
import type { DailyValue } from './scenario.js';
import type { DailyGiven } from './schema/daily-schema.js';
import { originAt, type Path } from './tree.js';

/** What a daily value is read for: how many days it must reach, and what it may be. */
export interface DailyNeed {
  readonly dimension: Dimension;
  readonly days: number;
  readonly low?: number;
  readonly high?: number;
}

/** Water can be followed between freezing and what any fish or nitrifier bears, degC. */
export const waterTemperatures = { low: 0, high: 45 };

function fromCsv(
  reader: Reader,
  path: Path,
  given: DailyGiven & { kind: 'csv' },
  dimension: Dimension,
): readonly number[] | undefined {
  const { file: from } = originAt(reader.tree, [...path, 'csv']);
  const answer = loadText(reader.load, resolvePath(from, given.file), from);
  if ('problem' in answer) {
    reader.fault([...path, 'csv'], answer.problem);
    return undefined;
  }
  const column = readCsvColumn(answer.text, given.column, given.unit, dimension);
  if ('values' in column) return column.values;
  const { problem, ...rest } = column.complaint;
  reader.fault([...path, column.about], problem, rest);
  return undefined;
}

/** Completes a daily value: reads its CSV, and checks that it reaches to the end and stays in bounds. */
export function readDaily(
  reader: Reader,
  path: Path,
  given: DailyGiven,
  need: DailyNeed,
): DailyValue | undefined {
  const { dimension, low = -Infinity, high = Infinity } = need;
  const values =
    given.kind === 'constant'
      ? [given.value]
      : given.kind === 'csv'
        ? fromCsv(reader, path, given, dimension)
        : given.values;
  if (values === undefined) return undefined;
  const outside = values.findIndex((value) => value < low || value > high);
  if (outside >= 0) {
    const at =
      given.kind === 'constant'
        ? path
        : given.kind === 'csv'
          ? [...path, 'csv']
          : [...path, given.kind, outside];
    const day = given.kind === 'csv' ? ` on line ${outside + 2} of the file` : '';
    reader.fault(at, `out of range${day}`, {
      expected: `${formatQuantity(low, dimension)} to ${formatQuantity(high, dimension)}`,
    });
    return undefined;
  }
  if (given.kind === 'constant' || given.kind === 'monthly') return given;
  if (values.length < need.days) {
    const at = [...path, given.kind];
    reader.fault(at, 'fewer days than the run', {
      got: String(values.length),
      expected: `at least ${Math.ceil(need.days)}`,
    });
    return undefined;
  }
  if (given.kind === 'csv')
    reader.defaults.push({ path, value: { daily: [...values], unit: internalUnit(dimension) } });
  return { kind: 'daily', values };
}

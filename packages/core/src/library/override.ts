import type { Fault } from '../errors.js';
import { nearest } from '../suggest.js';
import type { Override } from '../scenario/scenario.js';
import { tableRows } from './table-rows.js';
import type { TableRow } from './table-row.js';

/** A row as the user wants it, its faults (then it must not be used), and what is unusual about it. */
export interface OverriddenRow {
  readonly row?: TableRow;
  readonly faults: readonly Fault[];
  readonly warnings: readonly string[];
}

/** Quantities that may have any sign: offsets of a scale and coefficients of fitted curves. */
const signed = (row: TableRow): boolean => row.unit === 'degC' || row.table === 'constants';

/** A share, such as a digestibility: unit 1 and never above 1 in the tables. */
const isShare = (row: TableRow): boolean => row.unit === '1' && row.low >= 0 && row.high <= 1;

/** Puts a number given by the user in place of one of the tables. */
export function overrideRow(override: Override): OverriddenRow {
  const { id, value } = override;
  const key = override.where ?? id;
  const base = tableRows.get(id);
  if (base === undefined) {
    const near = nearest(id, tableRows.keys());
    const fault = { key, got: id, problem: 'no such number in the tables' };
    return { faults: [near === undefined ? fault : { ...fault, nearest: near }], warnings: [] };
  }
  const low = override.low ?? value;
  const high = override.high ?? value;
  const faults = [...senseFaults(base, key, [low, value, high])];
  if (low > value || value > high) {
    faults.push({
      key,
      got: `${low} .. ${value} .. ${high}`,
      problem: `range of ${id} does not hold its value`,
      expected: 'low <= value <= high',
    });
  }
  if (faults.length > 0) return { faults, warnings: [] };
  const ranged = low < high;
  const distribution = ranged ? (base.distribution === 'fixed' ? 'uniform' : base.distribution) : 'fixed';
  const conditions = 'given by the scenario';
  const given = { conditions, source: 'scenario', page: '-', mark: 'U' } as const;
  const outside = value < base.low || value > base.high;
  return {
    row: { ...base, value, low, high, distribution, ...given },
    faults,
    warnings: outside
      ? [`${id} is ${value} ${base.unit}, outside its published range ${base.low} .. ${base.high}`]
      : [],
  };
}

function* senseFaults(row: TableRow, key: string, values: readonly number[]): Generator<Fault> {
  const got = `${values.find((value) => !Number.isFinite(value)) ?? values[1]}`;
  if (!values.every(Number.isFinite)) {
    yield { key, got, problem: `${row.id} is not a finite number`, expected: `a number in ${row.unit}` };
  } else if (!signed(row) && values.some((value) => value < 0)) {
    yield {
      key,
      got: `${Math.min(...values)}`,
      problem: `${row.id} is below zero`,
      expected: 'zero or more',
    };
  } else if (!signed(row) && row.low > 0 && values.some((value) => value === 0)) {
    yield { key, got: '0', problem: `${row.id} is zero`, expected: 'more than zero' };
  } else if (isShare(row) && values.some((value) => value > 1)) {
    yield { key, got: `${Math.max(...values)}`, problem: `${row.id} is a share above 1`, expected: '0 to 1' };
  }
}

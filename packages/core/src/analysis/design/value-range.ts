import type { Fault } from '../../base/faults.js';
import { inUnit } from '../../base/units.js';

/** Two values of one quantity, `from` and `to`, in the unit of the first. */
export interface ValueRange {
  /** Least, in `unit`. */
  readonly from: number;
  /** Most, in `unit`. */
  readonly to: number;
  /** Empty for a bare number. */
  readonly unit: string;
}

/** Names of the two ends in faults, such as `--from` and `--to`. */
export interface EndNames {
  readonly from: string;
  readonly to: string;
}

const written = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*([^\d\s].*)?$/;

/** The number (`value`) and the `unit` (empty: none) of a quantity as it is written in a file, or what is wrong. */
export function partsOf(text: string, file: string): { value: number; unit: string } | Fault {
  const match = written.exec(text);
  if (match === null) {
    return {
      file,
      got: JSON.stringify(text),
      problem: 'not a quantity',
      expected: 'a number with its unit, such as "50 L", or a bare number where the file has one',
    };
  }
  return { value: Number(match[1]), unit: (match[2] ?? '').trim() };
}

/**
 * Reads one value such as `0.4 m3` as a number in a unit (empty: a bare number).
 * @param name what to name in a fault, such as an option
 */
export function valueInUnit(text: string, unit: string, name: string): number | Fault {
  const read = partsOf(text, name);
  if (!('value' in read)) return read;
  if (read.unit === unit) return read.value;
  const fault = { file: name, got: JSON.stringify(text) };
  if (unit === '')
    return { ...fault, problem: 'a unit where the other end has none', expected: 'a bare number' };
  const expected = `a quantity in ${unit}`;
  if (read.unit === '') return { ...fault, problem: 'a number without a unit', expected };
  const value = inUnit(read.value, read.unit, unit);
  return value ?? { ...fault, problem: `not the same kind of quantity as one in ${unit}`, expected };
}

/**
 * Reads the two ends of a range, such as `50 L` and `2 m3`. Whether the quantity is the right one is for the reader
 * of the file to say.
 * @returns the range in the unit of the first, or all that is wrong
 */
export function valueRange(from: string, to: string, names: EndNames): ValueRange | readonly Fault[] {
  const low = partsOf(from, names.from);
  const high = partsOf(to, names.to);
  if (!('value' in low) || !('value' in high)) return [low, high].filter((end) => 'problem' in end);
  // The end that lacks its unit is the one to be named.
  if (low.unit === '' && high.unit !== '') {
    const fault = valueInUnit(from, high.unit, names.from);
    return typeof fault === 'number' ? [] : [fault];
  }
  const end = valueInUnit(to, low.unit, names.to);
  if (typeof end !== 'number') return [end];
  if (!(low.value < end)) {
    const expected = `more than ${names.from}, ${from}`;
    return [{ file: names.to, got: JSON.stringify(to), problem: 'an empty range', expected }];
  }
  return { from: low.value, to: end, unit: low.unit };
}

import type { Fault } from '../../errors.js';
import { inUnit } from '../../units.js';

/** Two values of one quantity as written, in the unit of the first. */
export interface ValueRange {
  readonly from: number;
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

function partsOf(text: string, file: string): { value: number; unit: string } | Fault {
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
 * Reads the two ends of a range, such as `50 L` and `2 m3`. Whether the quantity is the right one is for the reader
 * of the file to say.
 * @returns the range in the unit of the first, or all that is wrong
 */
export function valueRange(from: string, to: string, names: EndNames): ValueRange | readonly Fault[] {
  const low = partsOf(from, names.from);
  const high = partsOf(to, names.to);
  if (!('value' in low) || !('value' in high)) return [low, high].filter((end) => 'problem' in end);
  if ((low.unit === '') !== (high.unit === '')) {
    const [bare, other] = low.unit === '' ? [names.from, high.unit] : [names.to, low.unit];
    return [
      {
        file: bare,
        got: JSON.stringify(low.unit === '' ? from : to),
        problem: 'a number without a unit',
        expected: `a quantity in ${other}, as the other end`,
      },
    ];
  }
  const end = low.unit === high.unit ? high.value : inUnit(high.value, high.unit, low.unit);
  if (end === undefined) {
    return [
      {
        file: names.to,
        got: JSON.stringify(to),
        problem: 'not the same kind of quantity as the other end',
        expected: `a quantity in ${low.unit}`,
      },
    ];
  }
  if (!(low.value < end)) {
    return [
      {
        file: names.to,
        got: JSON.stringify(to),
        problem: 'an empty range',
        expected: `more than ${names.from}, ${from}`,
      },
    ];
  }
  return { from: low.value, to: end, unit: low.unit };
}

import { type Bound, convert, type Dimension } from '@leat/core';

/** What a number may be, in the unit in which it is asked. */
export interface Limits {
  readonly low: number;
  readonly high: number;
  /** Whether it must be more than `low`. */
  readonly above: boolean;
  /** Whether it counts things. */
  readonly whole: boolean;
}

/** A range of daily values, in the internal unit of its dimension. */
interface DailyRange {
  readonly dimension: Dimension;
  readonly low: number;
  readonly high: number;
}

const internal = (value: number, unit: string, dimension: Dimension): number => {
  const answer = convert(value, unit, dimension);
  if ('problem' in answer) throw new RangeError(`${value} ${unit}: ${answer.problem}`);
  return answer.value;
};

/** A number in the internal unit of a dimension, in another. */
function outOf(value: number, unit: string, dimension: Dimension): number {
  if (!Number.isFinite(value)) return value;
  const zero = internal(0, unit, dimension);
  // Rounded where the conversion leaves a trace: 0.03 m/d are 30 mm/d.
  return Number(((value - zero) / (internal(1, unit, dimension) - zero)).toPrecision(12));
}

const highestShare = { 'to-one': 1, 'below-one': 1, any: Infinity } as const;

/**
 * The bounds of a system file in the unit of a question. Throws RangeError for a unit that is not one of the dimension,
 * and for a share that may not be whole, which no question asks for.
 */
export function limitsIn(bound: Bound | DailyRange, unit: string): Limits {
  if (!('kind' in bound)) {
    const { dimension, low, high } = bound;
    return {
      low: outOf(low, unit, dimension),
      high: outOf(high, unit, dimension),
      above: false,
      whole: false,
    };
  }
  switch (bound.kind) {
    case 'quantity': {
      const { dimension, above, high = Infinity } = bound;
      return { low: 0, high: outOf(high, unit, dimension), above, whole: false };
    }
    case 'share':
      if (bound.upTo === 'below-one') throw new RangeError('a share below 1: no question asks for one');
      return { low: 0, high: outOf(highestShare[bound.upTo], unit, 'share'), above: false, whole: false };
    case 'number':
    case 'count':
      return {
        low: bound.low,
        high: bound.high,
        above: bound.above === true,
        whole: bound.kind === 'count',
      };
  }
}

/** Whether a number is within limits. */
export function isWithin({ low, high, above, whole }: Limits, value: number): boolean {
  if (!Number.isFinite(value) || value < low || value > high || (above && value === low)) return false;
  return !whole || Number.isSafeInteger(value);
}

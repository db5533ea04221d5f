import { type Dimension, internalUnit, quantityProblem } from './units.js';

/** A quantity in the internal unit of its dimension: more than 0 (`above`), or 0 or more; only temperatures go below. */
export interface QuantityBound {
  readonly kind: 'quantity';
  readonly dimension: Dimension;
  readonly above: boolean;
  /** The most that it may be, and why no more can be meant; absent: any. */
  readonly high?: number;
  readonly why?: string;
}

/** A share from 0 to 1, to below 1, or of any size. */
export interface ShareBound {
  readonly kind: 'share';
  readonly upTo: 'to-one' | 'below-one' | 'any';
}

/** A plain number, or a whole number of things (`count`), between two bounds that are allowed; `above`: not the lower. */
export interface NumberBound {
  readonly kind: 'number' | 'count';
  readonly above?: boolean;
  /** The least. */
  readonly low: number;
  /** The most. */
  readonly high: number;
}

/** What a number may be. */
export type Bound = QuantityBound | ShareBound | NumberBound;

/** A quantity of 0 or more (a temperature: any). */
export function fromZero(dimension: Dimension): QuantityBound {
  return { kind: 'quantity', dimension, above: false };
}

/** A quantity of more than 0. */
export function aboveZero(dimension: Dimension): QuantityBound {
  return { kind: 'quantity', dimension, above: true };
}

/** A quantity from 0 to `high`: more cannot be meant, for the reason `why`. */
export function upTo(dimension: Dimension, high: number, why: string): QuantityBound {
  return { kind: 'quantity', dimension, above: false, high, why };
}

/** A share, up to 1 unless stated. */
export function shareBound(upTo: ShareBound['upTo'] = 'to-one'): ShareBound {
  return { kind: 'share', upTo };
}

/** A number from `low` to `high`. */
export function numberFrom(low: number, high: number): NumberBound {
  return { kind: 'number', low, high };
}

/** A number of more than 0, up to `high`. */
export function numberAbove(high: number): NumberBound {
  return { kind: 'number', above: true, low: 0, high };
}

/** A whole number from `low` to `high`. */
export function countFrom(low: number, high: number): NumberBound {
  return { kind: 'count', low, high };
}

/** The range of a share in words: `0 to 1`. */
export function shareRange({ upTo }: ShareBound): string {
  return { 'to-one': '0 to 1', 'below-one': '0 to below 1', any: '0 up' }[upTo];
}

/** What a number with this bound is, in its internal unit: `a number of m3, more than 0`. */
export function describeBound(bound: Bound): string {
  switch (bound.kind) {
    case 'quantity': {
      const unit = `a number of ${internalUnit(bound.dimension)}`;
      if (bound.dimension === 'temperature') return unit;
      if (bound.high !== undefined) return `${unit}, 0 to ${bound.high}: ${bound.why ?? ''}`;
      return `${unit}, ${bound.above ? 'more than 0' : '0 or more'}`;
    }
    case 'share':
      return `a share from ${shareRange(bound)}`;
    case 'number':
    case 'count':
      return numbersFrom(bound);
  }
}

function numbersFrom({ kind, low, high, above }: NumberBound): string {
  const what = kind === 'count' ? 'a whole number' : 'a number';
  if (low === -Infinity && high === Infinity) return what;
  if (above === true)
    return high === Infinity ? `${what} above ${low}` : `${what} above ${low} up to ${high}`;
  return high === Infinity ? `${what} of ${low} or more` : `${what} from ${low} to ${high}`;
}

function rangeProblem(bound: Bound, value: number): string | undefined {
  switch (bound.kind) {
    case 'quantity':
      return (
        quantityProblem(value, bound.dimension) ??
        (bound.above && value <= 0 ? 'must be more than zero' : undefined) ??
        (bound.high !== undefined && value > bound.high ? 'out of range' : undefined)
      );
    case 'share': {
      const tooMuch = bound.upTo === 'any' ? false : bound.upTo === 'to-one' ? value > 1 : value >= 1;
      return value < 0 || tooMuch ? 'out of range' : undefined;
    }
    case 'number':
    case 'count': {
      const { kind, low, high, above } = bound;
      const outside = value < low || value > high || (above === true && value === low);
      return outside || (kind === 'count' && !Number.isSafeInteger(value)) ? 'out of range' : undefined;
    }
  }
}

/** What is wrong with a value that should be a number within a bound, as a fault tells it; undefined where nothing is. */
export function boundProblem(bound: Bound, value: unknown): string | undefined {
  if (value === undefined) return 'missing';
  if (typeof value !== 'number') return 'wrong kind of value';
  if (!Number.isFinite(value)) return 'not a finite number';
  return rangeProblem(bound, value);
}

import type { LimitResult } from '@leat/core';
import { listed, plain } from './names.js';
import { shown } from './numbers.js';

/** What is said of a limit wherever it is named: on which quantity, above or below which value, in which unit. */
export type Bound = Pick<LimitResult, 'quantity' | 'direction' | 'value' | 'unit'>;

/** Chloride that lacks against nitrite: above none of it fish are no longer held safe. What is said of it. */
const SHORTAGE = 'chloride-shortage';
const shortage = 'too little chloride against nitrite';

/** The unit of a limit as it stands behind a number; empty where it has none, or the quantity says it (pH). */
export function boundUnit({ unit, quantity }: Pick<Bound, 'unit' | 'quantity'>): string {
  return unit === '1' || unit === quantity ? '' : ` ${unit}`;
}

/** A limit in a column beside its quantity, such as `> 1 mg N/L`. */
export function boundSign(bound: Bound): string {
  if (bound.quantity === SHORTAGE) return 'too little';
  return `${bound.direction === 'above' ? '>' : '<'} ${shown(bound.value)}${boundUnit(bound)}`;
}

/** A limit in a line, such as `nitrite > 1 mg N/L`. */
export function boundLine(bound: Bound): string {
  if (bound.quantity === SHORTAGE) return shortage;
  return `${plain(bound.quantity)} ${boundSign(bound)}`;
}

/** A limit in a sentence, such as `nitrite above 1 mg N/L`. */
export function boundPhrase(bound: Bound): string {
  if (bound.quantity === SHORTAGE) return shortage;
  return `${plain(bound.quantity)} ${bound.direction} ${shown(bound.value)}${boundUnit(bound)}`;
}

/** A limit at its line in a picture, where the axis says quantity and unit: `nile tilapia at most`. */
export function boundLabel(direction: Bound['direction'], whom: readonly string[]): string {
  return `${listed([...new Set(whom.map(plain))])} at ${direction === 'above' ? 'most' : 'least'}`;
}

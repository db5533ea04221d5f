import type { LimitResult } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { listed, plain } from './names.js';

/** What is said of a limit wherever it is named: on which quantity, above or below which value, in which unit. */
export type Bound = Pick<LimitResult, 'quantity' | 'direction' | 'value' | 'unit'>;

/** Chloride that lacks against nitrite: above none of it fish are no longer held safe. */
const SHORTAGE = 'chloride-shortage';

/** The unit in which a limit is shown, as it stands behind a number; empty where it has none, or the quantity says it (pH). */
export function boundUnit(
  { unit, quantity }: Pick<Bound, 'unit' | 'quantity'>,
  display: Display = plainDisplay,
): string {
  const told = display.unit(unit, quantity);
  return told === '' ? '' : ` ${told}`;
}

const amount = ({ value, unit, quantity }: Bound, display: Display): string =>
  display.amount(value, unit, quantity);

/** A limit in a column beside its quantity, such as `> 1 mg N/L`. */
export function boundSign(bound: Bound, display: Display = plainDisplay): string {
  if (bound.quantity === SHORTAGE) return display.words.text.limits.tooLittle;
  return `${bound.direction === 'above' ? '>' : '<'} ${amount(bound, display)}`;
}

/** A limit in a line, such as `nitrite > 1 mg N/L`. */
export function boundLine(bound: Bound, display: Display = plainDisplay): string {
  if (bound.quantity === SHORTAGE) return display.words.text.limits.tooLittleChloride;
  return `${plain(bound.quantity, display)} ${boundSign(bound, display)}`;
}

/** A limit in a sentence, such as `nitrite above 1 mg N/L`. */
export function boundPhrase(bound: Bound, display: Display = plainDisplay): string {
  if (bound.quantity === SHORTAGE) return display.words.text.limits.tooLittleChloride;
  const direction = display.words.verdict.directions[bound.direction];
  return `${plain(bound.quantity, display)} ${direction} ${amount(bound, display)}`;
}

/** A limit at its line in a picture, where the axis says quantity and unit: `nile tilapia at most`. */
export function boundLabel(
  direction: Bound['direction'],
  whom: readonly string[],
  display: Display = plainDisplay,
): string {
  const names = [...new Set(whom.map((name) => plain(name, display)))];
  return display.words.text.limits.label(listed(names, display), direction);
}

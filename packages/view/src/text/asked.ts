import { type Display, plainDisplay } from '../display/display.js';

/** How numbers of a measure, or margins of a condition, are told: in which unit, and each of them in it. */
export interface AskedTold {
  /** Empty for numbers without one. */
  readonly unit: string;
  readonly value: (value: number) => number;
  /** A difference of two of them. */
  readonly difference: (value: number) => number;
}

/**
 * How a measure or a condition is told in the units that are shown. Its words say which quantity it is of (the series that
 * they name) and whether it is a difference already (`change temperature@tank`), which has no zero to be moved.
 * @param asked its words and the unit of its results
 */
export function askedTold(
  { text, unit }: { readonly text: string; readonly unit: string },
  display: Display = plainDisplay,
): AskedTold {
  const quantity = /([\w-]+)@/.exec(text)?.[1] ?? '';
  const difference = (of: number): number => display.difference(of, unit, quantity);
  return {
    unit: display.unit(unit, quantity),
    value: /^change\s/.test(text) ? difference : (of) => display.value(of, unit, quantity),
    difference,
  };
}

import type { BasePlan, BaseUse } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { shown } from './numbers.js';

/** Products of one sign, the same product in several vessels apart. */
function productsText(uses: readonly BaseUse[], days: number, display: Display): string {
  const words = display.words.run.base;
  const { terms } = display.words.names;
  const several = new Set(uses.map(({ vessel }) => vessel)).size > 1;
  return uses
    .map(({ product, vessel, mass }) => {
      const told = words.product(display.amount(mass / days, 'g/d'), terms[product] ?? product);
      return several ? words.into(told, vessel) : told;
    })
    .join(', ');
}

/** What a run used of base and of acid, a line each: eq and grams a day, and eq per kg of feed. */
export function baseLines(
  { days, feed, uses, base, acid }: BasePlan,
  display: Display = plainDisplay,
): readonly string[] {
  if (!(days > 0)) return [];
  const words = display.words.run.base;
  const line = (kind: 'base' | 'acid', amount: number, sign: 1 | -1): readonly string[] => {
    const those = uses.filter(({ equivalents }) => Math.sign(equivalents) === sign);
    if (those.length === 0) return [];
    const each = display.number(display.value(amount / feed, '1/kg'));
    const perFeed = feed > 0 ? words.perFeed(each, display.unit('kg')) : '';
    return [words.used(kind, shown(amount / days, display), productsText(those, days, display), perFeed)];
  };
  return [...line('base', base, 1), ...line('acid', acid, -1)];
}

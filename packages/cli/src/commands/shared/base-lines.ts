import type { BasePlan, BaseUse } from '@leat/core';
import { shown } from '@leat/view/text';

/** Products of one sign, the same product in several vessels apart. */
function productsText(uses: readonly BaseUse[], days: number): string {
  const several = new Set(uses.map(({ vessel }) => vessel)).size > 1;
  return uses
    .map(
      ({ product, vessel, mass }) =>
        `${shown(mass / days)} g/d ${product}${several ? ` into ${vessel}` : ''}`,
    )
    .join(', ');
}

/** What a run used of base and of acid, a line each: eq and grams a day, and eq per kg of feed. */
export function baseLines({ days, feed, uses, base, acid }: BasePlan): readonly string[] {
  if (!(days > 0)) return [];
  const line = (name: string, amount: number, sign: 1 | -1): readonly string[] => {
    const those = uses.filter(({ equivalents }) => Math.sign(equivalents) === sign);
    if (those.length === 0) return [];
    const perFeed = feed > 0 ? `, ${shown(amount / feed)} eq per kg of feed` : '';
    return [`${name} used: ${shown(amount / days)} eq/d (${productsText(those, days)})${perFeed}`];
  };
  return [...line('base', base, 1), ...line('acid', acid, -1)];
}

import type { Harvest } from '@leat/core';
import { type Display, yieldsByMonth } from '@leat/view/text';
import { columns } from '../../terminal/columns.js';

/** Months beside each other that 80 columns have room for. */
const abreast = 9;

/**
 * What was harvested in each month of the calendar: crops in kilograms fresh (dry where the tables do not say how dry they
 * are) and fish, in the units that are shown. No lines where all of it fell into one month.
 */
export function monthlyHarvestLines(harvest: Harvest, display: Display): readonly string[] {
  const { yields, months } = yieldsByMonth(harvest, display);
  if (months.length < 2) return [];
  const severalYears = new Set(months.map((month) => month.slice(0, 4))).size > 1 && months.length > 12;
  const named = (month: string): string => {
    const name = display.months[Number(month.slice(5)) - 1];
    return severalYears ? `${name} ${month.slice(2, 4)}` : name;
  };
  const kilograms = (grams: number): string => display.number(display.value(grams / 1000, 'kg'));
  const tables = Array.from({ length: Math.ceil(months.length / abreast) }, (_, i) =>
    months.slice(i * abreast, (i + 1) * abreast),
  );
  return tables.flatMap((some) =>
    columns(
      [
        [`  ${display.words.verdict.harvest.byMonth(display.unit('kg'))}`, ...some.map(named)],
        ...yields.map((each) => [
          `  ${each.name}`,
          ...some.map((month) => {
            const found = each.months.find((one) => one.month === month);
            return found === undefined ? '' : kilograms(found.mass);
          }),
        ]),
      ],
      ['left', ...some.map(() => 'right' as const)],
    ),
  );
}

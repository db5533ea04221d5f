import type { Harvest, MonthlyYield } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { plain } from './names.js';
import { shown } from './numbers.js';

/** What one crop or one cohort gave, by month. */
export interface Yield {
  readonly name: string;
  readonly kind: 'crop' | 'fish';
  readonly months: readonly MonthlyYield[];
}

/** A planting by its name, and its crop where that is another. */
function cropNamed(planting: string, crop: string, display: Display): string {
  return planting === crop ? plain(crop, display) : `${planting} (${plain(crop, display)})`;
}

/** Crops and groups of fish that gave anything, by month, with all months (`yyyy-mm`) between the first and the last of all. */
export function yieldsByMonth(
  { crops, fish }: Harvest,
  display: Display,
): { readonly yields: readonly Yield[]; readonly months: readonly string[] } {
  const yields = [
    ...crops.map(({ planting, crop, months }): Yield => ({
      name: cropNamed(planting, crop, display),
      kind: 'crop',
      months,
    })),
    ...fish.map(({ cohort, months }): Yield => ({
      name: display.words.report.harvest.fish(cohort),
      kind: 'fish',
      months,
    })),
  ].filter(({ months }) => months.length > 0);
  return { yields, months: monthsOf(yields) };
}

/** All months between the first and the last in which anything was harvested, `yyyy-mm`. */
function monthsOf(all: readonly Yield[]): readonly string[] {
  const known = [...new Set(all.flatMap(({ months }) => months.map(({ month }) => month)))].sort();
  if (known.length === 0) return [];
  const number = (month: string): number => Number(month.slice(0, 4)) * 12 + Number(month.slice(5)) - 1;
  const [first, last] = [number(known[0]), number(known[known.length - 1])];
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const [year, month] = [Math.floor((first + i) / 12), ((first + i) % 12) + 1];
    return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}`;
  });
}

/** A harvest in lines: each crop and the fish, and how much per square metre, per kilogram of feed and of water. */
export function harvestLines(
  { crops, fish, fresh, area, feed, water }: Harvest,
  display: Display = plainDisplay,
): readonly string[] {
  const words = display.words.verdict.harvest;
  const mass = (grams: number): string => display.amount(grams / 1000, 'kg');
  /** Kilograms for each of a unit, both as they are shown. */
  const per = (grams: number, unit: string): string =>
    `${display.number(display.value(grams / 1000, `kg/${unit}`))} ${display.unit('kg')}`;
  const lines = crops
    .filter(({ dry }) => dry > 0)
    .map(({ planting, crop, dry, fresh: fresh1, plants }) => {
      const named = cropNamed(planting, crop, display);
      const count = plants === undefined ? '' : words.plants(shown(plants, display));
      return `  ${named}: ${fresh1 === undefined ? words.dry(mass(dry)) : words.fresh(mass(fresh1))}${count}`;
    });
  const sold = fish
    .filter(({ number }) => number >= 0.5)
    .map(
      (each) => `  ${each.cohort}: ${words.fish(shown(Math.round(each.number), display), mass(each.mass))}`,
    );
  const shares = [
    ...(area > 0 ? [words.perArea(per(fresh / area, 'm2'), display.unit('m2'))] : []),
    ...(feed > 0 ? [words.perFeed(per((fresh / feed) * 1000, 'kg'), display.unit('kg'))] : []),
    ...(water > 0 ? [words.perWater(per(fresh / water, 'm3'), display.unit('m3'))] : []),
  ];
  const all = [...lines, ...(fresh > 0 ? [`  ${words.all(mass(fresh), shares.join(', '))}`] : []), ...sold];
  return all.length === 0 ? [words.none] : [words.head, ...all];
}

import type { Harvest } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { plain } from './names.js';
import { shown } from './numbers.js';

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
      const named = planting === crop ? plain(crop, display) : `${planting} (${plain(crop, display)})`;
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

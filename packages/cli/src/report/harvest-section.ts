import { type Harvest, harvestOf, type MonthlyYield } from '@leat/core';
import type { Maker } from '@leat/view/pictures';
import { harvestLines, plain, shown } from '@leat/view/text';
import { type Column, runTitle, scrolling, section, table } from './elements.js';
import type { RunSummary } from './run-summary.js';

const kilograms = (grams: number): string => shown(grams / 1000);

/** What was harvested by month, a row each, kg; fish beside crops. */
function monthTable(maker: Maker, { crops, fish }: Harvest): HTMLElement {
  const all: readonly { readonly name: string; readonly months: readonly MonthlyYield[] }[] = [
    ...crops.map(({ planting, crop, months }) => ({
      name: planting === crop ? plain(crop) : `${planting} (${plain(crop)})`,
      months,
    })),
    ...fish.map(({ cohort, months }) => ({ name: `${cohort} (fish)`, months })),
  ].filter(({ months }) => months.length > 0);
  const names = [...new Set(all.flatMap(({ months }) => months.map(({ month }) => month)))].sort();
  const columns: readonly Column[] = [
    { name: 'harvested, kg' },
    ...names.map((name) => ({ name, number: true })),
    { name: 'in all', number: true },
  ];
  const rows = all.map(({ name, months }) => [
    name,
    ...names.map((month) => kilograms(months.find((each) => each.month === month)?.mass ?? 0)),
    kilograms(months.reduce((total, { mass }) => total + mass, 0)),
  ]);
  return table(maker, 'Harvest by month, kg fresh', columns, rows);
}

/** What each run harvested: in all, by month, and for each square metre, kilogram of feed and cubic metre of water. */
export function harvestSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const parts = runs.flatMap(({ letter, account, system }) => {
    if (system === undefined) return [];
    const harvest = harvestOf(system.run);
    const [, ...lines] = harvestLines(harvest);
    const title = runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : [];
    if (lines.length === 0) return [...title, maker.html('p', {}, 'Nothing was harvested.')];
    return [
      ...title,
      maker.html('ul', {}, ...lines.map((line) => maker.html('li', {}, line.trim()))),
      scrolling(
        maker,
        `Harvest by month${runs.length > 1 ? ` in ${letter}` : ''}`,
        monthTable(maker, harvest),
      ),
    ];
  });
  return section(maker, 'harvest', 'Harvest', ...parts);
}

/** Whether a run harvests or grows anything that a harvest could be told of. */
export function hasHarvest({ system }: RunSummary): boolean {
  if (system === undefined) return false;
  const { plantings, cohorts } = system.run.model.scenario;
  return plantings.length > 0 || cohorts.length > 0;
}

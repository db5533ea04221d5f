import { type Harvest, harvestOf, type MonthlyYield } from '@leat/core';
import { finished, harvestBars, type Maker, pageColours } from '@leat/view/pictures';
import { costLines, harvestLines, plain, shown } from '@leat/view/text';
import { type Column, figure, folded, runTitle, section, table } from './elements.js';
import type { RunSummary } from './run-summary.js';

const kilograms = (grams: number): string => shown(grams / 1000);

/** What one crop or one cohort gave, by month. */
interface Given {
  readonly name: string;
  readonly kind: 'crop' | 'fish';
  readonly months: readonly MonthlyYield[];
}

function givenBy({ crops, fish }: Harvest): readonly Given[] {
  return [
    ...crops.map(({ planting, crop, months }): Given => ({
      name: planting === crop ? plain(crop) : `${planting} (${plain(crop)})`,
      kind: 'crop',
      months,
    })),
    ...fish.map(({ cohort, months }): Given => ({ name: `${cohort} (fish)`, kind: 'fish', months })),
  ].filter(({ months }) => months.length > 0);
}

/** All months between the first and the last in which anything was harvested, `yyyy-mm`. */
function monthsOf(all: readonly Given[]): readonly string[] {
  const known = [...new Set(all.flatMap(({ months }) => months.map(({ month }) => month)))].sort();
  const number = (month: string): number => Number(month.slice(0, 4)) * 12 + Number(month.slice(5)) - 1;
  const [first, last] = [number(known[0]), number(known[known.length - 1])];
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const [year, month] = [Math.floor((first + i) / 12), ((first + i) % 12) + 1];
    return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}`;
  });
}

/** What was harvested by month, a row each, kg; fish beside crops. */
function monthTable(maker: Maker, all: readonly Given[], names: readonly string[]): HTMLElement {
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

/** A small picture of bars for each crop and cohort, all of one scale. */
function monthPictures(
  maker: Maker,
  all: readonly Given[],
  months: readonly string[],
  most: number,
): HTMLElement {
  const figures = all.map(({ name, kind, months: harvested }) => {
    const svg = harvestBars(
      maker,
      { harvested, months, most, colour: kind === 'fish' ? pageColours.fish : pageColours.crop },
      pageColours,
    );
    const told = harvested.map(({ month, mass }) => `${month} ${kilograms(mass)} kg`).join(', ');
    const picture = finished(maker, svg, { title: `Harvest by month: ${name}`, description: `${told}.` });
    return figure(maker, [picture], [`${name}, kg`]);
  });
  return maker.html('div', { class: 'panels harvested' }, ...figures);
}

/** What each run harvested: in all, by month, for each square metre, kilogram of feed and cubic metre of water; and its cost. */
export function harvestSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const harvests = runs.map(({ system }) => (system === undefined ? undefined : harvestOf(system.run)));
  const all = harvests.flatMap((harvest) => (harvest === undefined ? [] : givenBy(harvest)));
  const most = Math.max(0, ...all.flatMap(({ months }) => months.map(({ mass }) => mass)));
  const parts = runs.flatMap(({ letter, account }, i) => {
    const harvest = harvests[i];
    if (harvest === undefined) return [];
    const [, ...lines] = harvestLines(harvest);
    const given = givenBy(harvest);
    const months = given.length === 0 ? [] : monthsOf(given);
    const title = runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : [];
    const costs = account.costs === undefined ? [] : costLines(account.costs);
    return [
      ...title,
      lines.length === 0
        ? maker.html('p', {}, 'Nothing was harvested.')
        : maker.html('ul', {}, ...lines.map((line) => maker.html('li', {}, line.trim()))),
      ...(months.length === 0
        ? []
        : [
            monthPictures(maker, given, months, most),
            folded(
              maker,
              `Harvest by month in figures${runs.length > 1 ? ` (${letter})` : ''}`,
              monthTable(maker, given, months),
            ),
          ]),
      ...(costs.length === 0
        ? []
        : [
            maker.html('p', {}, 'By the prices of the file:'),
            maker.html('ul', { class: 'costs' }, ...costs.map((line) => maker.html('li', {}, line))),
          ]),
    ];
  });
  return section(maker, 'harvest', 'Harvest', ...parts);
}

/** Whether a run harvests or grows anything that a harvest could be told of. */
export function hasHarvest({ system }: RunSummary): boolean {
  if (system === undefined) return false;
  const { plantings, fish: cohorts } = system.run.model.scenario;
  return plantings.length > 0 || cohorts.length > 0;
}

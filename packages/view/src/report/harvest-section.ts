import { harvestOf } from '@leat/core';
import { finished, harvestBars, type Maker, pageColours } from '../pictures/index.js';
import { costLines, type Display, harvestLines, type Yield, yieldsByMonth } from '../text/index.js';
import { type Column, figure, folded, runTitle, section, table } from './elements.js';
import type { RunSummary } from './run-summary.js';

const kilograms = (grams: number, display: Display): string =>
  display.number(display.value(grams / 1000, 'kg'));

/** Least length of a run whose harvest is shown by month, d: of a shorter one a bar or two would say nothing. */
const leastDays = 60;

const isLong = ({ time }: RunSummary['account']): boolean => time[time.length - 1] - time[0] >= leastDays;

/** What was harvested by month, a row each, kg; fish beside crops. */
function monthTable(maker: Maker, all: readonly Yield[], names: readonly string[]): HTMLElement {
  const { display } = maker;
  const words = display.words.report;
  const unit = display.unit('kg');
  const columns: readonly Column[] = [
    { name: words.harvest.harvested(unit) },
    ...names.map((name) => ({ name, number: true })),
    { name: words.inAll, number: true },
  ];
  const rows = all.map(({ name, months }) => [
    name,
    ...names.map((month) => kilograms(months.find((each) => each.month === month)?.mass ?? 0, display)),
    kilograms(
      months.reduce((total, { mass }) => total + mass, 0),
      display,
    ),
  ]);
  return table(maker, words.harvest.byMonth(unit), columns, rows);
}

/** A small picture of bars for each crop and cohort, all of one scale. */
function monthPictures(
  maker: Maker,
  all: readonly Yield[],
  months: readonly string[],
  most: number,
): HTMLElement {
  const { display } = maker;
  const words = display.words.report.harvest;
  const unit = display.unit('kg');
  const figures = all.map(({ name, kind, months: harvested }) => {
    const svg = harvestBars(
      maker,
      { harvested, months, most, colour: kind === 'fish' ? pageColours.fish : pageColours.crop },
      pageColours,
    );
    const told = harvested
      .map(({ month, mass }) => `${month} ${kilograms(mass, display)} ${unit}`)
      .join(', ');
    const picture = finished(maker, svg, { title: words.pictureMonth(name), description: `${told}.` });
    return figure(maker, [picture], [words.caption(name, unit)]);
  });
  return maker.html('div', { class: 'panels harvested' }, ...figures);
}

/** What each run harvested: in all, by month, for each square metre, kilogram of feed and cubic metre of water; and its cost. */
export function harvestSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const { display } = maker;
  const words = display.words.report.harvest;
  const harvests = runs.map(({ system }) => (system === undefined ? undefined : harvestOf(system.run)));
  const all = harvests.flatMap((harvest) =>
    harvest === undefined ? [] : yieldsByMonth(harvest, display).yields,
  );
  const most = Math.max(0, ...all.flatMap(({ months }) => months.map(({ mass }) => mass)));
  const parts = runs.flatMap(({ letter, account }, i) => {
    const harvest = harvests[i];
    if (harvest === undefined) return [];
    const [, ...lines] = harvestLines(harvest, display);
    const { yields: given, months: reached } = yieldsByMonth(harvest, display);
    const months = isLong(account) ? reached : [];
    const title = runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : [];
    const costs = account.costs === undefined ? [] : costLines(account.costs, display);
    return [
      ...title,
      lines.length === 0
        ? maker.html('p', {}, words.nothing)
        : maker.html('ul', {}, ...lines.map((line) => maker.html('li', {}, line.trim()))),
      ...(months.length === 0
        ? []
        : [
            monthPictures(maker, given, months, most),
            folded(
              maker,
              words.figuresMonth(runs.length > 1 ? ` (${letter})` : ''),
              monthTable(maker, given, months),
            ),
          ]),
      ...(costs.length === 0
        ? []
        : [
            maker.html('p', {}, words.prices),
            maker.html('ul', { class: 'costs' }, ...costs.map((line) => maker.html('li', {}, line))),
          ]),
    ];
  });
  return section(maker, 'harvest', words.title, ...parts);
}

/** Whether a run harvests or grows anything that a harvest could be told of. */
export function hasHarvest({ system }: RunSummary): boolean {
  if (system === undefined) return false;
  const { plantings, fish: cohorts } = system.run.model.scenario;
  return plantings.length > 0 || cohorts.length > 0;
}

import { basePlan } from '@leat/core';
import type { Maker } from '../pictures/index.js';
import { baseLines } from '../text/index.js';
import { runTitle, section, table } from './elements.js';
import type { RunSummary } from './run-summary.js';

/** Base and acid of each run that used any: what a grower must buy, and how to handle it. */
export function baseSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const { display } = maker;
  const words = display.words.report.base;
  const columns = [
    { name: words.product },
    { name: words.into },
    { name: words.gramsADay(display.unit('g')), number: true },
    { name: words.eqADay, number: true },
    { name: words.what },
  ];
  const parts = runs.flatMap(({ letter, account, system }) => {
    if (system === undefined) return [];
    const plan = basePlan(system.run);
    const lines = baseLines(plan, display);
    if (lines.length === 0) return [];
    const rows = plan.uses.map(({ product, vessel, mass, equivalents, note }) => [
      display.words.names.terms[product] ?? product,
      vessel,
      display.number(display.value(mass / plan.days, 'g')),
      display.number(equivalents / plan.days),
      note,
    ]);
    return [
      maker.html(
        'div',
        {},
        ...(runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : []),
        ...lines.map((line) => maker.html('p', {}, `${line.charAt(0).toUpperCase()}${line.slice(1)}.`)),
        table(maker, words.caption, columns, rows),
      ),
    ];
  });
  return section(maker, 'base', words.title, ...parts);
}

/** Whether a run used any base or acid. */
export function usedBase({ system }: RunSummary): boolean {
  return system !== undefined && baseLines(basePlan(system.run)).length > 0;
}

import { basePlan } from '@leat/core';
import type { Maker } from '@leat/view/pictures';
import { shown } from '@leat/view/text';
import { baseLines } from '../commands/shared/base-lines.js';
import { runTitle, section, table } from './elements.js';
import type { RunSummary } from './run-summary.js';

/** Base and acid of each run that used any: what a grower must buy, and how to handle it. */
export function baseSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const columns = [
    { name: 'product' },
    { name: 'into' },
    { name: 'g a day', number: true },
    { name: 'eq a day', number: true },
    { name: 'what it is' },
  ];
  const parts = runs.flatMap(({ letter, account, system }) => {
    if (system === undefined) return [];
    const plan = basePlan(system.run);
    const lines = baseLines(plan);
    if (lines.length === 0) return [];
    const rows = plan.uses.map(({ product, vessel, mass, equivalents, note }) => [
      product,
      vessel,
      shown(mass / plan.days),
      shown(equivalents / plan.days),
      note,
    ]);
    return [
      maker.html(
        'div',
        {},
        ...(runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : []),
        ...lines.map((line) => maker.html('p', {}, `${line.charAt(0).toUpperCase()}${line.slice(1)}.`)),
        table(maker, 'Base and acid used, in the mean of the run', columns, rows),
      ),
    ];
  });
  return section(maker, 'base', 'Base and acid: what holds pH', ...parts);
}

/** Whether a run used any base or acid. */
export function usedBase({ system }: RunSummary): boolean {
  return system !== undefined && baseLines(basePlan(system.run)).length > 0;
}

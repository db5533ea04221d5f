import { afterEvents } from '@leat/core';
import type { Maker } from '../pictures/index.js';
import { afterLines, afterTexts } from '../text/index.js';
import { runTitle, section } from './elements.js';
import type { RunSummary } from './run-summary.js';

/** Whether anything disturbed a run that was simulated here. */
export const isDisturbed = ({ system }: RunSummary): boolean =>
  system !== undefined && afterEvents(system.run).length > 0;

/** How long after each event every limit for fish was held, vessel by vessel. */
export function afterSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const parts = runs.flatMap(({ letter, account, system }) => {
    if (system === undefined) return [];
    const after = afterEvents(system.run);
    if (after.length === 0) return [];
    const passed = afterTexts(after, account.startDate, maker.display);
    const held = afterLines(
      after.filter((each) => each.passed.length === 0),
      account.startDate,
      maker.display,
    ).slice(1);
    return [
      ...(runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : []),
      ...passed.flatMap(({ event, vessels }) => [
        maker.html('p', {}, event),
        maker.html('ul', {}, ...vessels.map((vessel) => maker.html('li', {}, vessel))),
      ]),
      ...held.map((line) => maker.html('p', { class: 'note' }, line.trim())),
    ];
  });
  return section(maker, 'after', maker.display.words.report.after.title, ...parts);
}

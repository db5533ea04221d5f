import type { RunEvent } from '@leat/core';
import { eventsPicture, finished, type Maker, pageColours } from '@leat/view/pictures';
import { day, listed, plain } from '@leat/view/text';
import type { RunSummary } from './run-summary.js';
import { daysOf } from './course-figures.js';
import { figure, runTitle, section } from './elements.js';
import { folded, table } from './elements.js';

/** Most events listed one by one. */
const most = 150;

function counted(events: readonly RunEvent[]): string {
  const counts = new Map<string, number>();
  for (const { kind } of events) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return listed([...counts].map(([kind, count]) => `${count} × ${plain(kind)}`));
}

function oneRun(maker: Maker, run: RunSummary, days: readonly [number, number], many: boolean): HTMLElement {
  const { events, letter, account } = run;
  const title = many ? [runTitle(maker, letter, account.title)] : [];
  if (events.length === 0)
    return maker.html('p', { class: 'note' }, ...title, ' Nothing happened but the days themselves.');
  const svg = finished(maker, eventsPicture(maker, events, days, account.startDate, pageColours), {
    title: `What happened when${many ? `, ${letter}` : ''}`,
    description: `${counted(events)}, by day.`,
  });
  const rows = events
    .slice(0, most)
    .map(({ time, kind, place, text }) => [day(time), plain(kind), place, text]);
  const left = events.length - rows.length;
  const caption = `Events${left > 0 ? `: the first ${most}, ${left} more are in leat run --json` : ''}`;
  const columns = [{ name: 'day', number: true }, { name: 'what' }, { name: 'where' }, { name: 'how' }];
  return figure(
    maker,
    [svg],
    many ? title : [`${counted(events)}.`],
    '',
    folded(maker, `All ${events.length} events`, table(maker, caption, columns, rows)),
  );
}

/** What was done and what happened, on a line of days. */
export function eventsSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const days = daysOf(runs);
  const figures = runs.map((run) => oneRun(maker, run, days, runs.length > 1));
  return section(maker, 'events', 'What happened when', maker.html('div', { class: 'grid' }, ...figures));
}

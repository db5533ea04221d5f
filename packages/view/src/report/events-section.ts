import type { RunEvent } from '@leat/core';
import { eventsPicture, finished, type Maker, pageColours } from '../pictures/index.js';
import { type Display, eventText, listed, plain } from '../text/index.js';
import type { RunSummary } from './run-summary.js';
import { dayAndDate } from './dated.js';
import { daysOf } from './course-figures.js';
import { figure, runTitle, section } from './elements.js';
import { folded, table } from './elements.js';

/** Most events listed one by one. */
const most = 150;

function counted(events: readonly RunEvent[], display: Display): string {
  const counts = new Map<string, number>();
  for (const { kind } of events) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const words = display.words.report.events;
  return listed(
    [...counts].map(([kind, count]) => words.counted(count, plain(kind, display))),
    display,
  );
}

function oneRun(maker: Maker, run: RunSummary, days: readonly [number, number], many: boolean): HTMLElement {
  const { events, letter, account } = run;
  const { display } = maker;
  const words = display.words.report.events;
  const told = counted(events, display);
  const title = many ? [runTitle(maker, letter, account.title)] : [];
  if (events.length === 0) return maker.html('p', { class: 'note' }, ...title, words.nothing);
  const svg = finished(maker, eventsPicture(maker, events, days, account.startDate, pageColours), {
    title: words.picture(many ? `, ${letter}` : ''),
    description: words.described(told),
  });
  const rows = events
    .slice(0, most)
    .map(({ time, kind, place, text }) => [
      dayAndDate(time, account.startDate, display),
      plain(kind, display),
      place,
      eventText(text, display),
    ]);
  const left = events.length - rows.length;
  const caption = left > 0 ? words.first(most, left) : words.events;
  const columns = [
    { name: display.words.report.day, number: true },
    { name: words.what },
    { name: words.where },
    { name: words.how },
  ];
  return figure(
    maker,
    [svg],
    many ? title : [`${told}.`],
    '',
    folded(maker, words.all(events.length), table(maker, caption, columns, rows)),
  );
}

/** What was done and what happened, on a line of days. */
export function eventsSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const days = daysOf(runs);
  const figures = runs.map((run) => oneRun(maker, run, days, runs.length > 1));
  return section(
    maker,
    'events',
    maker.display.words.report.events.title,
    maker.html('div', { class: 'grid' }, ...figures),
  );
}

import type { MeasureSummary, Bands, LimitOdds } from '@leat/core';
import type { Maker } from '../pictures/index.js';
import { boundPhrase, day, type Display, percent, plain } from '../text/index.js';
import type { EnsembleSummary as Ensemble, RunSummary } from './run-summary.js';
import { bar } from './elements.js';
import { runTitle, section } from './elements.js';
import { scrolling, table } from './elements.js';

const tenths = (value: number, display: Display): string => day(Math.round(value * 10) / 10, display);

/** A median and its band; the median alone where all runs say the same. */
function daysOf({ median, band90 }: Bands, display: Display): string {
  const [middle, low, high] = [median, ...band90].map((value) => tenths(value, display));
  return low === high ? middle : display.words.evidence.chances.band(middle, low, high);
}

function runsText({ sampling, ran, failed, drawn }: Ensemble, display: Display): string {
  const words = display.words.evidence.chances;
  const { members, seed, method } = sampling;
  const part = ran === members ? words.runs(ran) : words.partOf(ran, members);
  const broken = failed.length === 0 ? '' : words.failed(failed.length, failed[0].member, failed[0].reason);
  return words.drawn(part, drawn.length, method, seed, broken);
}

function limitRow(maker: Maker, limit: LimitOdds): HTMLElement {
  const { display } = maker;
  const words = display.words.evidence.chances;
  const { probability, place, whom, first, total, source, mark } = limit;
  const when = words.when(daysOf(first, display), daysOf(total, display), `${source} [${mark}]`);
  return maker.html(
    'tr',
    {},
    maker.html(
      'th',
      { scope: 'row' },
      words.limit(boundPhrase(limit, display), place, plain(whom, display)),
      maker.html('span', { class: 'under' }, when),
    ),
    maker.html('td', { class: 'number' }, percent(probability, display)),
    maker.html('td', { class: 'bar' }, bar(maker, { value: probability, colour: 'var(--limit)' }, 1, false)),
  );
}

/** Limits that some runs passed, the likeliest first. */
function oddsTable(maker: Maker, limits: readonly LimitOdds[]): readonly HTMLElement[] {
  const words = maker.display.words.evidence.chances;
  const passed = limits.filter((limit) => limit.passed > 0).sort((a, b) => b.probability - a.probability);
  if (passed.length === 0) return [];
  const head = maker.html(
    'tr',
    {},
    maker.html('th', { scope: 'col' }, words.limitColumn),
    maker.html('th', { scope: 'col', class: 'number' }, maker.display.words.report.share),
    maker.html('td', {}),
  );
  return [
    maker.html(
      'table',
      { class: 'bars odds' },
      maker.html('caption', {}, words.caption),
      maker.html('thead', {}, head),
      maker.html('tbody', {}, ...passed.map((limit) => limitRow(maker, limit))),
    ),
  ];
}

function limitNote(limits: readonly LimitOdds[], { words }: Display): string {
  const told = words.evidence.chances;
  const never = limits.filter(({ judged, passed }) => judged > 0 && passed === 0).length;
  const unjudged = limits.filter(({ judged }) => judged === 0).length;
  return [
    ...(never > 0 ? [told.passedNone(never)] : []),
    ...(unjudged > 0 ? [told.judgedNone(unjudged)] : []),
  ].join(' ');
}

const unitOf = ({ unit }: MeasureSummary): string => (unit === '1' ? '' : ` ${unit}`);

/** What was asked of every run, and in how many runs a condition holds. */
function askedTable(maker: Maker, { measures, conditions }: Ensemble): readonly HTMLElement[] {
  if (measures.length + conditions.length === 0) return [];
  const { display } = maker;
  const words = display.words.evidence.chances;
  const { number } = display;
  const reach = ([low, high]: readonly [number, number]): string => words.reach(number(low), number(high));
  const cells = (asked: MeasureSummary): readonly string[] => [
    `${number(asked.median)}${unitOf(asked)}`,
    reach(asked.band50),
    reach(asked.band90),
    String(asked.answered),
  ];
  const rows = [
    ...measures.map((asked) => [asked.text, '', ...cells(asked)]),
    ...conditions.map((asked) => [words.margin(asked.text), percent(asked.share, display), ...cells(asked)]),
  ];
  const columns = [
    { name: words.asked },
    { name: words.holdsIn, number: true },
    { name: words.median, number: true },
    { name: words.band50, number: true },
    { name: words.band90, number: true },
    { name: words.answered, number: true },
  ];
  return [scrolling(maker, words.table, table(maker, words.table, columns, rows, 'stack'))];
}

/** How sure we are: how likely each limit is passed, for each run that has an ensemble. */
export function chancesSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const parts = runs.flatMap(({ ensemble, letter, account }) => {
    if (ensemble === undefined) return [];
    const note = limitNote(ensemble.limits, maker.display);
    return [
      ...(runs.length > 1 ? [maker.html('h3', {}, runTitle(maker, letter, account.title))] : []),
      maker.html('p', { class: 'note' }, runsText(ensemble, maker.display)),
      ...oddsTable(maker, ensemble.limits),
      ...(note === '' ? [] : [maker.html('p', { class: 'note' }, note)]),
      ...askedTable(maker, ensemble),
    ];
  });
  return section(maker, 'sure', maker.display.words.evidence.chances.title, ...parts);
}

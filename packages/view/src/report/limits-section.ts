import { type LimitResult, worstFirst } from '@leat/core';
import type { Child, Maker } from '../pictures/index.js';
import { boundPhrase, boundUnit, type Display, placeText, plain } from '../text/index.js';
import { worstCharts } from './courses-section.js';
import type { RunSummary } from './run-summary.js';
import { dayAndDate } from './dated.js';
import { runTitle, section } from './elements.js';
import { folded, scrolling, table, type Column } from './elements.js';

function columnsOf({ words }: Display): readonly Column[] {
  const told = words.report.limits;
  return [
    { name: told.limit },
    { name: told.where },
    { name: told.whom },
    { name: told.first, number: true },
    { name: told.lasting, number: true },
    { name: told.farthest, number: true },
    { name: told.onDay, number: true },
    { name: told.source },
  ];
}

/** Most limits passed that stand open; of more than one beyond them the rest is folded. */
const mostPassed = 3;

function limitRow(limit: LimitResult, startDate: string, display: Display): readonly Child[] {
  const { place, whom, first, total, worstAt, source, page, mark } = limit;
  return [
    boundPhrase(limit, display),
    placeText(place, display),
    plain(whom, display),
    dayAndDate(first, startDate, display),
    display.number(total),
    `${worstOf(limit, display)}${boundUnit(limit, display)}`,
    dayAndDate(worstAt, startDate, display),
    `${source}${page === '-' || page === '' ? '' : `, ${page}`} [${mark}]`,
  ];
}

const worstOf = ({ worst, unit, quantity }: LimitResult, display: Display): string =>
  display.number(worst === undefined ? undefined : display.value(worst, unit, quantity));

function meanText({ averaging }: LimitResult, { words, number }: Display): string {
  const { limits } = words.report;
  const { spans } = words.text;
  if (!(averaging > 0)) return limits.anyTime;
  return limits.meanOver(averaging < 1 ? spans.hours(number(averaging * 24)) : spans.day(number(averaging)));
}

function oneRun(maker: Maker, { account, letter }: RunSummary, many: boolean): readonly HTMLElement[] {
  const { display } = maker;
  const words = display.words.report.limits;
  const { limits, title, startDate } = account;
  const passed = limits.filter((limit) => limit.passed).sort(worstFirst);
  const within = limits.filter((limit) => limit.judged && !limit.passed);
  const unjudged = limits.filter(({ judged }) => !judged);
  const name = many ? display.words.report.in(letter) : '';
  const rows = (caption: string, those: readonly LimitResult[]): HTMLElement =>
    table(
      maker,
      caption,
      columnsOf(display),
      those.map((limit) => limitRow(limit, startDate, display)),
      'stack',
    );
  const head = passed.length > mostPassed + 1 ? passed.slice(0, mostPassed) : passed;
  const rest = passed.slice(head.length);
  const passedText =
    passed.length === 0
      ? [maker.html('p', {}, words.none)]
      : [
          scrolling(maker, words.table(name), rows(words.caption(name), head)),
          ...(rest.length === 0
            ? []
            : [folded(maker, words.more(rest.length, name), rows(words.moreCaption(name), rest))]),
        ];
  const held = table(
    maker,
    words.heldCaption,
    [
      { name: words.limit },
      { name: words.judgedAs },
      { name: words.where },
      { name: words.whom },
      { name: words.nearest, number: true },
    ],
    within.map((limit) => [
      boundPhrase(limit, display),
      meanText(limit, display),
      placeText(limit.place, display),
      plain(limit.whom, display),
      worstOf(limit, display),
    ]),
  );
  return [
    ...(many ? [maker.html('h3', {}, runTitle(maker, letter, title))] : []),
    ...passedText,
    ...(within.length === 0
      ? []
      : [
          maker.html(
            'details',
            {},
            maker.html('summary', {}, words.held(within.length)),
            scrolling(maker, words.heldTable(name), held),
          ),
        ]),
    ...(unjudged.length === 0 ? [] : [maker.html('p', { class: 'note' }, words.unjudged(unjudged.length))]),
  ];
}

/** The limits that each run passed: what, where, for whom, when, for how long, how far and by which source; and their charts. */
export function limitsSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const parts = runs.flatMap((run) => oneRun(maker, run, runs.length > 1));
  return section(
    maker,
    'limits',
    maker.display.words.report.limits.title,
    ...parts,
    ...worstCharts(maker, runs),
  );
}

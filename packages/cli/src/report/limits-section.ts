import { type LimitResult, worstFirst } from '@leat/core';
import type { Child, Maker } from '@leat/view/pictures';
import { boundPhrase, boundUnit, day, plain, shown } from '@leat/view/text';
import { worstCharts } from './courses-section.js';
import type { RunSummary } from './run-summary.js';
import { runTitle, section } from './elements.js';
import { folded, scrolling, table, type Column } from './elements.js';

const columns: readonly Column[] = [
  { name: 'limit' },
  { name: 'where' },
  { name: 'for whom' },
  { name: 'first passed, day', number: true },
  { name: 'for, days', number: true },
  { name: 'farthest', number: true },
  { name: 'on day', number: true },
  { name: 'source' },
];

/** Most limits passed that stand open; of more than one beyond them the rest is folded. */
const mostPassed = 3;

function limitRow(limit: LimitResult): readonly Child[] {
  const { place, whom, first, total, worst, worstAt, source, page, mark } = limit;
  return [
    boundPhrase(limit),
    place,
    plain(whom),
    day(first),
    shown(total),
    `${shown(worst)}${boundUnit(limit)}`,
    day(worstAt),
    `${source}${page === '-' || page === '' ? '' : `, ${page}`} [${mark}]`,
  ];
}

const meanText = ({ averaging }: LimitResult): string =>
  averaging > 0
    ? `mean over ${averaging < 1 ? `${shown(averaging * 24)} h` : `${shown(averaging)} d`}`
    : 'at any time';

function oneRun(maker: Maker, { account, letter }: RunSummary, many: boolean): readonly HTMLElement[] {
  const { limits, title } = account;
  const passed = limits.filter((limit) => limit.passed).sort(worstFirst);
  const within = limits.filter((limit) => limit.judged && !limit.passed);
  const unjudged = limits.filter(({ judged }) => !judged);
  const name = many ? ` in ${letter}` : '';
  const rows = (caption: string, those: readonly LimitResult[]): HTMLElement =>
    table(maker, caption, columns, those.map(limitRow), 'stack');
  const head = passed.length > mostPassed + 1 ? passed.slice(0, mostPassed) : passed;
  const rest = passed.slice(head.length);
  const passedText =
    passed.length === 0
      ? [maker.html('p', {}, 'No limit that could be judged was passed.')]
      : [
          scrolling(
            maker,
            `Table of limits passed${name}`,
            rows(`Limits passed${name}, what harms fish most at the head`, head),
          ),
          ...(rest.length === 0
            ? []
            : [
                folded(
                  maker,
                  `${rest.length} more limits passed${name}`,
                  rows(`More limits passed${name}`, rest),
                ),
              ]),
        ];
  const held = table(
    maker,
    'Limits that were held',
    [
      { name: 'limit' },
      { name: 'judged as' },
      { name: 'where' },
      { name: 'for whom' },
      { name: 'nearest', number: true },
    ],
    within.map((limit) => [
      boundPhrase(limit),
      meanText(limit),
      limit.place,
      plain(limit.whom),
      shown(limit.worst),
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
            maker.html('summary', {}, `${within.length} limits were held`),
            scrolling(maker, `Limits held${name}`, held),
          ),
        ]),
    ...(unjudged.length === 0
      ? []
      : [
          maker.html(
            'p',
            { class: 'note' },
            `${unjudged.length} could not be judged: the run is shorter than their mean, or nobody they are for was there.`,
          ),
        ]),
  ];
}

/** The limits that each run passed: what, where, for whom, when, for how long, how far and by which source; and their charts. */
export function limitsSection(maker: Maker, runs: readonly RunSummary[]): HTMLElement {
  const parts = runs.flatMap((run) => oneRun(maker, run, runs.length > 1));
  return section(maker, 'limits', 'Limits passed', ...parts, ...worstCharts(maker, runs));
}

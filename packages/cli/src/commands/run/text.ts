import {
  type BibliographyEntry,
  type Budget,
  type Fates,
  fatesOf,
  type LimitResult,
  marks,
  type RunEvent,
  type Share,
  worstFirst,
  worstResidual,
} from '@leat/core';
import {
  afterLines,
  baseLines,
  andMore,
  boundSign,
  costLines,
  dateNames,
  day,
  dayNames,
  type Display,
  eventText,
  fatePhrase,
  harvestLines,
  percent,
  plain,
  placeText,
  plainDisplay,
  shown,
  verdictLines,
} from '@leat/view/text';
import { cautionLines } from '../shared/caution-lines.js';
import { beside, columns, wrap, linesText } from '../../terminal/columns.js';
import { monthlyHarvestLines } from './monthly-harvest.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';
import { keyQuantities } from '../shared/key-quantities.js';
import type { RunResults } from '@leat/view/documents';

const rows = (shares: readonly Share[], unit: string, display: Display): readonly (readonly string[])[] =>
  shares.map(({ name, amount, share }) => [
    `  ${fatePhrase(name, display)}`,
    display.amount(amount, unit),
    percent(share, display),
  ]);

/** Shares of a whole in amounts and percent, under a heading with the whole. */
function block(title: string, shares: readonly Share[], unit: string, display: Display): readonly string[] {
  const amount = shares.reduce((total, each) => total + each.amount, 0);
  const share = shares.reduce((total, each) => total + each.share, 0);
  return columns(
    [[title, display.amount(amount, unit), percent(share, display)], ...rows(shares, unit, display)],
    ['left', 'right', 'right'],
  );
}

/** The bibliography of a run: what it used, from where, and how that came here. */
export function sourceLines(entries: readonly BibliographyEntry[]): readonly string[] {
  return [
    'Sources of the numbers that were used',
    ...entries.flatMap(({ key, citation, mark, given, ids }) => [
      ...wrap(
        `[${mark}: ${marks[mark]}] ${key === citation ? '' : `${key}: `}${citation}` +
          (given === undefined ? '' : ` (given in ${given})`),
        98,
        '  ',
      ),
      ...wrap(`  ${ids.join(' ')}`, 98, '  '),
    ]),
  ];
}

/** Most lines of limits in a summary. */
const most = 8;

/** How far beyond, as a share of the limit (of one unit where the limit is 0). */
const distance = ({ worst = 0, value }: LimitResult): number =>
  Math.abs(worst - value) / (value === 0 ? 1 : Math.abs(value));

/** Limits of one kind passed by several at several places, by harm, then the longest. */
function merged(passed: readonly LimitResult[]): readonly (readonly LimitResult[])[] {
  const groups = new Map<string, LimitResult[]>();
  for (const limit of passed) {
    const [table] = limit.id.split('.');
    const key = `${table} ${limit.harm} ${limit.quantity} ${limit.direction}`;
    groups.set(key, [...(groups.get(key) ?? []), limit]);
  }
  return [...groups.values()]
    .map((group) => group.sort((a, b) => distance(b) - distance(a)))
    .sort((a, b) => worstFirst(longest(a), longest(b)));
}

/** Of a group of limits the one passed longest. */
const longest = (group: readonly LimitResult[]): LimitResult =>
  group.reduce((most, limit) => (limit.total > most.total ? limit : most));

/** Most letters of a name in the table of limits where whole names do not fit the screen. */
const nameLetters = 15;

const sourceOf = ({ source, mark }: LimitResult): string => `${source} ${mark}`;

/** Columns of the table of limits, and those that it may do without on a narrow screen, in that order. */
const limitColumns = ['passed', 'limit', 'worst', 'where', 'first', 'lasting', 'whom', ''] as const;
const spare = [[], ['whom'], ['whom', 'first']] as const;

/** The table of limits with the columns that fit the screen: whole names if they can stand. */
function fitting(
  rowsOf: (letters: number, dated: boolean) => readonly (readonly string[])[],
  { words }: Display,
): readonly string[] {
  const head = limitColumns.map((name) => (name === '' ? '' : words.run.limits[name]));
  const forms = spare.flatMap((without) =>
    [Infinity, nameLetters].flatMap((letters) => [true, false].map((dated) => ({ without, letters, dated }))),
  );
  const tables = forms.map(({ without, letters, dated }) => {
    const kept = limitColumns.flatMap((name, i) =>
      (without as readonly string[]).includes(name) ? [] : [i],
    );
    return columns(
      [head, ...rowsOf(letters, dated)].map((cells) => kept.map((i) => cells[i])),
      kept.map(() => 'left' as const),
    );
  });
  const fits = (lines: readonly string[]): boolean =>
    lines.every((line) => Array.from(line).length <= screenWidth());
  return tables.find(fits) ?? tables[tables.length - 1];
}

/** What a row of limits is told with: days, and the numbers of sources. */
interface RowTelling {
  readonly sources: readonly string[];
  readonly letters: number;
  readonly on: (time: number | undefined) => string;
  readonly display: Display;
}

function row(
  group: readonly LimitResult[],
  { sources, letters, on, display }: RowTelling,
): readonly string[] {
  const [worst] = group;
  const first = Math.min(...group.map((limit) => limit.first ?? Infinity));
  const longest = Math.max(...group.map(({ total }) => total));
  const farthest = display.number(
    worst.worst === undefined ? undefined : display.value(worst.worst, worst.unit, worst.quantity),
  );
  return [
    plain(worst.quantity, display),
    boundSign(worst, display),
    `${farthest} ${on(worst.worstAt)}`,
    andMore(
      group.map(({ place }) => placeText(place, display)),
      letters,
    ),
    on(first),
    display.words.run.days(shown(longest, display)),
    andMore(
      group.map(({ whom }) => plain(whom, display)),
      letters,
    ),
    `[${sources.indexOf(sourceOf(worst)) + 1}]`,
  ];
}

/** The limits that a run passed: what, how far, where, when first, how long, for whom, by which source. */
export function limitLines(
  limits: readonly LimitResult[],
  { every, startDate }: { readonly every: number; readonly startDate: string },
  display: Display = plainDisplay,
): readonly string[] {
  const words = display.words.run;
  const groups = merged(limits.filter(({ passed }) => passed));
  const unjudged = limits.filter(({ judged }) => !judged).length;
  const listed = groups.slice(0, most);
  const sources = [...new Set(listed.map(([worst]) => sourceOf(worst)))];
  const dates = dateNames(startDate, display);
  const on =
    (dated: boolean) =>
    (time: number | undefined): string =>
      dated && time !== undefined && Number.isFinite(time)
        ? words.dayAndDate(day(time, display), dates(time))
        : words.day(day(time, display));
  const table =
    groups.length === 0
      ? [words.limits.none]
      : fitting(
          (letters, dated) => listed.map((group) => row(group, { sources, letters, on: on(dated), display })),
          display,
        );
  const left = groups.length > most ? [words.limits.more(groups.length - most)] : [];
  const short = unjudged > 0 ? [words.limits.unjudged(unjudged)] : [];
  const blind = limits.some(({ judged, resolved }) => judged && !resolved)
    ? [words.limits.blind(shown(every, display))]
    : [];
  const notes = [...left, ...short, ...blind].join('; ');
  const legend = sources.map((source, index) => `[${index + 1}] ${source}`).join('  ');
  return [...table, ...wrap(legend, screenWidth()), ...wrap(notes, screenWidth(), '  ')];
}

function head({ run, manifest }: RunResults, display: Display): readonly string[] {
  const { scenario } = run.model;
  const words = display.words.run.head;
  const volume = scenario.vessels.reduce((total, vessel) => total + vessel.volume, 0);
  const fish = scenario.fish.reduce((total, { number }) => total + number, 0);
  const area = scenario.plantings.reduce((total, planting) => total + planting.area, 0);
  const parts = [
    scenario.saved === undefined
      ? words.days(scenario.days, scenario.startDate)
      : words.goingOn(shown(scenario.saved.time, display), scenario.days, scenario.startDate),
    words.vessels(scenario.vessels.length, display.amount(volume, 'm3')),
    words.fish(fish),
    words.planted(display.amount(area, 'm2')),
    words.scenario(manifest.scenario.slice(0, 8)),
  ];
  return [scenario.title, parts.join(' · ')];
}

function eventLine(events: readonly RunEvent[], display: Display): readonly string[] {
  const counts = new Map<string, number>();
  for (const { kind } of events) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  if (counts.size === 0) return [];
  const words = display.words.run;
  return [
    words.events([...counts].map(([kind, count]) => words.count(count, told(kind, display))).join(', ')),
  ];
}

/** The kind of an event as the run names it, in the words of the language. */
const told = (kind: string, { words }: Display): string => words.names.terms[kind] ?? kind;

/** Most actions named that did less than was asked for. */
const mostShort = 4;

/** The actions that did less than was asked for, one by one. */
function shortLines(events: readonly RunEvent[], startDate: string, display: Display): readonly string[] {
  const all = events.filter(({ short: less }) => less);
  if (all.length === 0) return [];
  const words = display.words.run;
  const dates = dateNames(startDate, display);
  const listed = all
    .slice(0, mostShort)
    .map(({ time, kind, place, text }) =>
      words.short(
        words.dayAndDate(day(time, display), dates(time)),
        told(kind, display),
        place,
        eventText(text, display),
      ),
    );
  const left = all.length - listed.length;
  return [...listed, ...(left > 0 ? [words.moreShort(left)] : [])];
}

function workLine({ run, budgets }: RunResults): readonly string[] {
  const { work, integrator, tolerance } = run;
  const { budget, share } = worstResidual(budgets);
  return [
    `work: ${integrator} at ${tolerance.toExponential()}, ${work.steps} steps (${work.rejected} rejected, ${work.passed} stretches passed), ` +
      `${work.evaluations} evaluations, ${work.jacobians} Jacobians`,
    `balance: worst is ${budget.quantity} of ${budget.place}, ${share.toExponential(1)} of throughput`,
  ];
}

/** Where something came from and went to in the whole system. */
function systemFates(budgets: readonly Budget[], quantity: 'nitrogen' | 'water'): Fates {
  const budget = budgets.find((each) => each.place === 'system' && each.quantity === quantity);
  if (budget === undefined) throw new Error(`no budget of ${quantity}`);
  return fatesOf(budget);
}

/** Two blocks side by side where the screen is wide enough, else one under the other. */
function besideOrUnder(left: readonly string[], right: readonly string[]): readonly string[] {
  const at = Math.floor(screenWidth() / 2);
  const widest = (lines: readonly string[]): number =>
    Math.max(...lines.map((line) => Array.from(line).length));
  const fits = widest(left) < at && at + widest(right) <= screenWidth();
  return fits ? beside(left, right, at) : [...left, '', ...right];
}

/** Lines each wrapped under its own start, and an empty one behind them; nothing of nothing. */
function paragraph(lines: readonly string[]): readonly string[] {
  if (lines.length === 0) return [];
  const wrapped = lines.flatMap((line) => {
    const indent = /^ */.exec(line)?.[0] ?? '';
    return wrap(line.trim(), screenWidth() - indent.length, '  ').map((each) => indent + each);
  });
  return [...wrapped, ''];
}

/** The summary of a run, one screen: as wide as the screen and about fifty lines. */
export function summary(
  results: RunResults,
  style: Style,
  { detail = false, display = plainDisplay }: { readonly detail?: boolean; readonly display?: Display } = {},
): string {
  const { run, series, budgets, limits, verdict, harvest, after } = results;
  const { startDate } = run.model.scenario;
  const words = display.words.run;
  const [nitrogen, water] = [systemFates(budgets, 'nitrogen'), systemFates(budgets, 'water')];
  const [title, what] = head(results, display);
  const { outcome } = run;
  const ended =
    outcome.kind === 'done'
      ? []
      : [style.warn(words.brokenOff(dayNames(startDate, display)(outcome.time), outcome.kind))];
  const lines = [
    ...wrap(title, screenWidth(), '  ').map((line) => style.strong(line)),
    ...wrap(what, screenWidth(), '  '),
    ...ended,
    '',
    ...verdictLines(verdict, startDate, display).flatMap((line, i) =>
      wrap(line, screenWidth(), '  ').map((each) => (i === 0 ? style.strong(each) : each)),
    ),
    '',
    ...paragraph([
      ...harvestLines(harvest, display),
      ...monthlyHarvestLines(harvest, display),
      ...(results.costs === undefined ? [] : costLines(results.costs, display)),
    ]),
    ...paragraph(afterLines(after, startDate, display)),
    ...keyQuantities(run, series, screenWidth(), display),
    '',
    ...limitLines(limits, run.model.scenario, display),
    '',
    ...besideOrUnder(
      [
        ...block(words.cameFrom.nitrogen, nitrogen.from, 'g', display),
        '',
        ...block(words.cameFrom.water, water.from, 'm3', display),
        ...block(words.wentTo.water, water.to, 'm3', display),
      ],
      block(words.wentTo.nitrogen, nitrogen.to, 'g', display),
    ),
    '',
    ...[
      ...baseLines(results.base, display),
      ...eventLine(run.events, display),
      ...shortLines(run.events, startDate, display),
      ...(detail ? workLine(results) : []),
    ].flatMap((line) => wrap(line, screenWidth(), '  ')),
    ...cautionLines(style, display),
  ];
  return linesText(lines);
}

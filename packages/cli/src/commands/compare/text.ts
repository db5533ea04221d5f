import {
  apartness,
  type ComparedFates,
  type ComparedLimit,
  type ComparedQuantity,
  type Comparison,
  type Costs,
  type FileChange,
  type Outcome,
  type RunVerdict,
} from '@leat/core';
import {
  andMore,
  betterLine,
  boundLine,
  dateNames,
  day,
  dayNames,
  type DayName,
  type Display,
  fatePhrase,
  listed,
  meaningWords,
  moneyText,
  percent,
  plain,
  plainDisplay,
  quantityOf,
  seriesPhrase,
  short,
  verdictLines,
} from '@leat/view/text';
import { cautionLines } from '../shared/caution-lines.js';
import { columns, wrap, linesText } from '../../terminal/columns.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';

/** Most kinds of limits that are listed. */
const most = 8;

/** Limits of one kind that the same runs passed. */
function merged(limits: readonly ComparedLimit[]): readonly (readonly ComparedLimit[])[] {
  const groups = new Map<string, ComparedLimit[]>();
  for (const limit of limits) {
    const [table] = limit.id.split('.');
    const pattern = limit.runs.map((verdict) => (verdict?.passed === true ? 1 : 0)).join('');
    const key = `${table} ${limit.quantity} ${limit.direction} ${pattern}`;
    groups.set(key, [...(groups.get(key) ?? []), limit]);
  }
  return [...groups.values()];
}

/** What a comparison is told with: names of the runs, their days, and the display. */
interface Telling {
  readonly names: readonly string[];
  /** Days of each run, short: `d 40 (9 Nov)`. */
  readonly on: readonly ((time: number | undefined) => string)[];
  readonly display: Display;
}

function verdictText(
  i: number,
  { unit, quantity }: ComparedLimit,
  verdict: ComparedLimit['runs'][number],
  { names, on, display }: Telling,
): string {
  const words = display.words.compare;
  if (verdict?.judged !== true) return words.notJudged(names[i]);
  const far = verdict.worst === undefined ? undefined : display.value(verdict.worst, unit, quantity);
  const worst = words.worst(display.number(far), on[i](verdict.worstAt));
  return verdict.passed
    ? words.passed(names[i], on[i](verdict.first), display.number(verdict.total), worst)
    : words.kept(names[i], worst);
}

function lines(group: readonly ComparedLimit[], telling: Telling): readonly string[] {
  const { display } = telling;
  const wide = screenWidth();
  const [first] = group;
  const where = andMore(group.map(({ place }) => place));
  const whom = andMore(group.map((each) => display.words.names.terms[each.whom] ?? each.whom));
  const verdicts = first.runs.map((verdict, i) => verdictText(i, first, verdict, telling)).join('; ');
  const line = display.words.compare.limit(
    boundLine(first, display),
    where,
    whom,
    `${first.source} ${first.mark}`,
  );
  return [...wrap(`  ${line}`, wide, '    '), ...wrap(verdicts, wide - 4).map((line) => `    ${line}`)];
}

/** The limits that some runs passed and others kept: each of the runs on it; of several places, the first passed. */
function comparedLimitLines(limits: readonly ComparedLimit[], telling: Telling): readonly string[] {
  const words = telling.display.words.compare;
  const groups = merged(limits);
  if (groups.length === 0) return [words.noLimits];
  return [
    words.limits,
    ...groups.slice(0, most).flatMap((group) => lines(group, telling)),
    ...(groups.length > most ? [`  ${words.more(groups.length - most)}`] : []),
  ];
}

/** A run as it is named in a comparison. */
export interface NamedRun {
  /** A letter. */
  readonly name: string;
  readonly file: string;
  readonly title: string;
  readonly outcome: Outcome;
  readonly verdict: RunVerdict;
  /** By the prices of its scenario; absent: it has none. */
  readonly costs?: Costs;
  /** Date of day 0. */
  readonly startDate: string;
}

/** Below this share two runs are alike: the tables show no difference. */
const alike = 5e-4;

const signed = (share: number, display: Display): string =>
  Number.isNaN(share) ? '-' : `${share > 0 ? '+' : ''}${percent(share, display)}`;

function quantityRows(
  { name, unit, runs, end, highest }: ComparedQuantity,
  at: readonly number[],
  { on, display }: Telling,
  letters: number,
): string[][] {
  const words = display.words.compare;
  const quantity = quantityOf(name);
  const label = short(seriesPhrase(name, display), letters);
  const told = (value: number | undefined): string =>
    display.number(value === undefined ? undefined : display.value(value, unit, quantity));
  const shownUnit = display.unit(unit, quantity) || display.words.text.unit(unit);
  return [
    [label, shownUnit, words.end, ...at.flatMap((i) => [told(runs[i]?.end), '']), signed(end, display)],
    [
      '',
      '',
      screenWidth() < 100 ? words.most : words.highest,
      ...at.flatMap((i) => [told(runs[i]?.highest), runs[i] === null ? '' : on[i](runs[i].highestAt)]),
      signed(highest, display),
    ],
  ];
}

function quantityLines(
  quantities: readonly ComparedQuantity[],
  telling: Telling,
  at: readonly number[],
): readonly string[] {
  const { names, display } = telling;
  const words = display.words.compare;
  const apart = quantities.filter((quantity) => Math.abs(apartness(quantity)) >= alike);
  const same = quantities.filter((quantity) => !apart.includes(quantity)).map(({ name }) => name);
  const head = [
    '',
    words.unit,
    '',
    ...at.flatMap((i) => [names[i], '']),
    names.length > 2 ? words.farthest : 'B - A',
  ];
  const sides = ['left', 'left', 'left', ...at.flatMap(() => ['right', 'left'] as const), 'right'] as const;
  const rows = (letters: number): readonly string[] =>
    columns([head, ...apart.flatMap((each) => quantityRows(each, at, telling, letters))], sides);
  const labels = apart.map(({ name }) => Array.from(seriesPhrase(name, display)).length);
  const longest = Math.min(30, Math.max(0, ...labels));
  const over = Math.max(0, ...rows(longest).map((line) => Array.from(line).length - screenWidth()));
  return [
    ...(apart.length === 0 ? [] : rows(Math.max(longest - over, 12))),
    ...wrap(
      same.length === 0
        ? ''
        : words.alike(
            display.number(alike * 100),
            listed(
              same.map((name) => seriesPhrase(name, display)),
              display,
            ),
          ),
      screenWidth(),
      '  ',
    ),
  ];
}

/** What the runs cost and fetched, where their files give prices: a row for each thing that has one, and what is left over. */
function costTable(runs: readonly NamedRun[], display: Display): readonly string[] {
  const words = display.words.compare;
  const priced = runs.filter(({ costs }) => costs !== undefined);
  if (priced.length === 0) return [];
  const all = priced.flatMap(({ costs }) => costs?.rows ?? []);
  const rows = [...new Set(all.map(({ kind, name }) => `${kind} ${name}`))];
  const rowText = (row: string): string => {
    const [kind, ...name] = row.split(' ');
    return `${kind === 'spent' ? words.spent : words.earned} ${plain(name.join(' '), display)}`;
  };
  const cell = (costs: Costs | undefined, row: string): string => {
    const found = costs?.rows.find(({ kind, name }) => `${kind} ${name}` === row);
    return found === undefined ? '-' : moneyText(found.amount, display);
  };
  const currencies = [...new Set(priced.map(({ costs }) => costs?.currency ?? ''))].filter(
    (word) => word !== '',
  );
  const money = currencies.length === 0 ? '' : ` (${currencies.join(', ')})`;
  return [
    '',
    ...columns(
      [
        [`${words.cost}${money}`, ...runs.map(({ name }) => name)],
        ...rows.map((row) => [`  ${rowText(row)}`, ...runs.map(({ costs }) => cell(costs, row))]),
        [
          `  ${words.leftOver}`,
          ...runs.map(({ costs }) => (costs ? moneyText(costs.earned - costs.spent, display) : '-')),
        ],
      ],
      ['left', ...runs.map(() => 'right' as const)],
    ),
    ...(currencies.length > 1 ? [`  ${words.currencies}`] : []),
  ];
}

/** Where a quantity came from and went in each run; what went closes to 100 percent of what came. */
function fateLines(
  title: 'nitrogen' | 'water',
  unit: string,
  { from, to }: ComparedFates,
  { names, display }: Telling,
  at: readonly number[],
): readonly string[] {
  const words = display.words.compare;
  const all = (parts: ComparedFates['from']): string[] =>
    at.flatMap((i) => [
      display.amount(
        parts.reduce((total, { runs }) => total + runs[i].amount, 0),
        unit,
      ),
      percent(
        parts.reduce((total, { runs }) => total + runs[i].share, 0),
        display,
      ),
    ]);
  const rows = (parts: ComparedFates['from']): string[][] =>
    parts.map(({ name, runs }) => [
      `  ${fatePhrase(name, display)}`,
      ...at.flatMap((i) => [display.amount(runs[i].amount, unit), percent(runs[i].share, display)]),
    ]);
  return columns(
    [
      ['', ...at.flatMap((i) => [names[i], ''])],
      [words.cameFrom(title), ...all(from)],
      ...rows(from),
      [words.wentTo(title), ...all(to)],
      ...rows(to),
    ],
    ['left', ...at.flatMap(() => ['right', 'right'] as const)],
  );
}

function partingLines(
  { partings, apart, quantities }: Comparison,
  { names, display }: Telling,
  name: DayName,
): readonly string[] {
  const words = display.words.compare;
  const [first, ...others] = names;
  const share = `${display.number(apart * 100)} %`;
  return partings.flatMap((parting, i) => {
    if (parting === null) return wrap(words.never(others[i], first, share), screenWidth(), '  ');
    const unit = quantities.find(({ name }) => name === parting.quantity)?.unit ?? '';
    const told = (value: number): string =>
      display.number(display.value(value, unit, quantityOf(parting.quantity)));
    return wrap(
      words.parting(
        others[i],
        first,
        name(parting.day),
        seriesPhrase(parting.quantity, display),
        [
          told(parting.other),
          `${told(parting.first)} ${display.unit(unit, quantityOf(parting.quantity)) || unit}`,
        ],
        share,
      ),
      screenWidth(),
      '  ',
    );
  });
}

function headLines(
  runs: readonly NamedRun[],
  ends: readonly number[],
  style: Style,
  display: Display,
): readonly string[] {
  const words = display.words.compare;
  const lines = columns(
    runs.map(({ name, file, title }, i) => [name, `${day(ends[i], display)} d`, short(file, 36), title]),
    ['left', 'right', 'left', 'left'],
  );
  const broken = runs.filter(({ outcome }) => outcome.kind !== 'done');
  const uneven = ends.some((end) => end !== ends[0]);
  return [
    ...lines.map((line) => style.strong(short(line, screenWidth()))),
    ...broken.map(({ name, outcome, startDate }) =>
      style.warn(words.brokeOff(name, dayNames(startDate, display)(outcome.time), outcome.kind)),
    ),
    ...(uneven ? [style.warn(words.uneven)] : []),
  ];
}

/** The first run with each few of the others: as many as a narrow screen has room for. */
function tables(count: number): readonly (readonly number[])[] {
  const beside = screenWidth() < 100 ? 1 : 2;
  const starts = Array.from({ length: Math.ceil((count - 1) / beside) }, (_, table) => 1 + table * beside);
  return starts.map((start) => [
    0,
    ...Array.from({ length: Math.min(beside, count - start) }, (_, i) => start + i),
  ]);
}

/** Most differences of two files that are told. */
const mostChanges = 8;

/** What the files say otherwise, by what it means; of saved runs nothing. */
function changedLines(
  changes: readonly (readonly FileChange[] | null)[],
  names: readonly string[],
  display: Display,
): readonly string[] {
  const [first, ...others] = names;
  return changes.flatMap((each, i) => {
    if (each === null) return [];
    const words = display.words.compare;
    if (each.length === 0) return [words.saysTheSame(others[i], first)];
    const told = meaningWords(each, display);
    const rest = told.length - mostChanges;
    return [
      words.otherwise(others[i], first),
      ...told.slice(0, mostChanges).flatMap((line) => wrap(`  ${line}`, screenWidth(), '    ')),
      ...(rest > 0 ? [`  ${words.andMore(rest)}`] : []),
    ];
  });
}

/** Runs side by side for reading, as wide as the screen. `changes`: of each other run, what its file says otherwise. */
export function comparisonText(
  comparison: Comparison,
  runs: readonly NamedRun[],
  changes: readonly (readonly FileChange[] | null)[],
  style: Style,
  display: Display = plainDisplay,
): string {
  const { quantities, limits, nitrogen, water, ends } = comparison;
  const names = runs.map(({ name }) => name);
  const dated = screenWidth() >= 100;
  const on = runs.map(({ startDate }) => {
    const dates = dateNames(startDate, display);
    return (time: number | undefined): string => {
      const told = day(time, display);
      return dated && time !== undefined && Number.isFinite(time)
        ? display.words.run.dayAndDate(told, dates(time))
        : display.words.run.day(told);
    };
  });
  const telling = { names, on, display };
  const each = (lines: (at: readonly number[]) => readonly string[]): readonly string[] =>
    tables(names.length).flatMap((at) => ['', ...lines(at)]);
  const plain = (lines: readonly string[]): readonly string[] =>
    lines.map((line) => short(line, screenWidth()));
  const lines = [
    ...headLines(runs, ends, style, display),
    '',
    ...wrap(betterLine(runs, display), screenWidth(), '  ').map((line) => style.strong(line)),
    ...changedLines(changes, names, display),
    '',
    ...runs.flatMap(({ name, verdict, startDate }) =>
      verdictLines(verdict, startDate, display).flatMap((line, i) =>
        wrap(`${i === 0 ? name : ' '.repeat(name.length)} ${line}`, screenWidth(), '    '),
      ),
    ),
    ...costTable(runs, display),
    '',
    ...plain(partingLines(comparison, telling, dayNames(runs[0].startDate, display))),
    '',
    display.words.compare.differences,
    ...plain(each((at) => quantityLines(quantities, telling, at))).slice(1),
    '',
    ...plain(comparedLimitLines(limits, telling)),
    ...plain(each((at) => fateLines('nitrogen', 'g', nitrogen, telling, at))),
    ...plain(each((at) => fateLines('water', 'm3', water, telling, at))),
    '',
    ...cautionLines(style, display),
  ];
  return linesText(lines);
}

import {
  apartness,
  type ComparedFates,
  type ComparedLimit,
  type ComparedQuantity,
  type Comparison,
  type Costs,
  type Outcome,
  type RunVerdict,
} from '@leat/core';
import {
  andMore,
  betterLine,
  boundLine,
  day,
  moneyText,
  plain,
  percent,
  short,
  shown,
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

function verdictText(name: string, verdict: ComparedLimit['runs'][number]): string {
  if (verdict?.judged !== true) return `${name} not judged`;
  const worst = `worst ${shown(verdict.worst)} d ${day(verdict.worstAt)}`;
  return verdict.passed
    ? `${name} PASSED from d ${day(verdict.first)} for ${shown(verdict.total)} d, ${worst}`
    : `${name} kept, ${worst}`;
}

function lines(group: readonly ComparedLimit[], names: readonly string[]): readonly string[] {
  const [first] = group;
  const where = andMore(group.map(({ place }) => place));
  const whom = andMore(group.map((each) => each.whom));
  const verdicts = first.runs.map((verdict, i) => verdictText(names[i], verdict)).join('; ');
  return [
    ...wrap(`  ${boundLine(first)} at ${where}, for ${whom} [${first.source} ${first.mark}]`, 100, '    '),
    ...wrap(verdicts, 96).map((line) => `    ${line}`),
  ];
}

/** The limits that some runs passed and others kept: each of the runs on it; of several places, the first passed. */
function comparedLimitLines(limits: readonly ComparedLimit[], names: readonly string[]): readonly string[] {
  const groups = merged(limits);
  if (groups.length === 0) return ['limits passed in some and not in all: none'];
  return [
    'limits passed in some and not in all',
    ...groups.slice(0, most).flatMap((group) => lines(group, names)),
    ...(groups.length > most ? [`  ${groups.length - most} more: see --json`] : []),
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

const signed = (share: number): string =>
  Number.isNaN(share) ? '-' : `${share > 0 ? '+' : ''}${percent(share)}`;

function quantityRows(
  { name, unit, runs, end, highest }: ComparedQuantity,
  at: readonly number[],
): string[][] {
  const label = short(name, 30);
  return [
    [label, unit, 'end', ...at.flatMap((i) => [shown(runs[i]?.end), '']), signed(end)],
    [
      '',
      '',
      screenWidth() < 100 ? 'most' : 'highest',
      ...at.flatMap((i) => [shown(runs[i]?.highest), runs[i] === null ? '' : `d ${day(runs[i].highestAt)}`]),
      signed(highest),
    ],
  ];
}

function quantityLines(
  quantities: readonly ComparedQuantity[],
  names: readonly string[],
  at: readonly number[],
): readonly string[] {
  const apart = quantities.filter((quantity) => Math.abs(apartness(quantity)) >= alike);
  const same = quantities.filter((quantity) => !apart.includes(quantity)).map(({ name }) => name);
  const head = [
    '',
    'unit',
    '',
    ...at.flatMap((i) => [names[i], '']),
    names.length > 2 ? 'farthest' : 'B - A',
  ];
  const sides = ['left', 'left', 'left', ...at.flatMap(() => ['right', 'left'] as const), 'right'] as const;
  return [
    ...(apart.length === 0 ? [] : columns([head, ...apart.flatMap((each) => quantityRows(each, at))], sides)),
    ...wrap(
      same.length === 0 ? '' : `alike within ${alike * 100} %: ${same.join(', ')}`,
      screenWidth(),
      '  ',
    ),
  ];
}

/** What the runs cost and fetched, where their files give prices: a row for each thing that has one, and what is left over. */
function costTable(runs: readonly NamedRun[]): readonly string[] {
  const priced = runs.filter(({ costs }) => costs !== undefined);
  if (priced.length === 0) return [];
  const all = priced.flatMap(({ costs }) => costs?.rows ?? []);
  const rows = [...new Set(all.map(({ kind, name }) => `${kind} ${name}`))];
  const cell = (costs: Costs | undefined, row: string): string => {
    const found = costs?.rows.find(({ kind, name }) => `${kind} ${name}` === row);
    return found === undefined ? '-' : moneyText(found.amount);
  };
  const currencies = [...new Set(priced.map(({ costs }) => costs?.currency ?? ''))].filter(
    (word) => word !== '',
  );
  const money = currencies.length === 0 ? '' : ` (${currencies.join(', ')})`;
  return [
    '',
    ...columns(
      [
        [`cost${money}`, ...runs.map(({ name }) => name)],
        ...rows.map((row) => [`  ${plain(row)}`, ...runs.map(({ costs }) => cell(costs, row))]),
        ['  left over', ...runs.map(({ costs }) => (costs ? moneyText(costs.earned - costs.spent) : '-'))],
      ],
      ['left', ...runs.map(() => 'right' as const)],
    ),
    ...(currencies.length > 1 ? ['  not of one currency: not to be held against each other'] : []),
  ];
}

/** Where a quantity came from and went in each run; what went closes to 100 percent of what came. */
function fateLines(
  title: string,
  unit: string,
  { from, to }: ComparedFates,
  names: readonly string[],
  at: readonly number[],
): readonly string[] {
  const all = (parts: ComparedFates['from']): string[] =>
    at.flatMap((i) => [
      `${shown(parts.reduce((total, { runs }) => total + runs[i].amount, 0))} ${unit}`,
      percent(parts.reduce((total, { runs }) => total + runs[i].share, 0)),
    ]);
  const rows = (parts: ComparedFates['from']): string[][] =>
    parts.map(({ name, runs }) => [
      `  ${name}`,
      ...at.flatMap((i) => [`${shown(runs[i].amount)} ${unit}`, percent(runs[i].share)]),
    ]);
  return columns(
    [
      ['', ...at.flatMap((i) => [names[i], ''])],
      [`${title} came from`, ...all(from)],
      ...rows(from),
      [`${title} went to`, ...all(to)],
      ...rows(to),
    ],
    ['left', ...at.flatMap(() => ['right', 'right'] as const)],
  );
}

function partingLines(
  { partings, apart, quantities }: Comparison,
  names: readonly string[],
): readonly string[] {
  const [first, ...others] = names;
  const share = `${shown(apart * 100)} %`;
  return partings.flatMap((parting, i) => {
    if (parting === null)
      return [`${others[i]} never differs from ${first} by more than ${share} of the highest of a quantity`];
    const unit = quantities.find(({ name }) => name === parting.quantity)?.unit ?? '';
    return wrap(
      `${others[i]} first differs from ${first} on day ${day(parting.day)}: ${parting.quantity} is ` +
        `${shown(parting.other)} against ${shown(parting.first)} ${unit}, more than ${share} of its highest apart`,
      screenWidth(),
      '  ',
    );
  });
}

function headLines(runs: readonly NamedRun[], ends: readonly number[], style: Style): readonly string[] {
  const lines = columns(
    runs.map(({ name, file, title }, i) => [name, `${day(ends[i])} d`, short(file, 36), title]),
    ['left', 'right', 'left', 'left'],
  );
  const broken = runs.filter(({ outcome }) => outcome.kind !== 'done');
  const uneven = ends.some((end) => end !== ends[0]);
  return [
    ...lines.map((line) => style.strong(short(line, screenWidth()))),
    ...broken.map(({ name, outcome }) =>
      style.warn(`${name} BROKE OFF on day ${shown(outcome.time)}: ${outcome.kind}. Its end is there.`),
    ),
    ...(uneven ? [style.warn('The runs are not of one length: each end is that of its own run.')] : []),
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

/** Runs side by side for reading, as wide as the screen. */
export function comparisonText(comparison: Comparison, runs: readonly NamedRun[], style: Style): string {
  const { quantities, limits, nitrogen, water, ends } = comparison;
  const names = runs.map(({ name }) => name);
  const each = (lines: (at: readonly number[]) => readonly string[]): readonly string[] =>
    tables(names.length).flatMap((at) => ['', ...lines(at)]);
  const plain = (lines: readonly string[]): readonly string[] =>
    lines.map((line) => short(line, screenWidth()));
  const lines = [
    ...headLines(runs, ends, style),
    '',
    ...runs.flatMap(({ name, verdict, startDate }) =>
      verdictLines(verdict, startDate).flatMap((line, i) =>
        wrap(`${i === 0 ? name : ' '.repeat(name.length)} ${line}`, screenWidth(), '    '),
      ),
    ),
    ...wrap(betterLine(runs), screenWidth(), '  ').map((line) => style.strong(line)),
    ...costTable(runs),
    '',
    ...plain(partingLines(comparison, names)),
    '',
    'largest differences first, in percent of the largest size in any run',
    ...plain(each((at) => quantityLines(quantities, names, at))).slice(1),
    '',
    ...plain(comparedLimitLines(limits, names)),
    ...plain(each((at) => fateLines('nitrogen', 'g', nitrogen, names, at))),
    ...plain(each((at) => fateLines('water', 'm3', water, names, at))),
    '',
    ...cautionLines(style),
  ];
  return linesText(lines);
}

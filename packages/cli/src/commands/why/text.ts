import { groupParts, type Difference, type DifferencePart } from '@leat/core';
import {
  decadeOf,
  dayNames,
  type Display,
  listed,
  meaningWords,
  percent,
  seriesPhrase,
  short,
  shown,
} from '@leat/view/text';
import { cautionLines } from '../shared/caution-lines.js';
import { columns, wrap, linesText } from '../../terminal/columns.js';
import { screenWidth } from '../../terminal/width.js';
import type { Style } from '../../terminal/style.js';
import type { ByChange } from './by-change.js';

/** A moment that was asked about. */
export interface NamedMoment {
  readonly file: string;
  readonly title: string;
  /** Date of day 0, `yyyy-mm-dd`. */
  readonly startDate: string;
  /** d. */
  readonly day: number;
}

/** Most causes in the sentence, and the share of the largest below which a cause is left to the table. */
const most = 4;
const least = 0.02;

/** Decimals that give three digits of the largest of some values, and two of their sum. */
function decimalsOf(values: readonly number[], total: number): number {
  const of = (value: number, digits: number): number => (value === 0 ? 0 : digits - 1 - decadeOf(value));
  const largest = Math.max(...values.map(Math.abs), Math.abs(total));
  return Math.min(12, Math.max(0, of(largest, 3), of(total, 2)));
}

/** A number with its sign. */
function signed(value: number, decimals: number): string {
  const size = Math.abs(value).toFixed(decimals);
  if (Number(size) === 0) return size;
  return `${value < 0 ? '-' : '+'}${size}`;
}

/**
 * Values rounded so that they sum to the rounded total: what is left of rounding goes to those that were rounded farthest
 * the other way.
 */
function roundedToSum(values: readonly number[], total: number, decimals: number): readonly number[] {
  const unit = Number(`1e-${decimals}`);
  const rounded = values.map((value) => Math.round(value / unit));
  let left = Math.round(total / unit) - rounded.reduce((sum, value) => sum + value, 0);
  const step = Math.sign(left);
  const order = values
    .map((value, i) => ({ i, error: step * (value / unit - rounded[i]) }))
    .sort((p, q) => q.error - p.error);
  for (const { i } of order) {
    if (left === 0) break;
    rounded[i] += step;
    left -= step;
  }
  return rounded.map((value) => value * unit);
}

/** What a cause did. Between two days of one run everything went on, so neither more nor less is said. */
function cause({ name, did }: Pick<DifferencePart, 'name' | 'did'>, oneRun: boolean): string {
  return oneRun || did === undefined ? name : `${did} ${name}`;
}

/** What is told of one cause. */
interface Term {
  readonly name: string;
  readonly value: number;
}

/** The causes in a sentence, the largest first; small ones together. */
function sentence(terms: readonly Term[], total: number): string {
  const decimals = decimalsOf(
    terms.map(({ value }) => value),
    total,
  );
  const bound = least * Math.abs(terms[0]?.value ?? 0);
  const told = terms.filter(({ value }) => Math.abs(value) >= bound).slice(0, most);
  const others = terms.slice(told.length);
  const rest = others.reduce((sum, { value }) => sum + value, 0);
  const all = [...told, ...(others.length === 0 ? [] : [{ name: `${others.length} smaller`, value: rest }])];
  const values = roundedToSum(
    all.map(({ value }) => value),
    total,
    decimals,
  );
  return listed(all.map(({ name }, i) => `${signed(values[i], decimals)} by ${name}`));
}

/** A quantity at both moments and what is between them, in the units that are shown. */
interface Shown {
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  /** A difference of the quantity. */
  readonly change: (value: number) => number;
}

function shownOf(
  quantity: string,
  unit: string,
  told: { readonly from: number; readonly to: number },
  display: Display,
): Shown {
  const [sort] = quantity.split('@');
  const value = (of: number): number => display.value(of, unit, sort);
  // A difference has no zero of its own, as degrees have.
  const zero = value(0);
  return {
    unit: display.unit(unit, sort),
    ...{ from: value(told.from), to: value(told.to) },
    change: (of) => value(of) - zero,
  };
}

/** How much more or less in the second than in the first. */
function answer(
  quantity: string,
  told: Shown,
  [from, to]: readonly [NamedMoment, NamedMoment],
  oneRun: boolean,
): string {
  const { unit } = told;
  const on = ({ startDate, day }: NamedMoment): string => `on ${dayNames(startDate)(day)}`;
  const change = told.to - told.from;
  const withUnit = (value: number): string => `${shown(value)} ${unit}`.trimEnd();
  const [at, was] = [shown(told.to), withUnit(told.from)];
  const [second, first] = oneRun
    ? [`${on(to)}, at ${at},`, `${on(from)}, at ${was}`]
    : [`in B (${at})`, `in A (${was})`];
  const when = oneRun || from.day !== to.day ? '' : ` ${on(to)}`;
  const name = `${seriesPhrase(quantity)}${when}`;
  if (change === 0) return `${name} is the same ${second} as ${first}`;
  const by = withUnit(Math.abs(change));
  return `${name} is ${by} ${change > 0 ? 'higher' : 'lower'} ${second} than ${first}`;
}

/** A row for each term, what is left of rounding spread, and the sum. */
function table(
  rows: readonly (Term & { readonly of?: readonly Term[] })[],
  unit: string,
  total: number,
): readonly string[] {
  const moved = rows.reduce((sum, { value }) => sum + Math.abs(value), 0);
  const decimals = decimalsOf(
    rows.map(({ value }) => value),
    total,
  );
  const half = 0.5 * Number(`1e-${decimals}`);
  const listedRows = rows.filter(({ value }) => Math.abs(value) >= half);
  const small = rows.filter((row) => !listedRows.includes(row));
  const rest = small.reduce((sum, { value }) => sum + value, 0);
  const all = [
    ...listedRows,
    ...(small.length === 0
      ? []
      : [{ name: `${small.length} more, each under half a last digit`, value: rest }]),
  ];
  const values = roundedToSum(
    all.map(({ value }) => value),
    total,
    decimals,
  );
  return columns(
    [
      ['', unit, 'of all that moved it'],
      ...all.map(({ name, value }, i) => [
        name,
        signed(values[i], decimals),
        moved === 0 ? '' : percent(Math.abs(value) / moved),
      ]),
      ['difference', signed(total, decimals), ''],
    ],
    ['left', 'right', 'right'],
  );
}

function headLines(
  moments: readonly [NamedMoment, NamedMoment],
  oneRun: boolean,
  style: Style,
): readonly string[] {
  const [from, to] = moments;
  const runs = oneRun
    ? ([['', from]] as const)
    : ([
        ['A ', from],
        ['B ', to],
      ] as const);
  return runs.map(([name, { file, title }]) => style.faint(short(`${name}${file}  ${title}`, screenWidth())));
}

/** In which units and how it is shown. */
export interface Look {
  readonly display: Display;
  readonly style: Style;
}

/** How a difference is written. */
export interface DifferenceWords {
  readonly oneRun: boolean;
  /** Every process by itself, nothing netted. */
  readonly detail: boolean;
  /** Whether the files stand under the answer. */
  readonly head: boolean;
}

/** What differs, the answer first, and through what: in one sentence and in a table; as wide as the screen. */
export function differenceText(
  difference: Difference,
  moments: readonly [NamedMoment, NamedMoment],
  { oneRun, detail, head }: DifferenceWords,
  { display, style }: Look,
): string {
  const { quantity, parts, from, to } = difference;
  const told = shownOf(quantity, difference.unit, { from, to }, display);
  const total = told.change(difference.difference);
  const groups = detail ? parts : groupParts(parts);
  const terms = groups.map((part) => ({ name: cause(part, oneRun), value: told.change(part.value) }));
  const netted = parts.length - groups.length;
  const first = head ? answer(quantity, told, moments, oneRun) : `through what: ${seriesPhrase(quantity)}`;
  const lines = [
    ...(parts.length === 0
      ? [style.strong(`${first}: nothing made a difference`)]
      : wrap(`${first}: ${sentence(terms, total)}`, screenWidth(), '  ').map((line) => style.strong(line))),
    ...(head ? headLines(moments, oneRun, style) : []),
    ...(parts.length === 0 ? [] : ['', ...table(terms, told.unit, total)]),
    ...(netted > 0
      ? [`opposite terms are netted and parts of one thing are one: --detail shows all ${parts.length}`]
      : []),
    '',
    ...cautionLines(style),
  ];
  return linesText(lines);
}

/** What differs by what was changed between two files, the answer first. */
export function changesText(
  quantity: string,
  told: Readonly<Record<'from' | 'to', { readonly value: number; readonly unit: string }>>,
  { parts: changed, runs, grouped }: ByChange,
  moments: readonly [NamedMoment, NamedMoment],
  { display, style }: Look,
): string {
  const inUnits = shownOf(quantity, told.to.unit, { from: told.from.value, to: told.to.value }, display);
  const { unit } = inUnits;
  const parts = changed.map(({ change, value, alone }) => ({
    change,
    value: inUnits.change(value),
    alone: inUnits.change(alone),
  }));
  const total = inUnits.to - inUnits.from;
  const names = meaningWords(
    parts.map(({ change }) => change),
    display,
  );
  const terms = parts.map(({ value }, i) => ({ name: names[i], value }));
  const decimals = decimalsOf(
    parts.map(({ value }) => value),
    total,
  );
  const values = roundedToSum(
    parts.map(({ value }) => value),
    total,
    decimals,
  );
  const first = answer(quantity, inUnits, moments, false);
  const lines = [
    ...wrap(`${first}:`, screenWidth(), '  ').map((line) => style.strong(line)),
    ...parts.flatMap(({ alone }, i) => {
      const mixed = Math.abs(alone - parts[i].value) >= 0.5 * Number(`1e-${decimals}`);
      const note = mixed && parts.length > 1 ? ` (alone ${signed(alone, decimals)})` : '';
      return wrap(
        `${signed(values[i], decimals)} ${unit}: ${terms[i].name}${note}`,
        screenWidth() - 2,
        '    ',
      ).map((line) => `  ${line}`);
    }),
    ...headLines(moments, false, style),
    ...wrap(
      `${runs} runs, one for each set of ${parts.length} changes; what they do together is shared evenly` +
        (grouped.length === 0 ? '' : `. Taken together: ${grouped.join('; ')}`),
      screenWidth(),
      '  ',
    ),
  ];
  return linesText(lines);
}

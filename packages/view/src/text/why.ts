import type { Difference, DifferencePart } from '@leat/core';
import { type Display, plainDisplay } from '../display/display.js';
import { flowPhrase, listed, seriesPhrase } from './names.js';
import { decadeOf, percent } from './numbers.js';
import { dayNames } from './verdict.js';

/** A moment that was asked about: the date of day 0, `yyyy-mm-dd`, and the day, d. */
export interface ToldMoment {
  readonly startDate: string;
  readonly day: number;
}

/** A part of a difference, in the unit that is shown. */
interface Term {
  readonly name: string;
  readonly value: number;
}

/** A quantity at both moments and what is between them, in the unit that is shown. */
export interface ShownDifference {
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  /** A difference of the quantity. */
  readonly change: (value: number) => number;
}

/** A quantity at both moments in the unit that is shown. */
export function shownDifference(
  quantity: string,
  unit: string,
  told: { readonly from: number; readonly to: number },
  display: Display = plainDisplay,
): ShownDifference {
  const [sort] = quantity.split('@');
  const value = (of: number): number => display.value(of, unit, sort);
  return {
    unit: display.unit(unit, sort),
    ...{ from: value(told.from), to: value(told.to) },
    change: (of) => display.difference(of, unit, sort),
  };
}

/** Decimals that give three digits of the largest of some values, and two of their sum. */
function decimalsOf(values: readonly number[], total: number): number {
  const of = (value: number, digits: number): number => (value === 0 ? 0 : digits - 1 - decadeOf(value));
  const largest = Math.max(...values.map(Math.abs), Math.abs(total));
  return Math.min(12, Math.max(0, of(largest, 3), of(total, 2)));
}

/** A number with its sign. */
function signed(value: number, decimals: number, display: Display): string {
  const size = Math.abs(value).toFixed(decimals);
  if (Number(size) === 0) return display.digits(size);
  return `${value < 0 ? '-' : '+'}${display.digits(size)}`;
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

/** Parts of a total with their signs, rounded alike so that they sum to the rounded total, and that. */
export function signedParts(
  values: readonly number[],
  total: number,
  display: Display = plainDisplay,
): {
  readonly parts: readonly string[];
  readonly total: string;
  /** Half of the last digit that is shown. */
  readonly half: number;
  /** Another number, written as the parts are. */
  readonly signed: (value: number) => string;
} {
  const decimals = decimalsOf(values, total);
  const told = (value: number): string => signed(value, decimals, display);
  return {
    parts: roundedToSum(values, total, decimals).map(told),
    total: told(total),
    half: 0.5 * Number(`1e-${decimals}`),
    signed: told,
  };
}

const carried = /^carried (in from|out to) (.*)$/;
const between = /^flow between here and (.*)$/;

/** A cause of a difference in words, such as `nitrite oxidation`. */
function causePhrase(name: string, display: Display): string {
  const { why } = display.words;
  const flow = between.exec(name)?.[1];
  if (flow !== undefined) return why.flow(flow);
  const [, way, vessel] = (carried.exec(name) ?? []) as readonly (string | undefined)[];
  if (vessel !== undefined) return way === 'in from' ? why.carriedIn(vessel) : why.carriedOut(vessel);
  return why.causes[name] ?? flowPhrase(name, display);
}

/** What a cause did. Between two days of one run everything went on, so neither more nor less is said. */
function didPhrase(
  { name, did }: Pick<DifferencePart, 'name' | 'did'>,
  oneRun: boolean,
  display: Display,
): string {
  const cause = causePhrase(name, display);
  return oneRun || did === undefined ? cause : display.words.why.did(did, cause);
}

/** How much more or less in the second than in the first: two days of one run, or two runs. */
export function differencePhrase(
  quantity: string,
  { unit, from, to }: ShownDifference,
  [first, second]: readonly [ToldMoment, ToldMoment],
  oneRun: boolean,
  display: Display = plainDisplay,
): string {
  const { why } = display.words;
  const on = ({ startDate, day }: ToldMoment): string => dayNames(startDate, display)(day);
  const withUnit = (value: number): string => `${display.number(value)} ${unit}`.trimEnd();
  const [now, was] = oneRun
    ? [why.onDay(on(second), display.number(to)), why.asOn(on(first), withUnit(from))]
    : [why.inRun('B', display.number(to)), why.inRun('A', withUnit(from))];
  const series = seriesPhrase(quantity, display);
  const what = oneRun || first.day !== second.day ? series : why.on(series, on(second));
  if (to === from) return why.same(what, now, was);
  return why.differs(what, withUnit(Math.abs(to - from)), to > from, now, was);
}

/** Most causes in the sentence, and the share of the largest below which a cause is left to the table. */
const most = 4;
const least = 0.02;

/** The causes in a sentence, the largest first; small ones together. */
function sentence(terms: readonly Term[], total: number, display: Display): string {
  const { why } = display.words;
  const bound = least * Math.abs(terms[0]?.value ?? 0);
  const told = terms.filter(({ value }) => Math.abs(value) >= bound).slice(0, most);
  const others = terms.slice(told.length);
  const rest = others.reduce((sum, { value }) => sum + value, 0);
  const all = [...told, ...(others.length === 0 ? [] : [{ name: why.smaller(others.length), value: rest }])];
  const { parts } = signedParts(
    all.map(({ value }) => value),
    total,
    display,
  );
  return listed(
    all.map(({ name }, i) => why.by(parts[i], name)),
    display,
  );
}

/** A difference in words. */
export interface DifferenceTold {
  /** What differs by how much, and through what, in a sentence. */
  readonly answer: string;
  readonly unit: string;
  /** Each cause with what it did and its share of all that moved the quantity; small ones together. */
  readonly rows: readonly { readonly name: string; readonly value: string; readonly share: string }[];
  readonly total: string;
  /** How many parts were netted away. */
  readonly netted: number;
}

/**
 * A difference of a quantity, the answer first, and through what. The rows sum exactly to the total, as it is shown.
 * @param groups its parts as they are told: `groupParts` of them nets opposite terms of one cause and takes parts of one thing as one
 * @param how `oneRun`: two days of one run; `after`: it stands after another answer
 */
export function differenceTold(
  difference: Difference,
  groups: readonly DifferencePart[],
  moments: readonly [ToldMoment, ToldMoment],
  how: { readonly oneRun: boolean; readonly after?: boolean },
  display: Display = plainDisplay,
): DifferenceTold {
  const { quantity, parts, from, to } = difference;
  const { why } = display.words;
  const told = shownDifference(quantity, difference.unit, { from, to }, display);
  const total = told.change(difference.difference);
  const terms = groups.map((part) => ({
    name: didPhrase(part, how.oneRun, display),
    value: told.change(part.value),
  }));
  const first =
    how.after === true
      ? why.through(seriesPhrase(quantity, display))
      : differencePhrase(quantity, told, moments, how.oneRun, display);
  return {
    answer: `${first}: ${terms.length === 0 ? why.nothing : sentence(terms, total, display)}`,
    unit: told.unit,
    ...rowsOf(terms, total, display),
    netted: parts.length - groups.length,
  };
}

/** A row for each term, those under half a last digit together, what is left of rounding spread. */
function rowsOf(
  terms: readonly Term[],
  total: number,
  display: Display,
): Pick<DifferenceTold, 'rows' | 'total'> {
  const moved = terms.reduce((sum, { value }) => sum + Math.abs(value), 0);
  const values = terms.map(({ value }) => value);
  const { half } = signedParts(values, total, display);
  const large = terms.filter(({ value }) => Math.abs(value) >= half);
  const small = terms.filter((term) => !large.includes(term));
  const rest = small.reduce((sum, { value }) => sum + value, 0);
  const all = [
    ...large,
    ...(small.length === 0 ? [] : [{ name: display.words.why.lastDigit(small.length), value: rest }]),
  ];
  const told = signedParts(
    all.map(({ value }) => value),
    total,
    display,
  );
  return {
    rows: all.map(({ name, value }, i) => ({
      name,
      value: told.parts[i],
      share: moved === 0 ? '' : percent(Math.abs(value) / moved, display),
    })),
    total: told.total,
  };
}

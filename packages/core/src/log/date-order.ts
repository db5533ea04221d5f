import type { DateOrder } from './log-map.js';
import { figuresOf, readDate } from './read-date.js';

/** The order of the dates of a column, with what it was told by; or why it cannot be told. */
export type OrderAnswer = { readonly order: DateOrder; readonly told: string } | { readonly problem: string };

const orders: readonly DateOrder[] = ['day-month-year', 'month-day-year'];

/** A reading of the dates must run on so many times closer than the other to be believed. */
const clearly = 3;

/** Days walked from row to row: few where the dates are read the right way round. */
function walked(texts: readonly string[], order: DateOrder): number {
  const days = texts.flatMap((text) => {
    const date = readDate(text, order);
    return date === undefined ? [] : [Date.UTC(date.year ?? 2000, date.month - 1, date.day) / 86_400_000];
  });
  return days.reduce((sum, day, i) => (i === 0 ? 0 : sum + Math.abs(day - days[i - 1])), 0);
}

/**
 * Tells whether 3/4 is the third of April or the fourth of March: by figures above 12, else by the order in
 * which the rows run on day by day.
 */
export function dateOrder(texts: readonly string[]): OrderAnswer {
  const figures = texts.flatMap((text) => (figuresOf(text) === undefined ? [] : [text]));
  const only = (order: DateOrder, other: DateOrder): boolean =>
    figures.some((text) => readDate(text, order) !== undefined && readDate(text, other) === undefined);
  const dayFirst = only('day-month-year', 'month-day-year');
  const monthFirst = only('month-day-year', 'day-month-year');
  if (dayFirst && monthFirst) return { problem: 'some dates have the day first, others the month' };
  if (dayFirst) return { order: 'day-month-year', told: 'a date with a first figure above 12' };
  if (monthFirst) return { order: 'month-day-year', told: 'a date with a second figure above 12' };
  if (figures.every((text) => figuresOf(text)?.[0] === figuresOf(text)?.[1]))
    return { order: 'day-month-year', told: 'no date is open to doubt' };
  const [ours, theirs] = orders.map((order) => walked(texts, order));
  if (Math.max(ours, theirs) < clearly * Math.min(ours, theirs) || ours === theirs)
    return { problem: 'the dates do not say whether day or month comes first' };
  return { order: ours < theirs ? orders[0] : orders[1], told: 'the rows run on day by day' };
}

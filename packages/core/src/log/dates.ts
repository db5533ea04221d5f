import { calendarDay, calendarDays, dayNumber } from '../base/calendar.js';
import type { DateOrder } from './log-map.js';

/** A date in the calendar; the year may be missing, and the part of the day is 0 where no time is written. */
export interface WrittenDate {
  readonly year?: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
}

const monthNames = [
  ...['january', 'february', 'march', 'april', 'may', 'june'],
  ...['july', 'august', 'september', 'october', 'november', 'december'],
];
const clock = String.raw`(?:[ T,]+(\d{1,2})[:.h]([0-5]\d)(?::[0-5]\d(?:\.\d+)?)?\s*(am|pm)?(?:Z)?)?`;
const weekday = String.raw`(?:(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?,?\s+)?`;
const forms = {
  yearFirst: new RegExp(`^(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})${clock}$`, 'i'),
  yearLast: new RegExp(`^${weekday}(\\d{1,2})[-/. ](\\d{1,2})(?:[-/. ](\\d{4}|\\d{2}))?${clock}$`, 'i'),
  dayName: new RegExp(
    `^${weekday}(\\d{1,2})(?:st|nd|rd|th)?[ -]*([a-z]{3,9})\\.?(?:[ ,-]+(\\d{4}|\\d{2}))?${clock}$`,
    'i',
  ),
  nameDay: new RegExp(
    `^${weekday}([a-z]{3,9})\\.?[ -]*(\\d{1,2})(?:st|nd|rd|th)?(?:[ ,-]+(\\d{4}|\\d{2}))?${clock}$`,
    'i',
  ),
  serial: /^(\d{5})(\.\d+)?$/,
};

/** Day 0 of the serial numbers of spreadsheets, ISO; a workbook may count from another, of 1904. */
export const serialStart = '1899-12-30';

/** A year of two figures is of this century. */
const fullYear = (text: string | undefined): { year?: number } => {
  if (text === undefined) return {};
  const year = Number(text);
  return { year: text.length === 2 ? 2000 + year : year };
};

/** The part of a day, or NaN for an hour that no clock of two halves shows. */
function hourOf(hours: string | undefined, minutes: string | undefined, half: string | undefined): number {
  if (hours === undefined) return 0;
  if (half !== undefined && !(Number(hours) >= 1 && Number(hours) <= 12)) return Number.NaN;
  const twelve = half === undefined ? Number(hours) : (Number(hours) % 12) + (/pm/i.test(half) ? 12 : 0);
  return (twelve + Number(minutes) / 60) / 24;
}

/** A time of day in a column of its own, as a part of the day: `7:30`, `7.30 pm`, `19h`, a spreadsheet's 0.3125; undefined where none, NaN where it is no time. */
export function readTime(text: string): number | undefined {
  if (text === '') return undefined;
  const part = /^(?:1899-12-3[01]|1904-01-01)T(\d\d):(\d\d)/.exec(text);
  if (part !== null) return hourOf(part[1], part[2], undefined);
  if (/^0?\.\d+$/.test(text)) return Number(text);
  const written = /^(\d{1,2})(?:[:.h](\d{2}))?(?::\d{2})?\s*(am|pm|h|o'?clock)?$/i.exec(text);
  if (written !== null) {
    const half = /m$/i.test(written[3] ?? '') ? written[3] : undefined;
    const hour = hourOf(written[1], written[2] ?? '0', half);
    return hour >= 0 && hour < 1 ? hour : Number.NaN;
  }
  const named: Readonly<Record<string, number>> = {
    morning: 8 / 24,
    noon: 0.5,
    midday: 0.5,
    afternoon: 15 / 24,
    evening: 19 / 24,
    night: 22 / 24,
  };
  return named[text.toLowerCase()] ?? Number.NaN;
}

/** The month of an English name or of the beginning of one, from three letters on; 0 of any other word. */
function monthOf(name: string): number {
  return monthNames.findIndex((month) => name.length >= 3 && month.startsWith(name.toLowerCase())) + 1;
}

/** The two figures of a date whose order is not plain, such as the 3 and 4 of 3/4/2026; undefined for other forms. */
function figuresOf(text: string): readonly [number, number] | undefined {
  const match = forms.yearLast.exec(text);
  return match === null ? undefined : [Number(match[1]), Number(match[2])];
}

/** Whether a date is in the calendar. */
function real({ hour, ...date }: WrittenDate): boolean {
  return numberOf(date) !== undefined && hour >= 0 && hour < 1;
}

/** A leap year stands for one that is not written, so that there is a 29 February. */
const numberOf = (date: Omit<WrittenDate, 'hour'>): number | undefined => dayNumber({ year: 2000, ...date });

/**
 * Reads a date as people write it: `2026-03-05`, `5/3/2026`, `5.3.26`, `5 Mar 2026`, `March 5`, `Thu 5 March`, a
 * spreadsheet's serial number, each with or without a time of day. undefined where it is none.
 * @param since day 0 of serial numbers, ISO
 */
export function readDate(text: string, order: DateOrder, since = serialStart): WrittenDate | undefined {
  const serial = forms.serial.exec(text);
  if (serial !== null) {
    const number = (calendarDays(since) ?? Number.NaN) + Number(serial[1]);
    return { ...calendarDay(number), hour: Number(`0${serial[2] ?? ''}`) };
  }
  const date = plainDate(text, order);
  return date !== undefined && real(date) ? date : undefined;
}

function plainDate(text: string, order: DateOrder): WrittenDate | undefined {
  const iso = forms.yearFirst.exec(text);
  if (iso !== null) {
    const [, year, month, day, hours, minutes, half] = iso;
    return {
      year: Number(year),
      month: Number(month),
      day: Number(day),
      hour: hourOf(hours, minutes, half),
    };
  }
  const last = forms.yearLast.exec(text);
  if (last !== null) {
    const [, first, second, year, hours, minutes, half] = last;
    const [day, month] = order === 'day-month-year' ? [first, second] : [second, first];
    return { ...fullYear(year), month: Number(month), day: Number(day), hour: hourOf(hours, minutes, half) };
  }
  const dayName = forms.dayName.exec(text);
  if (dayName !== null) {
    const [, day, name = '', year, hours, minutes, half] = dayName;
    return { ...fullYear(year), month: monthOf(name), day: Number(day), hour: hourOf(hours, minutes, half) };
  }
  const nameDay = forms.nameDay.exec(text);
  if (nameDay === null) return undefined;
  const [, name = '', day, year, hours, minutes, half] = nameDay;
  return { ...fullYear(year), month: monthOf(name), day: Number(day), hour: hourOf(hours, minutes, half) };
}

/** The order of the dates of a column, with the evidence for it; or why it cannot be found. */
export type OrderAnswer =
  { readonly order: DateOrder; readonly evidence: string } | { readonly problem: string };

const orders: readonly DateOrder[] = ['day-month-year', 'month-day-year'];

/** A reading of the dates must run on so many times closer than the other to be believed. */
const clearly = 3;

/** Days walked from row to row: few where the dates are read the right way round. */
function walked(texts: readonly string[], order: DateOrder): number {
  const days = texts.flatMap((text) => {
    const date = readDate(text, order);
    return (date === undefined ? undefined : numberOf(date)) ?? [];
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
  if (dayFirst) return { order: 'day-month-year', evidence: 'a date with a first figure above 12' };
  if (monthFirst) return { order: 'month-day-year', evidence: 'a date with a second figure above 12' };
  if (figures.every((text) => figuresOf(text)?.[0] === figuresOf(text)?.[1]))
    return { order: 'day-month-year', evidence: 'no date is open to doubt' };
  const [ours, theirs] = orders.map((order) => walked(texts, order));
  if (Math.max(ours, theirs) < clearly * Math.min(ours, theirs) || ours === theirs)
    return { problem: 'the dates do not say whether day or month comes first' };
  return { order: ours < theirs ? orders[0] : orders[1], evidence: 'the rows run on day by day' };
}

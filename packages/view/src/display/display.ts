import { type Language, type UnitChoice, metric, unitShown, valueShown } from '@leat/core/units';
import { en, type Words } from '../words/en.js';
import { es } from '../words/es.js';
import { threeDigits } from './digits.js';

const tables: Readonly<Record<Language, Words>> = { en, es };

/** How results are told, as it was chosen. Plain data: it may be sent to a worker. */
export interface DisplayChoice {
  readonly language: Language;
  readonly units: UnitChoice;
}

/** How results are told: in which words, in which units, and how days and numbers are written. */
export interface Display {
  readonly choice: DisplayChoice;
  readonly words: Words;
  /** Months by their short names, January at the head. */
  readonly months: readonly string[];
  /** A number for reading: three significant digits, a dash where there is none. */
  readonly number: (value: number | undefined) => string;
  /** A number that is written already, with the decimal sign of the language. */
  readonly digits: (written: string) => string;
  /** Words of the numbers of an axis; absent where they are as Plot writes them. */
  readonly ticks?: (value: number) => string;
  /** A list in a sentence: `a, b and c`. */
  readonly list: (items: readonly string[]) => string;
  /** The unit in which a quantity is shown that results give in `unit`; empty for numbers without one. */
  readonly unit: (unit: string, quantity?: string) => string;
  /** A number of a result in the unit in which it is shown. */
  readonly value: (value: number, unit: string, quantity?: string) => number;
  /** A difference of two numbers of a result in the unit in which they are shown: it has no zero to be moved, as degrees have. */
  readonly difference: (value: number, unit: string, quantity?: string) => number;
  /** A number of a result with its unit, for reading: `12.3 mg N/L`. */
  readonly amount: (value: number, unit: string, quantity?: string) => string;
}

/** Short names of the months. */
function monthsIn(locale: string): readonly string[] {
  const month = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });
  return Array.from({ length: 12 }, (_, i) => month.format(new Date(Date.UTC(2001, i, 15))));
}

/** Builds what tells results in a language and in units. */
export function displayOf(choice: DisplayChoice): Display {
  const words = tables[choice.language];
  // What Node needs a while for is made where it is asked for.
  let months: readonly string[] | undefined;
  let lists: Intl.ListFormat | undefined;
  const axis = new Intl.NumberFormat(words.locale, { maximumSignificantDigits: 6, useGrouping: false });
  const decimal =
    new Intl.NumberFormat(words.locale).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ??
    '.';
  const digits = (written: string): string =>
    decimal === '.' ? written : written.replace(/(\d)\.(\d)/g, `$1${decimal}$2`);
  const number = (value: number | undefined): string =>
    digits(threeDigits(value, words.text.none, words.text.infinite));
  const { units } = choice;
  const named = (unit: string, quantity: string): string => {
    const told = unitShown(unit, units, quantity);
    return told === '1' || told === quantity ? '' : words.text.unit(told);
  };
  const value = (of: number, unit: string, quantity = ''): number =>
    valueShown(of, unit, unitShown(unit, units, quantity));
  return {
    ...{ choice, words, number, digits, value },
    ...(decimal !== '.' && { ticks: (of: number) => axis.format(of) }),
    get months() {
      return (months ??= monthsIn(words.locale));
    },
    list: (items) => (lists ??= new Intl.ListFormat(words.lists, { type: 'conjunction' })).format(items),
    unit: (unit, quantity = '') => named(unit, quantity),
    difference: (of, unit, quantity = '') => value(of, unit, quantity) - value(0, unit, quantity),
    amount: (of, unit, quantity = '') => {
      const name = named(unit, quantity);
      return `${number(value(of, unit, quantity))}${name === '' ? '' : ` ${name}`}`;
    },
  };
}

/** English, and the units of the results: how everything is told where nothing is asked. */
export const plainDisplay: Display = displayOf({ language: 'en', units: metric });

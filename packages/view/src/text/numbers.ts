import { threeDigits } from '../display/digits.js';
import { type Display, plainDisplay } from '../display/display.js';

/** A number for reading: three significant digits, a dash where there is none. */
export function shown(value: number | undefined, display?: Display): string {
  if (display !== undefined) return display.number(value);
  return threeDigits(value, plainDisplay.words.text.none, plainDisplay.words.text.infinite);
}

/** A day of the run: whole where it is, else one decimal. */
export function day(time: number | undefined, display: Display = plainDisplay): string {
  if (time === undefined) return display.words.text.none;
  return display.digits(time.toFixed(1).replace(/\.0$/, ''));
}

/** A long or short time in the words people use: minutes, hours, days, weeks, months, years. */
export function longSpan(days: number, display: Display = plainDisplay): string {
  const { spans } = display.words.text;
  const size = Math.abs(days);
  const two = (count: number): string => display.digits(String(Number(count.toPrecision(2))));
  if (size < 1 / 24) return spans.minutes(String(Math.max(1, Math.round(size * 1440))));
  if (size < 2) return spans.hours(two(size * 24));
  if (size < 21) return spans.days(two(size));
  if (size < 90) return spans.weeks(String(Math.round(size / 7)));
  if (size < 730) return spans.months(String(Math.round(size / 30.44)));
  return spans.years(two(size / 365.25));
}

/** A share in percent, one decimal. */
export function percent(share: number, display: Display = plainDisplay): string {
  return `${display.digits((share * 100).toFixed(1))} %`;
}

/** A value with its unit as it is written in a scenario file; a plain number where the unit is empty. */
export function valueText({ unit }: { readonly unit: string }, value: number): string {
  return unit === '' ? String(value) : `${value} ${unit}`;
}

/** A volume in m3 for reading: in litres below one cubic metre. */
export function volumeText(volume: number, display: Display = plainDisplay): string {
  return volume < 1 ? display.amount(volume * 1000, 'L') : display.amount(volume, 'm³');
}

/** The power of ten of the first digit of a number that is not 0: 3 of 1,234, -2 of 0.05. */
export function decadeOf(value: number): number {
  return Number(value.toExponential().split('e')[1]);
}

/** Where the lowest or highest of some values stands: of those that are equally so, the first; -1 where there is none. */
export function extreme(values: readonly number[], better: (a: number, b: number) => boolean): number {
  let best = -1;
  values.forEach((value, i) => {
    if (!Number.isNaN(value) && (best < 0 || better(value, values[best]))) best = i;
  });
  return best;
}

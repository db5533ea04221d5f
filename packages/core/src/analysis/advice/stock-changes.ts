import type { OpenChange } from './change.js';
import {
  amountLess,
  daysText,
  entriesOf,
  isBox,
  type PlainFile,
  textOf,
  tidy,
  timesOf,
  valueAt,
  withActions,
  withValue,
} from './file-edit.js';
import { factorAt, factorOf, MOMENT } from './fish-changes.js';

/** Parts in which fish are put in that would have come at once. */
const PARTS = 4;

/** Most days between two parts. */
const MOST_APART = 28;

/** Fish stocked in four parts, so many days apart, and a greater ration with them. */
export const staggeredStock: OpenChange = ({ file, situation }) => {
  const { from, days, startDate, fish } = situation;
  const standing = fish.reduce((total, { number }) => total + number, 0);
  const stocked = entriesOf(file, 'actions').flatMap((entry) => {
    const stock = entry['stock'];
    const { at } = timesOf(entry, startDate);
    if (!isBox(stock) || entry['every'] !== undefined || !(at >= from - 1 && at < days)) return [];
    const { cohort, number } = stock;
    const many = typeof number === 'number' && number >= PARTS && number >= standing / 10;
    return typeof cohort === 'string' && many ? [{ at, cohort }] : [];
  });
  if (stocked.length === 0) return undefined;
  const latest = Math.max(...stocked.map(({ at }) => at));
  const most = Math.min(MOST_APART, Math.ceil((days - latest) / (PARTS - 1)) - 1);
  if (most < 1) return undefined;
  const parts = Array.from({ length: PARTS }, (_, i) => i);
  return {
    ...{ name: 'stagger', effort: 1, most, ends: false, unit: 'd' },
    at: [...new Set(stocked.map(({ cohort }) => cohort))],
    amount: (steps) => steps,
    apply: (before, steps) =>
      withActions(before, (entry) => {
        const { at } = timesOf(entry, startDate);
        const when = (part: number): string => daysText(at + part * steps);
        const stock = entry['stock'];
        if (isBox(stock) && stocked.some((each) => each.at === at && each.cohort === stock['cohort'])) {
          const number = stock['number'] as number;
          const upTo = (part: number): number => Math.round((number * part) / PARTS);
          return parts.map((part) => ({
            at: when(part),
            stock: { ...stock, number: upTo(part + 1) - upTo(part) },
          }));
        }
        const grown = stocked.find(
          (each) => Math.abs(each.at - at) <= 1 && factorOf(entry, each.cohort) !== undefined,
        );
        if (grown === undefined || Object.keys(entry).some((key) => key !== 'at' && key !== 'feed'))
          return [entry];
        const target = factorOf(entry, grown.cohort) ?? 1;
        const was = factorAt(before, grown.cohort, at - 2 * MOMENT, startDate);
        return parts.map((part) => ({
          at: when(part),
          feed: { cohort: grown.cohort, factor: tidy(was + ((target - was) * (part + 1)) / PARTS) },
        }));
      }),
  };
};

/** Days after the start within which trouble is that of the fish of the start. */
const EARLY = 3;

/** Fewer fish put in, and fewer at the start where trouble begins there, with a fixed ration in proportion: percent fewer. */
export const fewerFish: OpenChange = ({ file, situation, scenario }) => {
  const { from, days, startDate } = situation;
  const meant = (entry: PlainFile): PlainFile | undefined => {
    const stock = entry['stock'];
    const { at } = timesOf(entry, startDate);
    return isBox(stock) && at >= from - 1 && at < days ? stock : undefined;
  };
  const stocked = entriesOf(file, 'actions').flatMap((entry) => textOf(meant(entry)?.['cohort']));
  const begun = from <= EARLY ? scenario.fish.filter(({ number }) => number > 1) : [];
  const at = [...new Set([...begun.map(({ name }) => name), ...stocked])].filter((name) => name !== '');
  if (at.length === 0) return undefined;
  const left = (number: unknown, steps: number): number =>
    Math.max(1, Math.round(Number(number) * (1 - steps / 100)));
  return {
    ...{ name: 'fewer', effort: 1, most: MOST_FEWER, ends: false, unit: '%', at },
    amount: (steps) => steps,
    apply: (before, steps) => {
      const started = begun.reduce((so, { name, number, ration }) => {
        const fewer = withValue(so, ['fish', name, 'number'], left(number, steps));
        const path = ['fish', name, 'ration'];
        if (ration.kind !== 'mass') return fewer;
        return withValue(fewer, path, amountLess(valueAt(so, path), left(number, steps) / number));
      }, before);
      return withActions(started, (entry) => {
        const stock = meant(entry);
        if (stock === undefined) return [entry];
        return [{ ...entry, stock: { ...stock, number: left(stock['number'], steps) } }];
      });
    },
  };
};

/** Most by which fish are fewer, percent. */
const MOST_FEWER = 90;

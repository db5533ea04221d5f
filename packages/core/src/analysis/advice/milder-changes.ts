import type { Plain } from '../../scenario/file/tree.js';
import type { OpenChange } from './change.js';
import {
  daysText,
  entriesOf,
  isBox,
  momentAt,
  type PlainFile,
  tidy,
  timesOf,
  textOf,
  withActions,
  withoutTimes,
} from './file-edit.js';

/** Keys of actions that stop something for a time. */
const stops = ['power-cut', 'pump-off', 'air-off', 'control-off'];

const isStop = (entry: PlainFile): boolean =>
  stops.some((key) => entry[key] !== undefined) || entry['top-up'] === 'stopped';

/** Steps in which a stop is made shorter. */
const SHORTER = 24;

/** What stood still is set going sooner: hours by which the longest stop is shorter. */
export const sooner: OpenChange = ({ file, situation }) => {
  const { startDate, from, days } = situation;
  const meant = entriesOf(file, 'actions').flatMap((entry) => {
    if (!isStop(entry)) return [];
    const { at, end = days } = timesOf(entry, startDate);
    return end > from && at < days ? [{ at, end: Math.min(end, days), entry }] : [];
  });
  const [first] = meant as readonly (typeof meant)[number][];
  if (meant.length === 0) return undefined;
  const longest = Math.max(...meant.map(({ at, end }) => end - at));
  const left = (steps: number, length: number): number => length * (1 - steps / SHORTER);
  return {
    ...{ name: 'sooner', effort: 1, most: SHORTER - 1, ends: false, unit: 'h' },
    at: [stops.find((key) => first.entry[key] !== undefined) ?? 'top-up'],
    amount: (steps) => tidy(left(steps, longest) * 24),
    apply: (before, steps) =>
      withActions(before, (entry) => {
        const { at, end = days } = timesOf(entry, startDate);
        if (!isStop(entry) || !meant.some((each) => each.at === at)) return [entry];
        const { every } = entry;
        const rest = withoutTimes(entry);
        const hours = tidy(left(steps, Math.min(end, days) - at) * 24);
        const when = { at: entry['at'] ?? entry['from'] ?? daysText(at) };
        const again =
          every === undefined
            ? {}
            : { every, ...(entry['until'] !== undefined && { until: entry['until'] }) };
        return [{ ...when, ...again, for: `${hours} h`, ...rest }];
      }),
  };
};

/** Steps in which cleaning and bathing are made gentler. */
const GENTLER = 20;

/** The share as it is written, made smaller. */
function shareLess(share: Plain | undefined, steps: number): Plain {
  const left = 1 - steps / GENTLER;
  const match = typeof share === 'string' ? /^\s*([\d.]+)\s*%\s*$/.exec(share) : null;
  if (match !== null) return `${tidy(Number(match[1]) * left)} %`;
  return typeof share === 'number' ? tidy(share * left) : (share ?? null);
}

/** Filters cleaned, or bathed with a medicine, more gently: percent less of their bacteria taken at a time. */
export const gentler: OpenChange = ({ file, situation }) => {
  const { startDate, from, days } = situation;
  const rough = (entry: PlainFile): readonly [string, PlainFile] | undefined => {
    for (const key of ['clean', 'medicate']) {
      const what = entry[key] as Plain | undefined;
      if (isBox(what) && ['biofilm', 'kills', 'stuns'].some((share) => what[share] !== undefined))
        return [key, what];
    }
    return undefined;
  };
  const meant = entriesOf(file, 'actions').filter((entry) => {
    const at = momentAt(entry['at'], startDate) ?? Number.NaN;
    return rough(entry) !== undefined && at >= from - 1 && at < days;
  });
  if (meant.length === 0) return undefined;
  const at = meant.map((entry) => textOf(rough(entry)?.[1]['vessel']));
  return {
    ...{ name: 'gentler', effort: 1, most: GENTLER, ends: false, unit: '%', at: [...new Set(at)] },
    amount: (steps) => (steps * 100) / GENTLER,
    apply: (before, steps) =>
      withActions(before, (entry) => {
        const found = rough(entry);
        if (found === undefined) return [entry];
        const [key, what] = found;
        const milder = Object.fromEntries(
          Object.entries(what).map(([name, value]) => [
            name,
            ['biofilm', 'kills', 'stuns'].includes(name) ? shareLess(value, steps) : value,
          ]),
        );
        return [{ ...entry, [key]: milder }];
      }),
  };
};

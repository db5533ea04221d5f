import { stringify } from 'yaml';
import { calendarDays } from '../../base/calendar.js';
import { parseQuantity } from '../../base/units.js';
import type { Plain } from '../../scenario/file/tree.js';

/** What a system file says, whole, as plain values: that of `resolved.plain` of a reading. */
export type PlainFile = Readonly<Record<string, Plain>>;

type Box = Readonly<Record<string, Plain>>;

/** Whether a plain value is a map. */
export function isBox(value: Plain | undefined): value is Box {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether two plain values say the same. */
function isSame(a: Plain | undefined, b: Plain | undefined): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** The value at the end of a chain of keys; undefined where there is none. */
export function valueAt(file: PlainFile, path: readonly string[]): Plain | undefined {
  return path.reduce<Plain | undefined>((at, key) => (isBox(at) ? at[key] : undefined), file);
}

/** The file with a value at the end of a chain of keys, maps on the way opened where there are none. */
export function withValue(file: PlainFile, [key, ...rest]: readonly string[], value: Plain): PlainFile {
  const below = file[key] as Plain | undefined;
  return { ...file, [key]: rest.length === 0 ? value : withValue(isBox(below) ? below : {}, rest, value) };
}

/** The entries of a list at the top of a file, such as `actions`; none where it is not written. */
export function entriesOf(file: PlainFile, key: string): readonly Box[] {
  const list = file[key] as Plain | undefined;
  return Array.isArray(list) ? (list as readonly Plain[]).filter(isBox) : [];
}

/** The file with each action put through `change`: what it gives stands in its place. */
export function withActions(file: PlainFile, change: (entry: Box) => readonly Box[]): PlainFile {
  const before = entriesOf(file, 'actions');
  return { ...file, actions: before.flatMap(change) };
}

/** The file with one more action at the end of its list. */
export function withAction(file: PlainFile, entry: Box): PlainFile {
  return { ...file, actions: [...entriesOf(file, 'actions'), entry] };
}

/** An entry without the keys that say when. */
export function withoutTimes(entry: Box): Box {
  const times = ['at', 'from', 'until', 'for', 'every'];
  return Object.fromEntries(Object.entries(entry).filter(([key]) => !times.includes(key)));
}

/** The text of a plain value that is one; empty where it is none. */
export const textOf = (value: Plain | undefined): string => (typeof value === 'string' ? value : '');

/** Days since the start of a moment as it is written, `30 d` or a date; undefined where none is. */
export function momentAt(text: Plain | undefined, startDate: string): number | undefined {
  if (typeof text !== 'string') return undefined;
  if (/^\d{4}-\d/.test(text)) {
    const day = calendarDays(text);
    return day === undefined ? undefined : day - (calendarDays(startDate) ?? 0);
  }
  const answer = parseQuantity(text, 'time');
  return 'value' in answer ? answer.value : undefined;
}

/** When an action begins and ends, d; no end where it is for good. One that repeats is told by its first time. */
export function timesOf(entry: Box, startDate: string): { readonly at: number; readonly end?: number } {
  const at = momentAt(entry['at'] ?? entry['from'], startDate) ?? Number.NaN;
  const length = momentAt(entry['for'], startDate);
  const until = entry['every'] === undefined ? momentAt(entry['until'], startDate) : undefined;
  const end = length === undefined ? until : at + length;
  return { at, ...(end !== undefined && { end }) };
}

/** A number as it is written in a file: four figures, no more. */
export const tidy = (value: number): number => Number(value.toPrecision(4));

/** A time after the start as it is written. */
export const daysText = (days: number): string => `${tidy(days)} d`;

/** An amount as it is written, such as `80 g/d`, times a factor; what is written in another way stays. */
export function amountLess(written: Plain | undefined, times: number): Plain {
  const match = typeof written === 'string' ? /^\s*([\d.eE+-]+)(.*)$/.exec(written) : null;
  return match === null ? (written ?? null) : `${tidy(Number(match[1]) * times)}${match[2]}`;
}

/**
 * What a file must say over another so that both together say what `after` says: maps key by key, all else whole,
 * null for what is taken away.
 */
export function overlayOf(before: PlainFile, after: PlainFile): PlainFile {
  const changed: Record<string, Plain> = {};
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    const [was, is] = [before[key] as Plain | undefined, after[key] as Plain | undefined];
    if (isSame(was, is)) continue;
    if (is === undefined) changed[key] = null;
    else changed[key] = isBox(was) && isBox(is) ? overlayOf(was, is) : is;
  }
  return changed;
}

const yaml = { lineWidth: 0, nullStr: 'null' } as const;

/** One entry of a list on a line of its own, as `- { at: 20 d, harvest-fish: ... }`. */
const entryText = (entry: Plain): string => {
  const text = stringify(entry, { ...yaml, collectionStyle: 'flow', flowCollectionPadding: true });
  return `- ${text.replace(/\s*\n\s*/g, ' ').trim()}`;
};

/** A file that lies over others, as text: sections in blocks, entries of lists on a line each. */
export function overlayText(overlay: PlainFile): string {
  return Object.entries(overlay)
    .map(([key, value]) => {
      if (!Array.isArray(value)) return stringify({ [key]: value }, yaml);
      const list = value as readonly Plain[];
      if (list.length === 0) return `${key}: []\n`;
      return `${key}:\n${list.map((entry) => `  ${entryText(entry)}\n`).join('')}`;
    })
    .join('');
}

/** Lines of a file that differ: those to be put in, and those of lists that they take the place of. */
export interface FileLines {
  /** To be put in, under the key of each section. */
  readonly put: readonly string[];
  /** Entries of lists to be taken out. */
  readonly out: readonly string[];
}

/** What is to be put into a file, and taken out of its lists, so that it says what `after` says. */
export function linesBetween(before: PlainFile, after: PlainFile): FileLines {
  const put: string[] = [];
  const out: string[] = [];
  for (const [key, value] of Object.entries(overlayOf(before, after))) {
    const was = before[key] as Plain | undefined;
    if (!Array.isArray(value)) {
      put.push(
        ...overlayText({ [key]: value })
          .trimEnd()
          .split('\n'),
      );
      continue;
    }
    const old = Array.isArray(was) ? (was as readonly Plain[]) : [];
    const list = value as readonly Plain[];
    const added = list.filter((entry) => !old.some((each) => isSame(each, entry)));
    const gone = old.filter((entry) => !list.some((each) => isSame(each, entry)));
    if (added.length > 0) put.push(`${key}:`, ...added.map((entry) => `  ${entryText(entry)}`));
    if (gone.length > 0) out.push(`${key}:`, ...gone.map((entry) => `  ${entryText(entry)}`));
  }
  return { put, out };
}

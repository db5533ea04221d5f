import { type Command, InvalidArgumentError, Option } from 'commander';
import type { ExitCode } from '../../terminal/exit.js';
import type { Streams } from '../../terminal/streams.js';

/**
 * Adds one command to `leat`. One such function a file, in `words/`; the action loads what it needs only when
 * it is called, so that `leat --help` stays quick, and hands its exit code to `leave`.
 */
export type AddCommand = (root: Command, streams: Streams, leave: (code: ExitCode) => void) => void;

/** A number above 0, or bad usage. */
function positive(text: string): number {
  const value = Number(text);
  if (text.trim() === '' || !(value > 0 && value < Infinity))
    throw new InvalidArgumentError('Give a number above 0.');
  return value;
}

/** A whole number from 1, or bad usage. */
function count(text: string): number {
  const value = Number(text);
  if (!/^\d+$/.test(text.trim()) || !(value >= 1 && value <= 2 ** 32))
    throw new InvalidArgumentError('Give a whole number from 1.');
  return value;
}

/** A seed, or bad usage. */
function seed(text: string): number {
  const value = Number(text);
  if (!/^\d+$/.test(text.trim()) || !Number.isSafeInteger(value))
    throw new InvalidArgumentError('Give a whole number from 0 to 9007199254740991.');
  return value;
}

/** One more of a repeatable option. */
export const another = (text: string, before: readonly string[]): readonly string[] => [...before, text];

/** A relative tolerance: coarser than 0.1 is no answer, finer than 1e-13 is below rounding. */
export function tolerance(text: string): number {
  const value = positive(text);
  if (value > 0.1 || value < 1e-13) throw new InvalidArgumentError('Give a number from 1e-13 to 0.1.');
  return value;
}

/** A percentage from 0 to 100. */
export function percentage(text: string): number {
  const value = Number(text);
  if (text.trim() === '' || !(value >= 0 && value <= 100))
    throw new InvalidArgumentError('Give a number from 0 to 100.');
  return value;
}

function setting(text: string, before: readonly string[]): readonly string[] {
  if (!/^[^=]+=/.test(text)) throw new InvalidArgumentError('Write it as path=value.');
  return [...before, text];
}

/** `--set path=value`, repeatable. */
export const setOption = (): Option =>
  new Option('--set <path=value>', 'put a value in place of one in the file (repeatable)')
    .argParser(setting)
    .default([], 'none');

/** `--tables FILE`, repeatable. */
export const tablesOption = (): Option =>
  new Option('--tables <file>', 'numbers of your own in place of those of the library (TSV, repeatable)')
    .argParser(another)
    .default([], 'none');

/** `--allow-path DIR`, repeatable. */
export const allowPathOption = (): Option =>
  new Option('--allow-path <folder>', 'let the file name others in this folder too (repeatable)')
    .argParser(another)
    .default([], 'its own folder');

/** `--days N`. */
export const daysOption = (): Option =>
  new Option('--days <number>', 'length of the run, in days').argParser(positive);

/** `--every TIME`. */
export const everyOption = (): Option => new Option('--every <time>', 'output step, such as 1d or 6h');

/** `--members N`. */
export const membersOption = (members = 100, what = 'how many draws are run'): Option =>
  new Option('--members <number>', what).argParser(count).default(members);

/** `--seed S`. */
export const seedOption = (): Option =>
  new Option('--seed <number>', 'what the draws follow from').argParser(seed).default(1);

/** `--force`. */
export const forceOption = (): Option =>
  new Option('--force', 'write over files that are there and that leat did not make');

/** `--out FILE`. */
export const outOption = (): Option =>
  new Option('--out <file>', 'keep what is done, now and then and at the end');

/** `--resume FILE`. */
export const resumeOption = (): Option =>
  new Option('--resume <file>', 'go on from what an earlier call kept');

/** `--workers N`. */
export const workersOption = (): Option =>
  new Option('--workers <number>', 'runs at the same time (default: one for each core)').argParser(count);

/** `--extend FILE`. */
export const extendOption = (): Option =>
  new Option('--extend <file>', 'run code of your own: a module of components and processes (see extend.md)');

/** `--fit FILE`. */
export const fitOption = (): Option =>
  new Option('--fit <file>', 'numbers as `leat fit` found them, in place of those of the file');

/** `--free PARAM`, repeatable. */
export const freeOption = (): Option =>
  new Option(
    '--free <number>',
    'a number that may vary: an id of the tables, start.nitrate, or such as "vessels.sump.volume=1..2 m3" (repeatable)',
  )
    .argParser((text: string, before: readonly string[]) => [...before, text])
    .default([], 'a usual set');

/** `--unlogged-feed WHAT`. */
export const unloggedFeedOption = (): Option =>
  new Option('--unlogged-feed <what>', 'what was fed on days for which none is written')
    .choices(['last', 'mean', 'none'])
    .default('last');

/** A date written as 2026-03-01. The same as `isDate` of the library, which options do not load: help stays quick. */
export function isoDate(text: string): string {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(text) : Number.NaN;
  // 2026-02-30 is read as the second of March.
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== text)
    throw new InvalidArgumentError('Write a date as 2026-03-01.');
  return text;
}

/** Reads a whole number between bounds, or bad usage. */
export const whole =
  (low: number, high: number) =>
  (text: string): number => {
    const value = Number(text);
    if (text.trim() === '' || !Number.isInteger(value) || value < low || value > high)
      throw new InvalidArgumentError(`Give a whole number from ${low} to ${high}.`);
    return value;
  };

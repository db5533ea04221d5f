import { contentHash, sealProblem, version } from '@leat/core';
import { basename } from 'node:path';
import { sealedText } from '@leat/view/documents';
import { digest } from './digest.js';
import { type Output, unusedOutput } from './outputs.js';
import { FileError, textOf } from './read.js';

/** A number that JSON has no word for. */
interface Odd {
  readonly odd: string;
}

const isOdd = (value: unknown): value is Odd =>
  typeof value === 'object' && value !== null && 'odd' in value && typeof value.odd === 'string';

/** Plain data as JSON, every number to the bit: what JSON has no word for (NaN, infinities, -0) is written out. */
export function numbersToText(data: unknown): string {
  return JSON.stringify(data, (_, value: unknown) => {
    if (typeof value !== 'number') return value;
    if (Object.is(value, -0)) return { odd: '-0' } satisfies Odd;
    return Number.isFinite(value) ? value : ({ odd: String(value) } satisfies Odd);
  });
}

/** What `numbersToText` wrote. Throws SyntaxError where the text is none. */
export function textToNumbers(text: string): unknown {
  return JSON.parse(text, (_, value: unknown) => (isOdd(value) ? Number(value.odd) : value)) as unknown;
}

/** Least time between two savings, ms. */
const pause = 500;
/** Savings take at most this share of the time. */
const share = 0.05;

/** Saves what is done now and then: not so often that it costs, not so seldom that much is lost. */
export function openSaver(save: () => void): { maybe(): void } {
  let last = performance.now();
  let cost = 0;
  return {
    maybe() {
      const now = performance.now();
      if (now - last < Math.max(pause, cost / share)) return;
      save();
      last = performance.now();
      cost = last - now;
    },
  };
}

/** The name of a file without its folder and ending: what the work on it is called. */
export const plainName = (file: string): string => basename(file).replace(/\.[^.]*$/, '');

/** Where work is kept when no file is named: by what it is called, by what was asked, and by the command. */
export function checkpointName(name: string, id: string, command: string): string {
  return `${name}-${id.slice(0, 8)}.${command}`;
}

/** What is said of work that ended early and is kept: how much of it, where, and how to go on. */
export function keptNote(done: string, path: string): string {
  return `${done} are kept in ${path}: the same command with --resume ${path} goes on\n`;
}

/** What was asked, by the name of each option, in words for a person. */
export type Asked = Readonly<Record<string, string>>;

/** What differs between what was asked before and now, one line for each: `name: before / now`. */
export function askedDifferences(before: Readonly<Record<string, unknown>>, now: Asked): readonly string[] {
  return Object.entries(now)
    .filter(([key, value]) => before[key] !== value)
    .map(([key, value]) => `${key}: ${String(before[key])} / ${value}`);
}

/** Changes with the form of the file. */
const schema = 2;

/** Largest checkpoint, bytes: more than a hundred thousand draws. */
const mostBytes = 512 * 2 ** 20;

/** Where a checkpoint is written and read. */
export interface CheckpointOptions {
  /** Kept there now and then and at the end: see `openKept`. */
  readonly kept?: Output | undefined;
  /** Gone on from there. */
  readonly resume?: string | undefined;
}

/** What work is about. */
export interface CheckpointTask<T> {
  /** The command, such as `size`. */
  readonly command: string;
  /** All that the outputs follow from, in words for a person: what differs is told. */
  readonly asked: Asked;
  /** All that they follow from, as plain data. */
  readonly from: unknown;
  /** Whether something read from a file is an output. */
  readonly isOutput: (value: unknown) => value is T;
}

/** The checkpoint of long work: its outputs by their part and number, kept in a file so that another call can go on. */
export interface Checkpoint<T> {
  /** The output of a number of a part; undefined while it is not done. */
  get(part: string, index: number): T | undefined;
  put(part: string, index: number, output: T): void;
  /** Outputs that are done. */
  size(): number;
  /** Keeps everything in the file named, where one was. */
  finish(): void;
  /** Keeps everything that is done in the file named, or else in one with this name; its name, undefined where nothing is done. */
  stop(name: string): string | undefined;
}

type Parts<T> = Map<string, Map<number, T>>;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isEntry = (value: unknown): value is readonly [number, unknown] =>
  Array.isArray(value) && value.length === 2 && Number.isSafeInteger(value[0]);

function partsOf<T>(done: unknown, isOutput: CheckpointTask<T>['isOutput'], path: string): Parts<T> {
  const damaged = new FileError(`${path}: damaged: an output is not of the form written`);
  if (!isRecord(done)) throw damaged;
  const parts: Parts<T> = new Map();
  for (const [part, entries] of Object.entries(done)) {
    if (!Array.isArray(entries)) throw damaged;
    const outputs = new Map<number, T>();
    for (const entry of entries as readonly unknown[]) {
      if (!isEntry(entry) || !isOutput(entry[1])) throw damaged;
      outputs.set(entry[0], entry[1]);
    }
    parts.set(part, outputs);
  }
  return parts;
}

/** Reads what an earlier call kept. Throws FileError where there is none, or it is of other work. */
function readCheckpoint<T>(
  path: string,
  id: string,
  { command, asked, isOutput }: CheckpointTask<T>,
): Parts<T> {
  const text = textOf(path, mostBytes);
  let kept: unknown;
  try {
    kept = textToNumbers(text);
  } catch {
    if (text.startsWith(`{"label":"leat ${command}"`))
      throw new FileError(`${path}: cut short, damaged, or with something behind its end`);
    kept = undefined;
  }
  if (!isRecord(kept) || kept['label'] !== `leat ${command}`)
    throw new FileError(`${path}: not a file of leat ${command} --out`);
  if (kept['schema'] !== schema)
    throw new FileError(
      `${path}: written in form ${String(kept['schema'])}; this version of leat reads form ${schema}`,
    );
  const seal = sealProblem(JSON.parse(text), digest);
  if (seal !== undefined) throw new FileError(`${path}: ${seal.problem}; expected ${seal.expected}`);
  if (kept['id'] !== id) {
    const before = isRecord(kept['asked']) ? kept['asked'] : {};
    const differences = askedDifferences(before, asked).map((line) => `  ${line}`);
    throw new FileError([`${path}: of other work (kept / asked):`, ...differences]);
  }
  return partsOf(kept['done'], isOutput, path);
}

/**
 * Opens work that is kept: what an earlier call did of it is there already. Throws FileError where the file to
 * go on from cannot be read, is damaged, or is of other work.
 */
export function openCheckpoint<T>(
  task: CheckpointTask<T>,
  { kept, resume }: CheckpointOptions,
): Checkpoint<T> {
  const { command, asked, from } = task;
  const id = contentHash({ version, word: command, from });
  const parts: Parts<T> =
    resume === undefined ? new Map<string, Map<number, T>>() : readCheckpoint(resume, id, task);
  const write = (to: Output): void => {
    const done = Object.fromEntries(
      [...parts].map(([part, outputs]) => [part, [...outputs].sort(([a], [b]) => a - b)]),
    );
    to.write(`${sealedText(numbersToText({ label: `leat ${command}`, schema, id, asked, done }), digest)}\n`);
  };
  const finish = (): void => {
    if (kept !== undefined) write(kept);
  };
  const saver = openSaver(finish);
  const size = (): number => [...parts.values()].reduce((sum, outputs) => sum + outputs.size, 0);
  return {
    get: (part, index) => parts.get(part)?.get(index),
    put(part, index, output) {
      const outputs = parts.get(part) ?? new Map<number, T>();
      parts.set(part, outputs.set(index, output));
      saver.maybe();
    },
    size,
    finish,
    stop(name) {
      if (size() === 0) return undefined;
      const to = kept ?? unusedOutput(checkpointName(name, id, command));
      write(to);
      return to.path;
    },
  };
}

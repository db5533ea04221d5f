import { resolve } from 'node:path';
import {
  fittedSettings,
  fittedTable,
  type Load,
  type OpenScenario,
  openScenarioText,
  readFit,
  type SavedFit,
  type ScenarioReading,
  withFittedStart,
} from '@leat/core';
import { openBeside } from '../../files/open-beside.js';
import { textOf } from '../../files/read.js';

/** Options of every command that reads a scenario. */
export interface ScenarioOptions {
  /** Each `path=value`. */
  readonly set: readonly string[];
  /** Tables of the user's own numbers, read after those that the file names. */
  readonly tables?: readonly string[];
  /** Folders beside that of the file from which the file may name others. */
  readonly allowPath?: readonly string[];
  readonly days?: number;
  readonly every?: string;
  /** Fit whose numbers stand in place of the file's and of the tables'; `--set` wins over it. */
  readonly fit?: string;
  /** Module that exports components and processes of the user's own. */
  readonly extend?: string;
}

function setting(text: string): { readonly path: string; readonly value: string } {
  const cut = text.indexOf('=');
  return { path: text.slice(0, cut).trim(), value: text.slice(cut + 1).trim() };
}

/** What `--set` puts over a scenario. */
export function settingsOf({
  set,
}: Pick<ScenarioOptions, 'set'>): readonly { readonly path: string; readonly value: string }[] {
  return set.map(setting);
}

/** A scenario as texts: what was read from disk once, so that every worker sees the same. Plain data. */
export interface ReferencedFiles {
  readonly file: string;
  readonly text: string;
  /** What it includes, by path. */
  readonly beside: ReadonlyMap<string, string>;
  /** The numbers found by `leat fit` that stand in it, and the file they were read from. */
  readonly fitted?: { readonly file: string; readonly fit: SavedFit };
  /** Module of components and processes of the user's own, as an absolute path. */
  readonly extend?: string;
  readonly options: ScenarioOptions;
}

function fitNotes({ file, fit }: { readonly file: string; readonly fit: SavedFit }, title: string): string[] {
  const { from, until } = fit.provenance;
  const note = `${file}: ${fit.numbers.length} numbers as fitted to the log of ${from} to ${until}`;
  if (fit.title === title) return [note];
  return [note, `${file}: fitted for "${fit.title}", used here for "${title}"`];
}

/** Opens a scenario with what the options put over it; the table of a fit goes by the name of its file. */
function open({ file, text, fitted, options }: ReferencedFiles, load: Load): OpenScenario {
  const { tables = [] } = options;
  const common = {
    file,
    ...(options.days === undefined ? {} : { days: options.days }),
    ...(options.every === undefined ? {} : { every: options.every }),
  };
  const set = settingsOf(options);
  if (fitted === undefined) return openScenarioText(text, { ...common, load, set, tables });
  const openWith = (given: ReadonlySet<string>): OpenScenario =>
    openScenarioText(text, {
      ...common,
      load: (path, from) => (path === fitted.file ? fittedTable(fitted.fit) : load(path, from)),
      set: [...fittedSettings(fitted.fit, given), ...set],
      tables: [...tables, fitted.file],
    });
  const { numbers } = fitted.fit;
  const first = openWith(new Set());
  const { overrides } = first.reading.scenario;
  const given = new Set(overrides.filter(({ row }) => row === undefined).map(({ id }) => id));
  const opened = numbers.some(({ name }) => given.has(name)) ? openWith(given) : first;
  const { reading } = opened;
  const about = `${fitted.file}: `;
  return {
    reading: {
      ...reading,
      scenario: withFittedStart(reading.scenario, numbers),
      notes: [
        ...fitNotes(fitted, reading.scenario.title),
        ...reading.notes.filter((note) => !note.startsWith(about)),
      ],
    },
    again: (parameters) => withFittedStart(opened.again(parameters), numbers),
  };
}

/** Opens a scenario from its texts alone. */
export function openTexts(texts: ReferencedFiles): OpenScenario {
  return open(texts, (path) => {
    const text = texts.beside.get(path);
    if (text === undefined) throw new Error(`${path}: was not read`);
    return text;
  });
}

/**
 * Reads a scenario file, what it includes (seen from its own folder), and what the options put over it. Throws
 * FileError where a file cannot be read and InputError with every fault in it.
 */
function openFile(
  file: string,
  { fit, allowPath, extend, ...options }: ScenarioOptions,
): { readonly texts: ReferencedFiles; readonly opened: OpenScenario } {
  const beside = new Map<string, string>();
  const openNext = openBeside([file], allowPath);
  const { set, tables, days, every } = options;
  const fitted = fit === undefined ? {} : { fitted: { file: fit, fit: readFit(textOf(fit), fit) } };
  const texts = {
    ...{ file, text: textOf(file), beside },
    ...fitted,
    ...(extend !== undefined && { extend: resolve(extend) }),
    options: {
      set,
      ...(tables === undefined ? {} : { tables }),
      ...(days === undefined ? {} : { days }),
      ...(every === undefined ? {} : { every }),
    },
  };
  const load = (path: string, from: string): string => {
    const read = openNext(path, from);
    beside.set(path, read);
    return read;
  };
  return { texts, opened: open(texts, load) };
}

/** The texts of a scenario that was found sound; throws as `openFile` does. */
export const readTexts = (file: string, options: ScenarioOptions): ReferencedFiles =>
  openFile(file, options).texts;

/** The reading of a scenario file; throws as `openFile` does. */
export const openScenario = (file: string, options: ScenarioOptions): ScenarioReading =>
  openFile(file, options).opened.reading;

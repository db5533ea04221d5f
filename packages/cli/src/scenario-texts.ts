import {
  fittedSettings,
  fittedTable,
  openScenarioText,
  readFit,
  withFittedStart,
  type Load,
  type OpenScenario,
  type SavedFit,
  type ScenarioReading,
} from '@leat/core';
import { openBeside } from './open-beside.js';
import { settingsOf, type ScenarioOptions } from './scenario-options.js';
import { textOf } from './text-of.js';

/** A scenario as texts: what was read from disk once, so that every worker sees the same. Plain data. */
export interface ScenarioTexts {
  readonly file: string;
  readonly text: string;
  /** What it includes, by path. */
  readonly beside: ReadonlyMap<string, string>;
  /** The numbers found by `leat fit` that stand in it, and the file they were read from. */
  readonly fitted?: { readonly file: string; readonly fit: SavedFit };
  readonly options: ScenarioOptions;
}

function fitNotes({ file, fit }: { readonly file: string; readonly fit: SavedFit }, title: string): string[] {
  const { from, until } = fit.provenance;
  const note = `${file}: ${fit.numbers.length} numbers as fitted to the log of ${from} to ${until}`;
  if (fit.title === title) return [note];
  return [note, `${file}: fitted for "${fit.title}", used here for "${title}"`];
}

/** Opens a scenario with what the options put over it; the table of a fit goes by the name of its file. */
function open({ file, text, fitted, options }: ScenarioTexts, load: Load): OpenScenario {
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
export function openTexts(texts: ScenarioTexts): OpenScenario {
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
  { fit, allowPath, ...options }: ScenarioOptions,
): { readonly texts: ScenarioTexts; readonly opened: OpenScenario } {
  const beside = new Map<string, string>();
  const openNext = openBeside([file], allowPath);
  const { set, tables, days, every } = options;
  const fitted = fit === undefined ? {} : { fitted: { file: fit, fit: readFit(textOf(fit), fit) } };
  const texts = {
    ...{ file, text: textOf(file), beside },
    ...fitted,
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
export const readTexts = (file: string, options: ScenarioOptions): ScenarioTexts =>
  openFile(file, options).texts;

/** The reading of a scenario file; throws as `openFile` does. */
export const openScenario = (file: string, options: ScenarioOptions): ScenarioReading =>
  openFile(file, options).opened.reading;

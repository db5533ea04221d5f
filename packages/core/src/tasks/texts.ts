import { fittedSettings, fittedTable, type SavedFit } from '../calibration/fit-file.js';
import { withFittedStart } from '../calibration/fitted-system.js';
import type { Load } from '../scenario/file/include-tree.js';
import { extendedBy, type ExtendedScenario } from '../model/open-model.js';
import type { Extension } from '../model/own.js';
import { type OpenScenario, openScenarioText } from '../scenario/read-scenario.js';

/** What is put over a system file. */
export interface TextOptions {
  /** Each `path=value`. */
  readonly set: readonly string[];
  /** Tables of the user's own numbers, read after those that the file names. */
  readonly tables?: readonly string[];
  /** Length of the run, d; absent: that of the file. */
  readonly days?: number;
  readonly every?: string;
}

function setting(text: string): { readonly path: string; readonly value: string } {
  const cut = text.indexOf('=');
  return { path: text.slice(0, cut).trim(), value: text.slice(cut + 1).trim() };
}

/** What is put over a scenario, from `path=value`. */
export function settingsOf({
  set,
}: Pick<TextOptions, 'set'>): readonly { readonly path: string; readonly value: string }[] {
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
  /** Module of components and processes of the user's own: its absolute path, and its text, by which it is known again. */
  readonly extend?: { readonly file: string; readonly text: string };
  /** What that module gives. Functions, which no worker can be sent: each loads the module again. */
  readonly extension?: Extension;
  readonly options: TextOptions;
}

function fitNotes({ file, fit }: { readonly file: string; readonly fit: SavedFit }, title: string): string[] {
  const { from, until } = fit.provenance;
  const note = `${file}: ${fit.numbers.length} numbers as fitted to the log of ${from} to ${until}`;
  if (fit.title === title) return [note];
  return [note, `${file}: fitted for "${fit.title}", used here for "${title}"`];
}

/**
 * Opens a scenario with what the options put over it, and the components and processes of the user's own; the table of a fit goes
 * by the name of its file. Throws RangeError where a module was named and not loaded: it would be passed over.
 */
export function openWith(texts: ReferencedFiles, load: Load): ExtendedScenario {
  const { extend, extension } = texts;
  if (extension !== undefined) return extendedBy(openBare(texts, load), extension);
  if (extend !== undefined) throw new RangeError(`${extend.file} was not loaded`);
  return openBare(texts, load);
}

function openBare({ file, text, fitted, options }: ReferencedFiles, load: Load): OpenScenario {
  const { tables = [] } = options;
  const common = {
    file,
    ...(options.days === undefined ? {} : { days: options.days }),
    ...(options.every === undefined ? {} : { every: options.every }),
  };
  const set = settingsOf(options);
  if (fitted === undefined) return openScenarioText(text, { ...common, load, set, tables });
  const openGiven = (given: ReadonlySet<string>): OpenScenario =>
    openScenarioText(text, {
      ...common,
      load: (path, from) => (path === fitted.file ? fittedTable(fitted.fit) : load(path, from)),
      set: [...fittedSettings(fitted.fit, given), ...set],
      tables: [...tables, fitted.file],
    });
  const { numbers } = fitted.fit;
  const first = openGiven(new Set());
  const { overrides } = first.reading.scenario;
  const given = new Set(overrides.filter(({ row }) => row === undefined).map(({ id }) => id));
  const opened = numbers.some(({ name }) => given.has(name)) ? openGiven(given) : first;
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

/** Opens a scenario from its texts alone. Throws InputError with every fault in it. */
export function openTexts(texts: ReferencedFiles): ExtendedScenario {
  return openWith(texts, (path) => {
    const text = texts.beside.get(path);
    if (text === undefined) throw new Error(`${path}: was not read`);
    return text;
  });
}

import { fittedSettings, fittedTable, type SavedFit } from '../calibration/fit-file.js';
import { fedBy, withFilms } from '../calibration/grown-start.js';
import { withFittedStart } from '../calibration/fitted-system.js';
import type { Load } from '../scenario/file/include-tree.js';
import type { Setting } from '../scenario/file/set-value.js';
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

/**
 * A system whose cycled films have grown on what those of its fit have: the log's first feed. What options say of rations is of
 * the days to come, and feeds no film of the past.
 * @param openFed the same with settings laid over all that the options say
 */
function grownAsFitted(
  opened: OpenScenario,
  { grownOn }: SavedFit,
  openFed: (fed: readonly Setting[]) => OpenScenario,
): { readonly grown: OpenScenario; readonly note?: string } {
  const { scenario } = opened.reading;
  if (scenario.saved !== undefined) return { grown: opened };
  if (grownOn === undefined)
    return {
      grown: opened,
      note: 'an older fit, which does not say what its films grew on: those that the file calls cycled have grown on the ration of the file; fit again',
    };
  const { fed, note } = fedBy(scenario, grownOn, openFed, ({ reading }) => reading.scenario);
  const told = note === undefined ? {} : { note };
  if (fed === undefined) return { grown: opened, ...told };
  return {
    grown: {
      reading: { ...opened.reading, scenario: withFilms(scenario, fed.reading.scenario) },
      again: (parameters) => withFilms(opened.again(parameters), fed.again(parameters)),
    },
    ...told,
  };
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
  const { fit } = fitted;
  const openGiven = (given: ReadonlySet<string>, fed: readonly Setting[] = []): OpenScenario =>
    openScenarioText(text, {
      ...common,
      load: (path, from) => (path === fitted.file ? fittedTable(fit) : load(path, from)),
      set: [...fittedSettings(fit, given), ...set, ...fed],
      tables: [...tables, fitted.file],
    });
  const { numbers } = fit;
  const first = openGiven(new Set());
  const { overrides } = first.reading.scenario;
  const anew = new Set(overrides.filter(({ row }) => row === undefined).map(({ id }) => id));
  const given = numbers.some(({ name }) => anew.has(name)) ? anew : new Set<string>();
  const opened = given === anew ? openGiven(given) : first;
  const { grown, note } = grownAsFitted(opened, fit, (fed) => openGiven(given, fed));
  const { reading } = grown;
  const about = `${fitted.file}: `;
  return {
    reading: {
      ...reading,
      scenario: withFittedStart(reading.scenario, numbers),
      notes: [
        ...fitNotes(fitted, reading.scenario.title),
        ...(note === undefined ? [] : [`${about}${note}`]),
        ...reading.notes.filter((each) => !each.startsWith(about)),
      ],
    },
    again: (parameters) => withFittedStart(grown.again(parameters), numbers),
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

import {
  readFit,
  readScenarioFully,
  settingsOf as fittedSettings,
  withFittedStart,
  type FitSystem,
  type ScenarioReading,
} from '@leat/core';
import { FileError, reasonOf } from './file-error.js';
import { readText } from './read-text.js';

/** Options of every command that reads a scenario. */
export interface ScenarioOptions {
  /** Each `path=value`. */
  readonly set: readonly string[];
  /** Tables of the user's own numbers, read after those that the file names. */
  readonly tables?: readonly string[];
  readonly days?: number;
  readonly every?: string;
  /** Fit whose numbers stand in place of the file's; `--set` wins over it. */
  readonly fit?: string;
}

function setting(text: string): { readonly path: string; readonly value: string } {
  const cut = text.indexOf('=');
  return { path: text.slice(0, cut).trim(), value: text.slice(cut + 1).trim() };
}

/** What the options put over a scenario. */
export function settingsOf({
  set,
}: ScenarioOptions): readonly { readonly path: string; readonly value: string }[] {
  return set.map(setting);
}

/** Text of a file that was named on the command line. Throws FileError. */
export function textOf(file: string): string {
  try {
    return readText(file);
  } catch (error) {
    throw new FileError(`${file}: cannot be read: ${reasonOf(error)}`);
  }
}

/**
 * Reads a scenario file, what it includes (seen from its own folder) and what the options put over it.
 * Throws FileError where a file cannot be read and InputError with every fault in it.
 */
export function openScenario(file: string, options: ScenarioOptions): ScenarioReading {
  const fit = options.fit === undefined ? undefined : readFit(textOf(options.fit), options.fit);
  const numbers = fit?.numbers ?? [];
  const reading = readScenarioFully(textOf(file), {
    file,
    load: readText,
    set: [...fittedSettings(numbers), ...settingsOf(options)],
    ...(options.tables === undefined ? {} : { tables: options.tables }),
    ...(options.days === undefined ? {} : { days: options.days }),
    ...(options.every === undefined ? {} : { every: options.every }),
  });
  if (fit === undefined) return reading;
  const note = `${options.fit ?? ''}: ${numbers.length} numbers as fitted to the log of ${fit.provenance.from} to ${fit.provenance.until}`;
  return {
    ...reading,
    scenario: withFittedStart(reading.scenario, numbers),
    notes: [note, ...reading.notes],
  };
}

/** A scenario file that a fit can read again and again: each file on the disk is read once. Throws FileError. */
export function openSystem(file: string, options: ScenarioOptions): FitSystem {
  const text = textOf(file);
  const texts = new Map<string, string>();
  const load = (path: string): string => {
    const known = texts.get(path) ?? readText(path);
    texts.set(path, known);
    return known;
  };
  const given = options.set.map(setting);
  return {
    read: (set, days) =>
      readScenarioFully(text, {
        file,
        load,
        set: [...given, ...set],
        ...(days === undefined ? {} : { days }),
      }),
  };
}

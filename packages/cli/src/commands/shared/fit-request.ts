import {
  type FitSearch,
  type FitSystem,
  readLog,
  readLogMap,
  readScenarioFully,
  type UnloggedFeed,
} from '@leat/core';
import { openBeside } from '../../files/open-beside.js';
import { openLog } from '../../files/open-log.js';
import { textOf } from '../../files/read.js';
import { type ScenarioOptions, settingsOf } from './referenced-files.js';

/** A scenario file that a fit can read again and again: each file on the disk is read once. Throws FileError. */
export function openSystem(
  file: string,
  options: Pick<ScenarioOptions, 'set' | 'tables' | 'allowPath'>,
): FitSystem {
  const text = textOf(file);
  const texts = new Map<string, string>();
  const openNext = openBeside([file], options.allowPath);
  const load = (path: string, from: string): string => {
    const known = texts.get(path) ?? openNext(path, from);
    texts.set(path, known);
    return known;
  };
  const given = settingsOf(options);
  return {
    read: (set, days) =>
      readScenarioFully(text, {
        file,
        load,
        set: [...given, ...set],
        ...(options.tables === undefined ? {} : { tables: options.tables }),
        ...(days === undefined ? {} : { days }),
      }),
  };
}

/** Options of every command that holds a system against its log. */
export interface LoggedOptions extends ScenarioOptions {
  readonly log: string;
  readonly map: string;
  readonly unloggedFeed: UnloggedFeed;
  readonly until?: string;
}

/** Opens a system and its log for fitting. Throws FileError and InputError. */
export async function openFitRequest(
  file: string,
  options: LoggedOptions,
  free: readonly string[],
): Promise<FitSearch> {
  const table = await openLog(options.log);
  const log = readLog(table, readLogMap(textOf(options.map), options.map, table));
  return {
    system: openSystem(file, options),
    log,
    free,
    unloggedFeed: options.unloggedFeed,
    ...(options.until === undefined ? {} : { until: options.until }),
  };
}

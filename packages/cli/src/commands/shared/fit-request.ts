import { resolve } from 'node:path';
import {
  type ActionsOverlay,
  actionsOverlays,
  type FitSearch,
  type FitSystem,
  readLog,
  readLogMap,
  readScenarioFully,
  sheetOfMap,
  type UnloggedFeed,
} from '@leat/core';
import { openBeside } from '../../files/open-beside.js';
import { openLog } from '../../files/open-log.js';
import { textOf } from '../../files/read.js';
import { settingsOf } from '@leat/core/tasks';
import { type ScenarioOptions } from './referenced-files.js';

/** A scenario file that a fit can read again and again: each file on the disk is read once. Throws FileError. */
export function openSystem(
  file: string,
  options: Pick<ScenarioOptions, 'set' | 'tables' | 'allowPath' | 'extend'>,
  overlays: readonly ActionsOverlay[] = [],
): FitSystem {
  const own = resolve(file);
  const texts = new Map<string, string>([
    [own, textOf(file)],
    ...overlays.map(({ file: name, text }): [string, string] => [resolve(name), text]),
  ]);
  const openNext = openBeside([file], options.allowPath);
  const load = (path: string, from: string): string => {
    const known = texts.get(path) ?? openNext(path, from);
    texts.set(path, known);
    return known;
  };
  const given = settingsOf(options);
  const top = overlays.at(-1)?.file ?? file;
  const text = texts.get(resolve(top)) ?? '';
  const logged = new Set(overlays.map(({ file: name }) => name));
  return {
    logged,
    read: (set, days) => ({
      ...readScenarioFully(text, {
        file: top,
        load,
        set: [...given, ...set],
        ...(options.tables === undefined ? {} : { tables: options.tables }),
        ...(days === undefined ? {} : { days }),
      }),
      ...(options.extend && { extension: options.extend.extension }),
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
  const map = textOf(options.map);
  const table = await openLog(options.log, sheetOfMap(map));
  const log = readLog(table, readLogMap(map, options.map, table));
  const overlays = actionsOverlays(log, options.map, resolve(file));
  return {
    system: openSystem(file, options, overlays),
    log,
    free,
    unloggedFeed: options.unloggedFeed,
    ...(options.until === undefined ? {} : { until: options.until }),
  };
}

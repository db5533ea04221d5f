import { readLog, readLogMap, type FitSearch, type UnloggedFeed } from '@leat/core';
import { openLog } from './open-log.js';
import { openSystem } from './open-system.js';
import type { ScenarioOptions } from './scenario-options.js';
import { textOf } from './text-of.js';

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

import { resolve } from 'node:path';
import { forecast, readFit, readScenarioFully, type FitSystem } from '@leat/core';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { openFitRequest, type LoggedOptions } from '../shared/fit-request.js';
import { openSystem } from '../shared/fit-request.js';
import { textOf } from '../../files/read.js';
import { settingsOf } from '@leat/core/tasks';
import { openBeside } from '../../files/open-beside.js';
import { forecastLines } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { savedDocument } from '../../files/saved-document.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat forecast` was asked; `set` and `overlay` are the what-if, and say nothing of the past. */
export interface ForecastOptions extends Omit<LoggedOptions, 'fit'> {
  readonly fit: string;
  readonly days: number;
  readonly members: number;
  readonly seed: number;
  readonly overlay?: string;
  readonly json?: boolean;
}

/** The system with a what-if laid over it; undefined where none is asked for. */
function whatIfOf(
  file: string,
  { set, overlay, tables = [], allowPath = [], extend }: ForecastOptions,
): FitSystem | undefined {
  if (overlay === undefined)
    return set.length === 0
      ? undefined
      : openSystem(file, { set, tables, allowPath, ...(extend && { extend }) });
  const text = `include: ${JSON.stringify([resolve(file), resolve(overlay)])}\n`;
  const given = settingsOf({ set });
  const load = openBeside([file, overlay], allowPath);
  return {
    read: (settings, days) => ({
      ...readScenarioFully(text, {
        file: overlay,
        load,
        set: [...settings, ...given],
        tables,
        ...(days === undefined ? {} : { days }),
      }),
      ...(extend && { extension: extend.extension }),
    }),
  };
}

/** `leat forecast FILE`: what a fitted system will do in the days after its log, with bands. */
export async function forecastCommand(
  file: string,
  options: ForecastOptions,
  streams: Streams,
): Promise<ExitCode> {
  const { fit, days, members, seed } = options;
  const saved = readFit(textOf(fit), fit);
  const { log, map, unloggedFeed, tables = [], allowPath = [], extend } = options;
  const plain = { log, map, unloggedFeed, tables, allowPath, set: [], ...(extend && { extend }) };
  const request = await openFitRequest(
    file,
    options.until === undefined ? plain : { ...plain, until: options.until },
    [],
  );
  const whatIf = whatIfOf(file, options);
  const result = forecast({
    ...request,
    fit: saved,
    days,
    members,
    seed,
    ...(whatIf === undefined ? {} : { whatIf }),
  });
  const asked = whatIf === undefined ? undefined : { set: options.set, overlay: options.overlay ?? null };
  streams.result(
    options.json === true
      ? savedDocument('leat-forecast', { whatIf: asked ?? null, ...result })
      : linesText(forecastLines(result, asked)),
  );
  return result.members === 0 ? exit.notFinished : exit.done;
}

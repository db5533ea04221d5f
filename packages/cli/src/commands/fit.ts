import { fit, fitText } from '@leat/core';
import { exit, type ExitCode } from '../exit.js';
import { openFitRequest, type LoggedOptions } from '../open-fit-request.js';
import { fitLines } from '../render/fit.js';
import type { Streams } from '../streams.js';
import { writeAtomic } from '../write-atomic.js';

/** What `leat fit` was asked. */
export interface FitOptions extends LoggedOptions {
  readonly free: readonly string[];
  readonly starts: number;
  readonly out?: string;
  readonly json?: boolean;
}

/** `leat fit FILE`: fits a system to its log, says what the log tells, and writes the numbers for other commands. */
export async function fitCommand(file: string, options: FitOptions, streams: Streams): Promise<ExitCode> {
  const request = await openFitRequest(file, options, options.free);
  const found = fit({ ...request, furtherStarts: options.starts - 1 });
  if (options.out !== undefined) writeAtomic(options.out, fitText(found));
  streams.result(
    options.json === true ? fitText(found) : `${fitLines(found, request.log.oddities.length).join('\n')}\n`,
  );
  return exit.done;
}

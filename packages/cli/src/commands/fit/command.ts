import { type Fit, fitText } from '@leat/core';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { openFitRequest, type LoggedOptions } from '../shared/fit-request.js';
import { fitOnCores } from './on-cores.js';
import { fitLines } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { openOutputs } from '../../files/outputs.js';
import { linesText } from '../../terminal/columns.js';
import { InterruptedError } from '../../workers/interruptible.js';

/** What `leat fit` was asked. */
export interface FitOptions extends LoggedOptions {
  readonly free: readonly string[];
  readonly starts: number;
  readonly out?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** What to do with the answer: keep it, or give it to another command. */
const nextStep = (out: string | undefined): string =>
  out === undefined
    ? 'this fit is not kept: with --out fit.json it is written to a file that leat forecast, run, ensemble and others take with --fit fit.json'
    : `written to ${out}: leat forecast, run, ensemble and others take it with --fit ${out}`;

/** `leat fit FILE`: fits a system to its log, says what the log tells, and writes the numbers for other commands. A fit that failed by its verdict leaves as one that was not finished. */
export async function fitCommand(file: string, options: FitOptions, streams: Streams): Promise<ExitCode> {
  const request = await openFitRequest(file, options, options.free);
  const { out } = openOutputs<'out'>(options, { out: 'fit' }, options);
  let found: Fit;
  try {
    found = await fitOnCores(
      { ...request, furtherStarts: options.starts - 1 },
      { file, options, free: options.free },
    );
  } catch (error) {
    if (!(error instanceof InterruptedError)) throw error;
    streams.note('stopped: nothing is told of a fit that is not whole\n');
    return error.code;
  }
  out?.write(fitText(found));
  streams.result(
    options.json === true ? fitText(found) : linesText(fitLines(found, request.log.oddities.length)),
  );
  if (options.json !== true) streams.note(linesText([nextStep(options.out)]));
  return found.verdict === 'failed' ? exit.notFinished : exit.done;
}

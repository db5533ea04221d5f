import { backtest } from '@leat/core';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { openFitRequest, type LoggedOptions } from '../shared/fit-request.js';
import { backtestLines } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { savedDocument } from '../../files/saved-document.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat backtest` was asked. */
export interface BacktestOptions extends LoggedOptions {
  readonly free: readonly string[];
  readonly step: number;
  readonly warmUp: number;
  readonly fits: number;
  readonly json?: boolean;
}

/** `leat backtest FILE`: what forecasts from this log would have been worth, beside two that need no model. */
export async function backtestCommand(
  file: string,
  options: BacktestOptions,
  streams: Streams,
): Promise<ExitCode> {
  const request = await openFitRequest(file, options, options.free);
  const { step, warmUp, fits } = options;
  const result = backtest({ ...request, step, warmUp, fits });
  streams.result(
    options.json === true ? savedDocument('leat-backtest', result) : linesText(backtestLines(result)),
  );
  return exit.done;
}

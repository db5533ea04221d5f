import { ensembleResult, type Tally } from '@leat/core';
import { exit, type ExitCode } from '../exit.js';
import { ensembleText } from '../render/ensemble.js';
import { styleFor } from '../render/style.js';
import type { Streams } from '../streams.js';
import { writeAtomic } from '../write-atomic.js';
import { ensembleCsv } from './ensemble-csv.js';
import { ensembleDocument } from './ensemble-document.js';
import type { EnsemblePart } from './ensemble-part.js';

/** How an ensemble is told. */
export interface TellOptions {
  readonly json?: boolean;
  readonly csv?: string;
}

/** Tells what an ensemble says. Leaves with `notFinished` when every member failed. */
export function tellEnsemble(
  part: EnsemblePart,
  tally: Tally,
  options: TellOptions,
  streams: Streams,
): ExitCode {
  const { outline, sampling, keys } = part;
  const result = ensembleResult(outline, sampling, tally);
  if (options.csv !== undefined) writeAtomic(options.csv, ensembleCsv(result));
  if (options.json === true) streams.result(ensembleDocument(part, result));
  else streams.result(ensembleText(outline.title, result, keys, styleFor(process.stdout.isTTY, process.env)));
  if (result.failed.length < result.ran) return exit.done;
  streams.note('not finished: every member failed\n');
  return exit.notFinished;
}

import { type Bands, type EnsembleResult, ensembleResult, type Accumulator, version } from '@leat/core';
import { cautions, type Display } from '@leat/view/text';
import { csv } from '@leat/view/documents';
import { ensembleId, type EnsemblePart } from '../../files/ensemble-part.js';
import { savedDocument } from '../../files/saved-document.js';
import type { Output } from '../../files/outputs.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { Streams } from '../../terminal/streams.js';
import { styleFor } from '../../terminal/style.js';
import { ensembleText } from './text.js';

/** One row per output time; for every series its median and the edges of its 50 % and 90 % bands (`p25` is that of 25 %). */
function ensembleCsv({ times, series }: EnsembleResult): string {
  const columns = series.flatMap(({ name, unit, median, band50, band90 }) => [
    { name: `${name} median`, unit, values: median },
    { name: `${name} p25`, unit, values: band50[0] },
    { name: `${name} p75`, unit, values: band50[1] },
    { name: `${name} p05`, unit, values: band90[0] },
    { name: `${name} p95`, unit, values: band90[1] },
  ]);
  return csv(times, columns);
}

const bands = ({ median, band50, band90 }: Bands): Bands => ({ median, band50, band90 });

/** An ensemble as one JSON document. Numbers that JSON lacks (nobody there) are null. */
function ensembleDocument(part: EnsemblePart, result: EnsembleResult): string {
  const { outline, sampling } = part;
  const document = {
    title: outline.title,
    manifest: { version, scenario: outline.scenario, ensemble: ensembleId(part), sampling },
    members: sampling.members,
    ran: result.ran,
    failed: result.failed,
    drawn: result.drawn,
    time: result.times,
    series: Object.fromEntries(
      result.series.map(({ name, unit, median, band50, band90, resolution }) => [
        name,
        {
          unit,
          median: Array.from(median),
          band50: band50.map((edge) => Array.from(edge)),
          band90: band90.map((edge) => Array.from(edge)),
          resolution,
        },
      ]),
    ),
    keys: part.keys,
    limits: result.limits.map((limit) => ({
      ...limit,
      first: bands(limit.first),
      total: bands(limit.total),
    })),
    measures: result.measures,
    conditions: result.conditions,
    cautions,
  };
  return savedDocument('leat-ensemble', document);
}

/** How an ensemble is told. */
export interface PrintOptions {
  readonly display: Display;
  readonly json?: boolean;
  /** Where the bands go as CSV. */
  readonly csv?: Output | undefined;
}

/** Tells what an ensemble says. Leaves with `notFinished` when every member failed. */
export function printEnsemble(
  part: EnsemblePart,
  accumulator: Accumulator,
  options: PrintOptions,
  streams: Streams,
): ExitCode {
  const { outline, sampling, keys } = part;
  const result = ensembleResult(outline, sampling, accumulator);
  options.csv?.write(ensembleCsv(result));
  if (options.json === true) streams.result(ensembleDocument(part, result));
  else {
    const style = styleFor(process.stdout.isTTY, process.env);
    streams.result(ensembleText(outline.title, result, keys, options.display, style));
  }
  if (result.failed.length < result.ran) return exit.done;
  streams.note('not finished: every member failed\n');
  return exit.notFinished;
}

import { bibtex, endStateOf, sealed, worstResidual } from '@leat/core';
import type { ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { displayFor, type DisplayOptions } from '../shared/display.js';
import { openScenario } from '../shared/referenced-files.js';
import { csv, longCsv } from '@leat/view/documents';
import { resultsOf, runDocument, type RunResults } from '@leat/view/documents';
import { sourceLines } from './text.js';
import { styleFor } from '../../terminal/style.js';
import { summary } from './text.js';
import type { Streams } from '../../terminal/streams.js';
import { savedDocument } from '../../files/saved-document.js';
import { openOutputs, type Output } from '../../files/outputs.js';
import { endingOf } from '../shared/simulated.js';
import { simulated, type SimulatedOptions } from '../shared/simulated.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat run` was asked. */
export interface RunOptions extends ScenarioOptions, SimulatedOptions, DisplayOptions {
  readonly json?: boolean;
  readonly csv?: string;
  readonly parquet?: string;
  /** One value a row, in the files of series. */
  readonly long?: boolean;
  readonly save?: string;
  readonly force?: boolean;
  /** Sources of the numbers used: behind the summary, or as BibTeX in its place. */
  readonly sources?: 'text' | 'bibtex';
  /** How it was integrated and how balances close. */
  readonly detail?: boolean;
  /** Series to draw in the terminal; true for the usual ones. */
  readonly plot?: true | readonly string[];
}

/** Writes the files of series. */
async function writeCourses(
  { run, series }: RunResults,
  { long = false }: RunOptions,
  outputs: { readonly csv?: Output; readonly parquet?: Output },
): Promise<void> {
  const times = run.samples.map(({ time }) => time);
  const { title, startDate } = run.model.scenario;
  outputs.csv?.write(long ? longCsv(times, series, startDate) : csv(times, series, startDate));
  if (outputs.parquet === undefined) return;
  const { parquet } = await import('../../files/parquet.js');
  outputs.parquet.write(parquet({ title, startDate, times }, series, long));
}

/**
 * `leat run FILE`: simulates and prints the summary, or one JSON document; writes the files asked for.
 * A run that broke off, or whose balance does not close, is still printed in full.
 */
export async function runCommand(file: string, options: RunOptions, streams: Streams): Promise<ExitCode> {
  const reading = openScenario(file, options);
  const display = displayFor(options, reading.display);
  const outputs = openOutputs<'csv' | 'parquet' | 'save'>(
    options,
    { csv: 'course', parquet: 'parquet', save: 'state' },
    options,
  );
  const { run, used } = await simulated(reading, options, streams);
  const results = resultsOf(run, used);
  await writeCourses(results, options, outputs);
  outputs.save?.write(`${JSON.stringify(sealed(endStateOf(run)), null, 2)}\n`);
  if (options.json === true) {
    streams.result(savedDocument('leat-run', runDocument(results)));
  } else if (options.sources === 'bibtex') {
    streams.result(bibtex(results.sources));
  } else if (options.quiet !== true) {
    streams.result(
      summary(results, styleFor(process.stdout.isTTY, process.env), {
        display,
        ...(options.detail === true && { detail: true }),
      }),
    );
  }
  if (options.plot !== undefined && options.json !== true) {
    const { terminalCharts } = await import('../plot/text.js');
    streams.result(terminalCharts(run, options.plot, display));
  }
  if (options.sources === 'text' && options.json !== true)
    streams.result(`\n${linesText(sourceLines(results.sources))}`);
  const { code, text } = endingOf(run, worstResidual(results.budgets).budget);
  if (text !== '') streams.note(linesText([text]));
  return code;
}

import { worstResidual } from '@leat/core';
import type { RunSummary } from '@leat/view/report';
import { readEnsemble, type SavedEnsemble } from '../../files/saved-ensemble.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { FileError } from '../../files/read.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { displayFor, type DisplayOptions } from '../shared/display.js';
import { openGathering, withBands } from '../shared/gather.js';
import { reportPage } from './page.js';
import type { Streams } from '../../terminal/streams.js';
import { openOutputs } from '../../files/outputs.js';
import { endingOf } from '../shared/simulated.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat report` was asked. */
export interface ReportOptions extends ScenarioOptions, DisplayOptions {
  readonly out: string;
  readonly force?: boolean;
  /** What `leat ensemble` kept of some of the files. */
  readonly ensemble?: readonly string[];
}

/** Reads every file before it says what is wrong with some. Throws FileError. */
function ensemblesOf(files: readonly string[]): readonly SavedEnsemble[] {
  const faults: string[] = [];
  const kept = files.flatMap((file) => {
    try {
      return [readEnsemble(file)];
    } catch (error) {
      if (!(error instanceof FileError)) throw error;
      faults.push(error.message);
      return [];
    }
  });
  if (faults.length > 0) throw new FileError(faults);
  return kept;
}

/**
 * `leat report FILE...`: simulates each scenario, or takes the document of `leat run --json` as it is, and writes
 * one HTML file about them, with bands where `--ensemble` has an ensemble of one. Leaves with the code of the run that ended worst; the report is written all the same.
 */
export async function reportCommand(
  files: readonly string[],
  options: ReportOptions,
  streams: Streams,
): Promise<ExitCode> {
  const saved = ensemblesOf(options.ensemble ?? []);
  const gatherings = files.map((file, i) =>
    openGathering(file, String.fromCharCode(65 + i), options, streams),
  );
  const display = displayFor(options, ...gatherings.map(({ wants }) => wants));
  const { out } = openOutputs<'out'>(options, { out: 'report' }, options);
  const runs: RunSummary[] = [];
  for (const gathering of gatherings) runs.push(await gathering.summary(display));
  const summaries = withBands(runs, saved);
  out?.write(reportPage(summaries, display));
  streams.note(linesText([`${options.out} written`]));
  const endings = summaries.map(({ account, budgets }) => endingOf(account, worstResidual(budgets).budget));
  endings.forEach(({ text }, i) => {
    if (text !== '') streams.note(linesText([`${files[i]}: ${text}`]));
  });
  return endings.reduce<ExitCode>((worst, { code }) => (code > worst ? code : worst), exit.done);
}

import {
  allSeries,
  budgetsOf,
  changesBetween,
  compareRuns,
  type FileChange,
  type PlainFile,
  type ScenarioReading,
  worstResidual,
} from '@leat/core';
import { cautions } from '@leat/view/text';
import { accountOf, meaningful } from '@leat/view/documents';
import { displayFor, type DisplayOptions } from '../shared/display.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { openScenario } from '../shared/referenced-files.js';
import { textOf } from '../../files/read.js';
import { comparisonText } from './text.js';
import { styleFor } from '../../terminal/style.js';
import { savedRun, type SavedRun } from '../../files/saved-run.js';
import type { Streams } from '../../terminal/streams.js';
import { endingOf } from '../shared/simulated.js';
import { simulated } from '../shared/simulated.js';
import { savedDocument } from '../../files/saved-document.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat compare` was asked. */
export interface CompareOptions extends ScenarioOptions, DisplayOptions {
  /** Percent of the highest of a quantity by which two values must differ to be apart. */
  readonly apart: number;
  readonly json?: boolean;
}

/** A run to be compared, and what its file says where it is not a saved run. */
type Compared = Pick<SavedRun, 'account' | 'budgets'> & {
  readonly written?: PlainFile;
  readonly wants?: NonNullable<ScenarioReading['display']>;
};

/** What each other file says otherwise than the first; of saved runs nothing is known. */
function differencesOf([first, ...others]: readonly Compared[]): readonly (readonly FileChange[] | null)[] {
  return others.map(({ written }) =>
    first.written === undefined || written === undefined ? null : changesBetween(first.written, written),
  );
}

/** What a file says: the run that it holds, or the run of the scenario that it is. */
async function accountFrom(file: string, options: CompareOptions, streams: Streams): Promise<Compared> {
  const saved = savedRun(file, textOf(file));
  if (saved === undefined) {
    const reading = openScenario(file, options);
    const { run } = await simulated(reading, {}, streams);
    // As `leat run --json` says it, so that a run and its document compare alike.
    const account = accountOf(run);
    return {
      account: { ...account, series: meaningful(run, allSeries(run)) },
      budgets: budgetsOf(run),
      ...(reading.display !== undefined && { wants: reading.display }),
      written: reading.resolved.written,
    };
  }
  if (
    options.set.length > 0 ||
    (options.tables ?? []).length > 0 ||
    options.fit !== undefined ||
    options.extend !== undefined ||
    options.days !== undefined ||
    options.every !== undefined
  )
    streams.note(
      linesText([
        `${file}: a saved run: --set, --tables, --fit, --extend, --days and --every do not change it`,
      ]),
    );
  return saved;
}

/**
 * `leat compare FILE OTHER...`: simulates each scenario, or takes the document of `leat run --json` as it is,
 * and puts the runs side by side. Leaves with the code of the run that ended worst.
 */
export async function compareCommand(
  files: readonly string[],
  options: CompareOptions,
  streams: Streams,
): Promise<ExitCode> {
  // Units that are none are told before anything is run.
  displayFor(options);
  const saved: Compared[] = [];
  for (const file of files) saved.push(await accountFrom(file, options, streams));
  const accounts = saved.map(({ account }) => account);
  const runs = accounts.map(({ title, outcome, verdict, costs, startDate }, i) => ({
    name: String.fromCharCode(65 + i),
    file: files[i],
    title,
    outcome,
    verdict,
    ...(costs && { costs }),
    startDate,
  }));
  const comparison = compareRuns(accounts, options.apart / 100);
  if (options.json === true)
    streams.result(savedDocument('leat-comparison', { runs, ...comparison, cautions }));
  else {
    const display = displayFor(options, ...saved.map(({ wants }) => wants));
    const style = styleFor(process.stdout.isTTY, process.env);
    streams.result(comparisonText(comparison, runs, differencesOf(saved), style, display));
  }
  const endings = saved.map(({ account, budgets }) => endingOf(account, worstResidual(budgets).budget));
  endings.forEach(({ text }, i) => {
    if (text !== '') streams.note(linesText([`${files[i]}: ${text}`]));
  });
  return endings.reduce<ExitCode>((worst, { code }) => (code > worst ? code : worst), exit.done);
}

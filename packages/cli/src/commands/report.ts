import { worstResidual } from '@leat/core';
import { exit, type ExitCode } from '../exit.js';
import type { ScenarioOptions } from '../scenario-options.js';
import { gather } from '../report/gather.js';
import { reportPage } from '../report/page/report-page.js';
import type { ToldRun } from '../report/told-run.js';
import type { Streams } from '../streams.js';
import { writeAtomic } from '../write-atomic.js';
import { endingOf } from './ending.js';

/** What `leat report` was asked. */
export interface ReportOptions extends ScenarioOptions {
  readonly out: string;
}

/**
 * `leat report FILE...`: simulates each scenario, or takes the document of `leat run --json` as it is, and writes
 * one HTML file about them. Leaves with the code of the run that ended worst; the report is written all the same.
 */
export async function reportCommand(
  files: readonly string[],
  options: ReportOptions,
  streams: Streams,
): Promise<ExitCode> {
  const told: ToldRun[] = [];
  for (const [i, file] of files.entries())
    told.push(await gather(file, String.fromCharCode(65 + i), options, streams));
  writeAtomic(options.out, reportPage(told));
  streams.note(`${options.out} written\n`);
  const endings = told.map(({ account, budgets }) => endingOf(account, worstResidual(budgets).budget));
  endings.forEach(({ text }, i) => {
    if (text !== '') streams.note(`${files[i]}: ${text}\n`);
  });
  return endings.reduce<ExitCode>((worst, { code }) => (code > worst ? code : worst), exit.done);
}

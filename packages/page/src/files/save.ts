import {
  allSeries,
  afterEvents,
  basePlan,
  endStateOf,
  harvestOf,
  sealed,
  type ResumableRun,
} from '@leat/core';
import { csv, runDocument, savedText } from '@leat/view/documents';
import { fillReport, type RunSummary } from '@leat/view/report';
import type { Display } from '@leat/view/text';

/** Gives a file to the reader. */
export function saveFile(name: string, text: string, type: string): void {
  const link = document.createElement('a');
  link.download = name;
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}

/** The report of some runs, as `leat report` makes it with the same language and units. */
export function reportText(runs: readonly RunSummary[], display: Display): string {
  const page = document.implementation.createHTMLDocument('');
  page.head.replaceChildren();
  fillReport(page, runs, display);
  return `<!doctype html>\n${page.documentElement.outerHTML}\n`;
}

const runIn = ({ system }: RunSummary): ResumableRun => {
  if (system === undefined) throw new Error('a run without a system');
  return system.run as ResumableRun;
};

/** The run as `leat run --json` prints it. */
export function jsonText(summary: RunSummary): string {
  const run = runIn(summary);
  const { account, budgets, manifest, sources } = summary;
  const document = runDocument({
    ...{ run, budgets, manifest, sources },
    ...{ series: allSeries(run), limits: account.limits, verdict: account.verdict },
    harvest: harvestOf(run),
    ...(account.costs && { costs: account.costs }),
    base: basePlan(run),
    after: afterEvents(run),
  });
  return savedText('leat-run', document);
}

/** The series of a run as `leat run --csv` writes them. */
export function csvOf(summary: RunSummary): string {
  const run = runIn(summary);
  return csv(
    run.samples.map(({ time }) => time),
    allSeries(run),
    summary.account.startDate,
  );
}

/** The state at the end of a run as `leat run --save` writes it. */
export const stateText = (summary: RunSummary): string =>
  `${JSON.stringify(sealed(endStateOf(runIn(summary))), null, 2)}\n`;

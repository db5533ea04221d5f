// The report of one or several runs, section by section, in a document that is handed in.
export { fillReport } from './page.js';
export type { EnsembleSummary, RunSummary, SystemSummary } from './run-summary.js';
export { summarize } from './summarize.js';

// The report of one or several runs, section by section, in a document that is handed in.
export { shortly } from './asked-section.js';
export { fillReport, foldedSection, sectionsFor, type Section } from './page.js';
export type { EnsembleSummary, RunSummary, SystemSummary } from './run-summary.js';
export { pageStyle } from './style.js';
export { drawnSystem, summarize, wordedSystem } from './summarize.js';
export { systemPictures } from './system-section.js';

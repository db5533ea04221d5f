// What is kept of a run, as plain data: documents, tables, and what they are made of.
export { accountOf } from './account.js';
export { columnsOf, momentsOf } from './columns.js';
export { csv, csvCell, csvText, longCsv } from './csv.js';
export { meaningful } from './digits.js';
export { keySeries, keysOf } from './keys.js';
export { resultsOf, runDocument, type RunResults } from './run-document.js';
export { documentVersions, savedText, sealedText, type DocumentForm } from './saved-document.js';

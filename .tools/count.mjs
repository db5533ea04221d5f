// Prints the plain closing line `N passed, N failed[, N skipped]` from the test runner's JSON report.
// Arguments: the report's path and the exit code of `npm test`. A run that failed without a failed test
// (an earlier step, a file that did not load, an error outside any test) counts as one failure or more.
import { existsSync, readFileSync } from 'node:fs';

const [path, code] = process.argv.slice(2);
const files = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')).testResults : [];
const statuses = files.flatMap((file) => file.assertionResults.map((test) => test.status));
const unloaded = files.filter(
  (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
);

const passed = statuses.filter((status) => status === 'passed').length;
const failed = statuses.filter((status) => status === 'failed').length + unloaded.length;
const skipped = statuses.length - statuses.filter((s) => s === 'passed' || s === 'failed').length;
const counted = failed === 0 && code !== '0' ? 1 : failed;

process.stdout.write(`${passed} passed, ${counted} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`);

/**
 * Whether slow tests run at their full length (`npm run test:full`), or on fewer days, draws and pages: the one place
 * that asks. A test that has a short form says beside it what the short form leaves out.
 */
export const full = process.env['LEAT_FULL'] === '1';

/**
 * Test files that take long whatever their length: browsers, whole installs, ends of processes, fits and ensembles by the
 * command. `npm test` and `.ci/run` leave them to `npm run test:full`, or `LEAT_QUICK=0`; named on the command line of vitest
 * they run at any time.
 */
export const slowFiles: readonly string[] = [
  'tests/numerics/peers/peers.test.ts',
  'tests/product/commands/ensemble-kept.test.ts',
  'tests/product/commands/extend-everywhere.test.ts',
  'tests/product/commands/kept.test.ts',
  'tests/product/commands/plan.test.ts',
  'tests/product/commands/sensitivity-mine.test.ts',
  'tests/product/commands/sensitivity.test.ts',
  'tests/product/commands/steady.test.ts',
  'tests/product/documents/readme.test.ts',
  'tests/product/lessons/notebooks.test.ts',
  'tests/product/lessons/site.test.ts',
  'tests/product/logs/twins.test.ts',
  'tests/product/logs/unkind/unkind.test.ts',
  'tests/product/packages/install.test.ts',
  'tests/product/page/asks.test.ts',
  'tests/product/page/firefox.test.ts',
  'tests/product/page/page.test.ts',
  'tests/product/page/views.test.ts',
  'tests/product/report/browser.test.ts',
  'tests/product/trust/interrupted.test.ts',
  'tests/product/trust/kept-forms.test.ts',
  'tests/product/trust/killed.test.ts',
  'tests/product/trust/outputs.test.ts',
  'tests/product/trust/streams.test.ts',
  'tests/product/trust/worker-dies.test.ts',
  'tests/system/what-if/short-stop.test.ts',
];

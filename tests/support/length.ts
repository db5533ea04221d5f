/**
 * Whether slow tests run at their full length (`npm run test:full`), or on fewer days, draws and pages: the one place
 * that asks. A test that has a short form says beside it what the short form leaves out.
 */
export const full = process.env['LEAT_FULL'] === '1';

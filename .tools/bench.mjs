/**
 * Benchmarks of the build.
 *
 *   node .tools/bench.mjs             measure and print
 *   node .tools/bench.mjs --check     measure, and fail where a figure is worse than its kept one (tests/bench/kept.json)
 *   node .tools/bench.mjs --keep      measure, and keep the figures
 *   node .tools/bench.mjs NAME ...    only the files whose names hold one of these
 */
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const words = process.argv.slice(2);
const unknown = words.find((word) => word.startsWith('-') && word !== '--check' && word !== '--keep');
if (unknown !== undefined) {
  console.error(`bench knows --check and --keep, not ${unknown}`);
  process.exit(2);
}
const mode = words.includes('--check') ? 'check' : words.includes('--keep') ? 'keep' : 'print';
const names = words.filter((word) => !word.startsWith('-'));
const vitest = join(dirname(createRequire(import.meta.url).resolve('vitest/package.json')), 'vitest.mjs');
const { status } = spawnSync(
  process.execPath,
  [vitest, 'run', '--config', 'tests/bench/bench.config.ts', ...names],
  { stdio: 'inherit', env: { ...process.env, LEAT_BENCH: mode } },
);
process.exit(status ?? 1);

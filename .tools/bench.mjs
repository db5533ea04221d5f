/**
 * Benchmarks of the build.
 *
 *   node .tools/bench.mjs             measure and print
 *   node .tools/bench.mjs --check     measure, and fail where a figure is worse than its kept one (tests/bench/kept.json)
 *   node .tools/bench.mjs --keep      measure, and keep the figures
 *   node .tools/bench.mjs --full      measure at full length what is else measured on less and carried on
 *   node .tools/bench.mjs NAME ...    only the files whose names hold one of these
 */
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const words = process.argv.slice(2);
const known = ['--check', '--keep', '--full'];
const unknown = words.find((word) => word.startsWith('-') && !known.includes(word));
if (unknown !== undefined) {
  console.error(`bench knows ${known.join(', ')}, not ${unknown}`);
  process.exit(2);
}
const mode = words.includes('--check') ? 'check' : words.includes('--keep') ? 'keep' : 'print';
const names = words.filter((word) => !word.startsWith('-'));
const vitest = join(dirname(createRequire(import.meta.url).resolve('vitest/package.json')), 'vitest.mjs');
const { status } = spawnSync(
  process.execPath,
  [vitest, 'run', '--config', 'tests/bench/bench.config.ts', ...names],
  {
    stdio: 'inherit',
    env: { ...process.env, LEAT_BENCH: mode, LEAT_BENCH_FULL: words.includes('--full') ? '1' : '0' },
  },
);
process.exit(status ?? 1);

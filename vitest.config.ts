import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const fromRoot = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const inCi = process.env['CI'] === 'true';
// A benchmark measures what ships: the build, loaded by Node itself and not through the test runner.
const inBench = process.argv.includes('bench');

export default defineConfig({
  resolve: {
    // The source, not the build: coverage counts and nothing tested is stale.
    alias: inBench ? [] : [{ find: /^@leat\/core$/, replacement: fromRoot('packages/core/src/index.ts') }],
  },
  test: {
    server: { deps: { external: inBench ? [/packages\/core\/dist\//] : [] } },
    include: ['tests/**/*.test.ts'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
    testTimeout: 60_000,
    reporters: inCi ? ['default', 'json'] : ['default'],
    outputFile: { json: '.reports/vitest.json' },
    coverage: {
      include: ['packages/*/src/**/*.ts'],
      reportsDirectory: '.reports/coverage',
    },
  },
});

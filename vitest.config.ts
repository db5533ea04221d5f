import { fileURLToPath } from 'node:url';
import { configDefaults, defineConfig } from 'vitest/config';
import { slowFiles } from './tests/support/length.js';

const fromRoot = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const inCi = process.env['CI'] === 'true';
const quick = process.env['LEAT_QUICK'] === '1';

export default defineConfig({
  resolve: {
    // The source, not the build: coverage counts and nothing tested is stale.
    alias: [
      { find: /^@leat\/core$/, replacement: fromRoot('packages/core/src/index.ts') },
      { find: /^@leat\/core\/(\w+)$/, replacement: fromRoot('packages/core/src/$1.ts') },
      { find: /^@leat\/view\/(\w+)$/, replacement: fromRoot('packages/view/src/$1/index.ts') },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: [...configDefaults.exclude, ...(quick ? slowFiles : [])],
    // Only to end what hangs: a slow or busy machine takes the time it takes.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    // The files of a worker share what they have imported, which halves the processor time. No test may leave anything changed.
    pool: 'forks',
    isolate: false,
    // The built command as Node loads it.
    server: { deps: { external: [/\/packages\/[^/]+\/dist\//] } },
    // Vitest leaves one core free, which of two is half.
    maxWorkers: '100%',
    reporters: inCi ? ['default', 'json'] : ['default'],
    outputFile: { json: '.reports/vitest.json' },
    coverage: {
      include: ['packages/*/src/**/*.ts'],
      reportsDirectory: '.reports/coverage',
    },
  },
});

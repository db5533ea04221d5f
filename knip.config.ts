import type { KnipConfig } from 'knip';

const config: KnipConfig = {
  workspaces: {
    '.': {
      entry: [
        '.tools/*.mjs',
        // Run by path in the mutation check.
        '.tools/mutation/{checks,vitest-shim}.mjs',
        'tests/**/*.test.ts',
        // Bundled by path, for a page of the browser.
        'tests/product/packages/page-*.ts',
        'tests/bench/**/*.bench.ts',
        'tests/bench/*.mjs',
        'tests/bench/*.config.ts',
        // Loaded before each benchmark.
        'tests/bench/support/by-module.ts',
        'tests/bench/**/*.make.ts',
        'notebooks/page/main.ts',
        'notebooks/text/*/index.ts',
      ],
      project: ['.tools/**', 'tests/**/*.ts', 'notebooks/**/*.ts', '*.{js,cjs,ts}'],
      ignoreBinaries: ['gcc', 'script'],
      // Run by path in tests/product/packages.
      ignoreDependencies: ['publint', '@arethetypeswrong/cli'],
    },
    'packages/core': {
      entry: ['tools/*.mjs'],
      project: ['src/**/*.ts', 'tools/**/*.mjs'],
    },
    'packages/view': {
      project: ['src/**/*.ts'],
    },
    'packages/page': {
      // Bundled by path, ahead of the page.
      entry: ['src/opener/open.ts'],
      project: ['src/**/*.{ts,tsx}'],
    },
    'packages/cli': {
      entry: ['tools/*.mjs'],
      project: ['src/**/*.ts', 'tools/**/*.mjs'],
    },
  },
};

export default config;

import type { KnipConfig } from 'knip';

/** The TypeScript cells of a notebook, and nothing else of it, as one module. */
const cells = (text: string): string =>
  [...text.matchAll(/<script id="\d+" type="text\/x-typescript"[^>]*>([\s\S]*?)<\/script>/g)]
    .flatMap(([, cell]) => cell.match(/^ *import .*$/gm) ?? [])
    .join('\n');

const config: KnipConfig = {
  compilers: { html: cells },
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
        'tests/bench/*.config.ts',
        'tests/bench/**/*.make.ts',
        'notebooks/*.html',
      ],
      project: ['.tools/**', 'tests/**/*.ts', 'notebooks/**/*.{ts,html}', '*.{js,cjs,ts}'],
      ignoreBinaries: ['gcc'],
      // Run by path in tests/product/packages.
      ignoreDependencies: ['publint', '@arethetypeswrong/cli'],
    },
    'packages/core': {
      entry: ['tools/*.mjs'],
      project: ['src/**/*.{ts,html}', 'tools/**/*.mjs'],
    },
    'packages/view': {
      project: ['src/**/*.{ts,html}'],
    },
    'packages/cli': {
      entry: ['tools/*.mjs'],
      project: ['src/**/*.{ts,html}', 'tools/**/*.mjs'],
    },
  },
};

export default config;

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** `npm run bench`: the build that ships, loaded by Node itself and not through the test runner. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    server: { deps: { external: [/packages\/core\/dist\//] } },
    // As the command and the page run.
    setupFiles: ['tests/bench/support/by-module.ts'],
    include: ['tests/bench/*.bench.ts'],
    testTimeout: 3_600_000,
    disableConsoleIntercept: true,
    fileParallelism: false,
  },
});

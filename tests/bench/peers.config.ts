import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** `npm run peers`: the library as it ships, loaded by Node itself, against reference tools. */
export default defineConfig({
  root,
  resolve: { alias: [{ find: /^.*\/packages\/core\/src\//, replacement: `${root}packages/core/dist/` }] },
  test: {
    server: { deps: { external: [/packages\/core\/dist\//] } },
    include: ['tests/bench/work-precision/*.make.ts'],
    testTimeout: 3_600_000,
    disableConsoleIntercept: true,
  },
});

/**
 * Runs test files of the prepared tree in one bare process, the quickest way to ask "does any test fail?":
 * vitest's own `expect` behind the smallest `describe` and `it`. Ends with 0 where all pass, with 1 at the first failure.
 *
 *   node checks.mjs [--time] FILE ...
 */
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import { after, all } from './vitest-shim.mjs';

const time = process.argv[2] === '--time';
const files = process.argv.slice(time ? 3 : 2);
fc.configureGlobal({ seed: 1, endOnFailure: true });
for (const file of files) {
  const began = performance.now();
  try {
    await import(pathToFileURL(file).href);
  } catch (error) {
    console.log(`${file}: ${error instanceof Error ? error.message : String(error)}`);
    process.exit(1);
  }
  for (const { name, run } of all.splice(0)) {
    const start = performance.now();
    try {
      await run();
      for (const tidy of after) tidy();
    } catch (error) {
      console.log(`${name}: ${error instanceof Error ? error.message : String(error)}`);
      process.exit(1);
    }
    if (time && performance.now() - start > 300) {
      console.log(`  ${Math.round(performance.now() - start)} ms  ${name}`);
    }
  }
  after.length = 0;
  if (time) console.log(`${Math.round(performance.now() - began)} ms  ${file}`);
}
process.exit(0);

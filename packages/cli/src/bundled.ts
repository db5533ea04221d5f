import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';
import type * as startModule from './start.js';

/** The command out of one script. */
interface Bundled {
  readonly start: typeof startModule.start;
  /** Keeps what V8 made of the script, for the next start, where that is not kept already and its folder can be written to. */
  keepCode(): void;
}

/** The script as a function of what a script of Node is given, of the address of a module of the command, and of how to import. */
type Body = (
  require: NodeJS.Require,
  module: { exports: object },
  exports: object,
  place: (path: string) => string,
  importing: (address: string) => Promise<unknown>,
) => void;

const dist = new URL('./', import.meta.url);
const script = fileURLToPath(new URL('./bundle/leat.cjs', dist));

/** Where code of a script is kept: for the V8 that made it, and for that script, which its last line names. */
const keptOf = (text: string): string =>
  `${script}.${text.trimEnd().slice(-16)}-${process.versions.v8}-${process.arch}.cache`;

function bytesOf(path: string): Buffer | undefined {
  try {
    return readFileSync(path);
  } catch {
    return undefined;
  }
}

/**
 * The command out of the one script that a packed command brings, with the code that V8 kept of it; undefined where there is
 * none, and in the source tree, whose script would be of the last packing.
 */
export function bundled(): Bundled | undefined {
  if (!/[\\/]node_modules[\\/]/.test(script)) return undefined;
  // One byte a letter, as it was written.
  const text = bytesOf(script)?.toString('latin1');
  if (text === undefined) return undefined;
  const kept = keptOf(text);
  const cachedData = bytesOf(kept);
  const whole = new Script(`(function (require, module, exports, __leatPlace, __leatImport) {${text}\n})`, {
    filename: script,
    ...(cachedData && { cachedData }),
  });
  const module = { exports: {} };
  const body = whole.runInThisContext() as Body;
  body(
    createRequire(script),
    module,
    module.exports,
    (path) => new URL(path, dist).href,
    (address) => import(address),
  );
  return {
    start: (module.exports as typeof startModule).start,
    keepCode: () => {
      if (cachedData !== undefined && whole.cachedDataRejected !== true) return;
      // Only after work: a start that told no more than its help has hardly made any code.
      if (process.argv.length < 4 || process.exitCode !== 0) return;
      try {
        writeFileSync(`${kept}.${process.pid}`, whole.createCachedData());
        renameSync(`${kept}.${process.pid}`, kept);
      } catch {
        // A folder of another user: the command starts as it did this time.
      }
    },
  };
}

import { gzipSync } from 'node:zlib';
import { build, type Rolldown } from 'vite';
import { root } from './packed.js';

/** One file for a browser, made of a module and all that it needs. */
export interface Bundle {
  readonly code: string;
  /** Size as it is sent: minified, gzip -9, bytes. */
  readonly sent: number;
  /** Paths of the modules of which something is left in it. */
  readonly modules: readonly string[];
  /** What it still asks for: nothing, where it stands alone. */
  readonly imports: readonly string[];
}

const isChunk = (part: Rolldown.OutputChunk | Rolldown.OutputAsset): part is Rolldown.OutputChunk =>
  part.type === 'chunk';

/** What Vite puts in place of a Node built-in that a browser has not. */
export const builtIn = /browser-external|^node:/;

/**
 * Bundles a module for browsers as an application would be: by Vite (Rolldown), minified, with the built packages as
 * npm would find them. Throws where more or less than one file comes out.
 */
export async function bundled(entry: string): Promise<Bundle> {
  const built = await build({
    root,
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      target: 'es2022',
      modulePreload: false,
      rolldownOptions: {
        input: entry,
        preserveEntrySignatures: 'strict',
        output: { format: 'es', codeSplitting: false },
      },
    },
  });
  const parts = Array.isArray(built)
    ? built.flatMap(({ output }) => output)
    : 'output' in built
      ? built.output
      : [];
  const chunks = parts.filter(isChunk);
  if (chunks.length !== 1) throw new Error(`${entry}: ${chunks.length} files came out, not one`);
  const [{ code, modules, imports }] = chunks;
  const left = Object.keys(modules).filter((path) => modules[path].renderedLength > 0 || builtIn.test(path));
  return { code, sent: gzipSync(code, { level: 9 }).length, modules: left, imports };
}

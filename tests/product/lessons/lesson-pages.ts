import { fileURLToPath } from 'node:url';
import { execFileSync } from 'node:child_process';
import { preview } from 'vite';

const root = fileURLToPath(new URL('../../../', import.meta.url));

/** The built lessons on a port of this machine. */
export interface ServedLessons {
  readonly address: string;
  close(): Promise<void>;
}

/** Builds the lessons with the command that people use, and serves what came out. */
export async function serveLessons(): Promise<ServedLessons> {
  execFileSync('npm', ['run', '-s', 'notebooks:build'], { cwd: root, stdio: 'pipe' });
  const server = await preview({
    ...{ root, configFile: false, appType: 'mpa', logLevel: 'error' },
    build: { outDir: 'dist-notebooks' },
    preview: { port: 4731, host: '127.0.0.1', open: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error('the lessons are served nowhere');
  return { address, close: () => server.close() };
}

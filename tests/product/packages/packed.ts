import { spawnSync, type SpawnSyncReturns } from 'node:child_process';
import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Root of the source tree. */
export const root = fileURLToPath(new URL('../../../', import.meta.url));

/** Runs a program and waits. */
export function call(
  program: string,
  args: readonly string[],
  cwd: string,
  env: NodeJS.ProcessEnv = process.env,
): SpawnSyncReturns<string> {
  return spawnSync(program, args, { cwd, env, encoding: 'utf8', maxBuffer: 2 ** 28 });
}

/** A new empty folder. */
export const emptyFolder = (): string => mkdtempSync(join(tmpdir(), 'leat-pack-'));

/** Packs a package as it would be published. Throws with what pnpm said. */
export function packed(name: string, into: string): string {
  const { status, stdout, stderr } = call(
    'npx',
    ['--yes', 'pnpm@12.4.2', 'pack', '--pack-destination', into],
    join(root, 'packages', name),
  );
  const file = readdirSync(into).find((each) => each.startsWith(`leat-${name}-`));
  if (status !== 0 || file === undefined) throw new Error(`pnpm pack of ${name}: ${stdout}${stderr}`);
  return join(into, file);
}

/**
 * Installs what building and running need, which is less than a quarter of what the tests need: the dependencies of the
 * packages, and those of the root, which are the compiler and types. Where everything is installed already it stays so.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const all = existsSync(new URL('../node_modules/vitest', import.meta.url));
const pnpm = ['--yes', 'pnpm@12.4.2', 'install', '--frozen-lockfile', ...(all ? [] : ['--prod'])];
const { status } = spawnSync('npx', pnpm, { stdio: 'inherit', shell: process.platform === 'win32' });
process.exitCode = status ?? 1;

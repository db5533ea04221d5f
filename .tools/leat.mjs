// `npm run leat -- ARGS`: installs and builds when needed (a word of it on stderr), then hands over to the
// command with the caller's own folder, arguments, streams and exit code.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { constants } from 'node:os';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const inRoot = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** Runs a preparing step quietly; when it fails, shows on stderr all it said and leaves. */
function prepare(what, command) {
  const done = spawnSync(command, { cwd: root, shell: true, stdio: ['ignore', 'pipe', 'pipe'] });
  if (done.status === 0) return;
  process.stderr.write(done.stdout);
  process.stderr.write(done.stderr);
  process.stderr.write(`leat: ${what} failed: ${command}\n`);
  process.exit(1);
}

/** What is installed is what the lockfile asks for. */
function installed() {
  const copy = inRoot('node_modules/.pnpm/lock.yaml');
  return existsSync(copy) && readFileSync(copy, 'utf8') === readFileSync(inRoot('pnpm-lock.yaml'), 'utf8');
}

if (!installed()) {
  process.stderr.write('leat: setting up, once\n');
  prepare('setting up', 'npm run -s setup');
}
prepare('building', 'npm run -s build');

const leat = spawnSync(process.execPath, [inRoot('packages/cli/dist/main.js'), ...process.argv.slice(2)], {
  cwd: process.env.INIT_CWD ?? process.cwd(),
  stdio: 'inherit',
});
if (leat.error) throw leat.error;
process.exit(leat.status ?? 128 + constants.signals[leat.signal]);

/**
 * The build and every check that runs no test: format, lint, types, layers, dead code. As many run at a time as there are cores,
 * in the order of the list, each once what it needs is done; what each said is shown in that order when all have ended.
 *
 *   node .tools/checks.mjs            leaves with 1 where one fails
 */
import { Buffer } from 'node:buffer';
import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';

/**
 * Scripts of package.json, the longest first; lint in two parts, which end sooner side by side than one that all wait for. Types
 * of packages are read from what is built.
 */
const checks = [
  { name: 'build', needs: [] },
  { name: 'lint:tests', needs: ['build'] },
  { name: 'lint:rest', needs: ['build'] },
  { name: 'types', needs: ['build'] },
  { name: 'format', needs: [] },
  { name: 'layers', needs: [] },
  { name: 'deadcode', needs: [] },
];

/** Runs one script and tells its code and all it said. */
function run(name) {
  return new Promise((resolve) => {
    const child = spawn('npm', ['run', '-s', name], { stdio: ['ignore', 'pipe', 'pipe'] });
    const said = [];
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => said.push(part));
    child.on('error', ({ message }) => resolve({ code: 1, said: `${message}\n` }));
    child.on('close', (code) => resolve({ code: code ?? 1, said: Buffer.concat(said).toString() }));
  });
}

const answers = new Map();
const waiting = [...checks];
const running = new Map();

/** Starts what may start while there are cores for it. What needs a check that fails is run all the same: it may tell why. */
function startMore() {
  while (running.size < Math.max(1, availableParallelism())) {
    const next = waiting.findIndex(({ needs }) => needs.every((name) => answers.has(name)));
    if (next < 0) return;
    const [{ name }] = waiting.splice(next, 1);
    running.set(
      name,
      run(name).then((answer) => {
        running.delete(name);
        answers.set(name, answer);
      }),
    );
  }
}

for (startMore(); running.size > 0; startMore()) await Promise.race(running.values());

for (const { name } of checks) {
  const { code, said } = answers.get(name);
  console.log(`${name}: ${code === 0 ? 'holds' : `does not hold (exit ${code})`}`);
  if (said !== '') process.stdout.write(said);
}
process.exitCode = [...answers.values()].some(({ code }) => code !== 0) ? 1 : 0;

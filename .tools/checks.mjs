/**
 * Every check that runs no test: format, lint, types, layers, dead code. They need nothing of each other, so as many run at
 * a time as there are cores, the longest first; what each said is shown in order when all have ended.
 *
 *   node .tools/checks.mjs            leaves with 1 where one fails
 */
import { Buffer } from 'node:buffer';
import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';

/** Scripts of package.json, the longest first. */
const names = ['lint', 'types', 'format', 'layers', 'deadcode'];

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
const waiting = [...names];
const takeTurns = async () => {
  for (let name = waiting.shift(); name !== undefined; name = waiting.shift())
    answers.set(name, await run(name));
};
await Promise.all(Array.from({ length: Math.max(1, availableParallelism()) }, takeTurns));

for (const name of names) {
  const { code, said } = answers.get(name);
  console.log(`${name}: ${code === 0 ? 'holds' : `does not hold (exit ${code})`}`);
  if (said !== '') process.stdout.write(said);
}
process.exitCode = [...answers.values()].some(({ code }) => code !== 0) ? 1 : 0;

/**
 * Mutation testing of the processes and the integrators: changes one place of a file, and asks whether a test fails.
 *
 *   node .tools/mutation/mutate.mjs [--per-file 60] [--seed 1] [--workers 2] [--keep] [NAME ...]
 *
 * A seeded sample of the changes of each file (`mutants.mjs`) is tried on the tests of `rooms` below, each in a bare process
 * (`checks.mjs`), the quickest first, until one fails. NAME limits it to files whose path holds it. `--keep` writes
 * tests/trust/MUTATION.md. Ends with 1 where a room stays at or below 85 % of the changes that are not listed as equal.
 */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { equals } from './equals.mjs';
import { mutantsOf } from './mutants.mjs';
import { makeTree, transpile } from './tree.mjs';
import { mutationDocument } from './document.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const { values: options, positionals: names } = parseArgs({
  allowPositionals: true,
  options: {
    'per-file': { type: 'string', default: '60' },
    seed: { type: 'string', default: '1' },
    workers: { type: 'string', default: '2' },
    keep: { type: 'boolean', default: false },
  },
});
/** A check that takes longer has noticed: the change made an endless loop. ms */
const limit = 45_000;

const inFolder = (folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => `${folder}/${name.replace(/\.ts$/, '.js')}`);

/** What is changed, and by which tests it is held, quickest first. */
const rooms = [
  {
    folders: ['packages/core/src/processes', 'packages/core/src/processes/kinetics'],
    tests: [
      'tests/unit/processes/rows.test.js',
      'tests/unit/processes/laws.test.js',
      'tests/unit/processes/conditions.test.js',
      'tests/closure/stoichiometry.test.js',
      'tests/unit/processes/every-process.test.js',
      'tests/unit/model/rates.test.js',
      'tests/analytic/crop.test.js',
    ],
  },
  {
    folders: ['packages/core/src/solve'],
    tests: [...inFolder('tests/unit/solve'), ...inFolder('tests/order')],
  },
];
/** Files of declarations and lists: there is nothing to change, or what is there belongs to no number. */
const none = new Set([
  'index.ts',
  'process.ts',
  'contract.ts',
  'kernel.ts',
  'linear-solver.ts',
  'any-conditions.ts',
]);

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
function randomFrom(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

function sampled(list, count, random) {
  const left = [...list];
  const taken = [];
  while (taken.length < count && left.length > 0)
    taken.push(...left.splice(Math.floor(random() * left.length), 1));
  return taken.sort((a, b) => a.start - b.start);
}

function check(tree, files) {
  return new Promise((resolve) => {
    const child = spawn(
      process.execPath,
      [join(root, '.tools/mutation/checks.mjs'), ...files.map((file) => join(tree, file))],
      { stdio: ['ignore', 'pipe', 'pipe'], timeout: limit, killSignal: 'SIGKILL' },
    );
    let said = '';
    child.stdout.on('data', (data) => (said += data));
    child.stderr.on('data', (data) => (said += data));
    child.on('close', (code, signal) => {
      resolve({ passed: code === 0, said: signal === null ? said.trim().split('\n')[0] : 'took too long' });
    });
  });
}

const folders = [
  'packages/core/src',
  'packages/cli/scenarios',
  'tests/unit',
  'tests/closure',
  'tests/order',
  'tests/analytic',
  'tests/support',
];
const trees = Array.from({ length: Number(options.workers) }, (_, n) =>
  join(root, '.reports/mutants', `${process.pid}-${n}`),
);
for (const tree of trees) makeTree(root, tree, folders);

const tasks = [];
for (const [room, { folders: places, tests }] of rooms.entries()) {
  const there = tests.filter((test) => existsSync(join(trees[0], test)));
  for (const place of places) {
    for (const name of readdirSync(join(root, place)).sort()) {
      const file = `${place}/${name}`;
      if (
        !name.endsWith('.ts') ||
        none.has(name) ||
        !(names.length === 0 || names.some((part) => file.includes(part)))
      )
        continue;
      const text = readFileSync(join(root, file), 'utf8');
      const own = basename(name, '.ts');
      const ordered = [
        ...there.filter((test) => test.includes(`/${own}.`)),
        ...there.filter((test) => !test.includes(`/${own}.`)),
      ];
      const all = mutantsOf(file, text);
      const random = randomFrom(Number(options.seed) + file.length * 1009);
      for (const mutant of sampled(all, Number(options['per-file']), random)) {
        tasks.push({ room, file, text, tests: ordered, mutant, of: all.length });
      }
    }
  }
}
for (const { tests } of rooms) {
  const whole = await check(
    trees[0],
    tests.filter((test) => existsSync(join(trees[0], test))),
  );
  if (whole.passed) continue;
  console.error(`the tests fail without any change: ${whole.said}`);
  process.exit(2);
}

let next = 0;
const began = performance.now();
async function work(tree) {
  while (next < tasks.length) {
    const task = tasks[next++];
    const { file, text, mutant } = task;
    const target = join(tree, file.replace(/\.ts$/, '.js'));
    writeFileSync(target, transpile(text.slice(0, mutant.start) + mutant.text + text.slice(mutant.end)));
    const { passed, said } = await check(tree, task.tests);
    writeFileSync(target, transpile(text));
    task.killed = !passed;
    task.said = said;
    task.source = text.split('\n')[mutant.line - 1].trim();
    task.equal = passed ? equals({ file, ...mutant, source: task.source }) : undefined;
    if (passed) {
      console.log(
        `${task.equal ? 'equal' : 'LIVES'} ${file}:${mutant.line} ${mutant.kind} ${mutant.was} -> ${mutant.text}   | ${task.source}`,
      );
    }
  }
}
await Promise.all(trees.map(work));
for (const tree of trees) rmSync(tree, { recursive: true });
const text = mutationDocument(tasks, { seed: options.seed, perFile: options['per-file'] });
console.log(text);
console.log(`${tasks.length} changes in ${Math.round((performance.now() - began) / 1000)} s`);
if (options.keep) writeFileSync(join(root, 'tests/trust/MUTATION.md'), text);
const low = [0, 1].filter((room) => {
  const of = tasks.filter((task) => task.room === room && !task.equal);
  return of.length > 0 && of.filter(({ killed }) => killed).length / of.length <= 0.85;
});
process.exit(low.length > 0 ? 1 : 0);

/**
 * Mutation testing of processes, integrators, readers of logs, results and the ground floor: changes one place of a file, and asks whether a test fails.
 *
 *   node .tools/mutation/mutate.mjs [--per-file 60] [--seed 1] [--workers 2] [--go-on] [--keep] [NAME ...]
 *
 * A seeded sample of the changes of each file (`mutants.mjs`) is tried on the tests of `rooms` below, each in a bare process
 * (`checks.mjs`), the quickest first, until one fails. NAME limits it to files whose path holds it. What is found of a file
 * is kept under .reports/mutation; with `--go-on` it is taken from there where neither the code nor the tests have changed
 * since, so that a long run can be made in pieces. `--keep` writes tests/product/trust/MUTATION.md. Ends with 1 where a room stays at or below 85 % of the changes that are not listed as equal.
 */
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { equals } from './equals.mjs';
import { mutantsOf } from './mutants.mjs';
import { filesUnder, makeTree, transpile } from './tree.mjs';
import { mutationDocument } from './document.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const { values: options, positionals: names } = parseArgs({
  allowPositionals: true,
  options: {
    'per-file': { type: 'string', default: '60' },
    seed: { type: 'string', default: '1' },
    workers: { type: 'string', default: '2' },
    'go-on': { type: 'boolean', default: false },
    keep: { type: 'boolean', default: false },
  },
});
/** A check that takes longer, and three times longer than the tests of its room as they are, has noticed: an endless loop. ms */
const least = 45_000;

const inFolder = (folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.test.ts'))
    .map((name) => `${folder}/${name.replace(/\.ts$/, '.js')}`);

/** What is changed, and by which tests it is held, quickest first. */
const rooms = [
  {
    folders: ['packages/core/src/processes', 'packages/core/src/processes/kernels'],
    tests: [
      'tests/unit/core/processes/rows.test.js',
      'tests/unit/core/processes/rates-by-hand.test.js',
      'tests/unit/core/processes/kernels.test.js',
      'tests/unit/core/model/stoichiometry.test.js',
      'tests/unit/core/processes/every-process.test.js',
      'tests/unit/core/model/rates.test.js',
      'tests/system/analytic/crop.test.js',
    ],
  },
  {
    folders: ['packages/core/src/solve'],
    tests: [...inFolder('tests/numerics/order'), ...inFolder('tests/unit/core/solve')],
  },
  {
    folders: ['packages/core/src/log'],
    tests: [
      ...inFolder('tests/unit/core/log'),
      'tests/product/logs/oddities.test.js',
      'tests/product/logs/poor-logs.test.js',
      'tests/product/trust/naive/logs.test.js',
    ],
  },
  {
    folders: ['packages/core/src/result'],
    // What reads files of packages has none in a tree of changes.
    tests: inFolder('tests/unit/core/result').filter((test) => !test.includes('manifest')),
  },
  {
    folders: ['packages/core/src/base'],
    tests: inFolder('tests/unit/core/base'),
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

function check(tree, files, limit) {
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
  'tests/numerics/order',
  'tests/system/analytic',
  'tests/product/logs',
  'tests/product/faults',
  'tests/product/trust/naive',
  'tests/support',
];
const trees = Array.from({ length: Number(options.workers) }, (_, n) =>
  join(root, '.reports/mutants', `${process.pid}-${n}`),
);
for (const tree of trees) makeTree(root, tree, folders);

/** Stands for the code and the tests of a room as they are: what was found of others says nothing of these. */
function stateOf({ tests }) {
  const state = createHash('sha256').update(JSON.stringify([options['per-file'], options.seed]));
  const shared = ['packages/core/src', 'packages/cli/scenarios', 'tests/support'];
  const paths = shared
    .flatMap((folder) => filesUnder(join(root, folder)))
    .filter((path) => !path.endsWith('.js'));
  const own = tests
    .map((test) => join(root, test.replace(/\.js$/, '.ts')))
    .filter((path) => existsSync(path));
  const all = [...paths, ...own, join(root, '.tools/mutation/mutants.mjs')];
  for (const path of all.sort()) state.update(path.slice(root.length)).update(readFileSync(path));
  return state.digest('hex');
}
const states = rooms.map(stateOf);
const foundOf = (file) => join(root, '.reports/mutation', `${file.replaceAll('/', '~')}.json`);

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
      const found =
        options['go-on'] && existsSync(foundOf(file))
          ? JSON.parse(readFileSync(foundOf(file), 'utf8'))
          : undefined;
      for (const [n, mutant] of sampled(all, Number(options['per-file']), random).entries()) {
        const done = found?.state === states[room] ? { killed: found.killed[n] } : {};
        tasks.push({ room, file, text, tests: ordered, mutant, of: all.length, ...done });
      }
    }
  }
}
const open = tasks.filter(({ killed }) => killed === undefined);
const limits = [];
for (const [room, { tests }] of rooms.entries()) {
  if (!open.some((task) => task.room === room)) continue;
  const start = performance.now();
  const whole = await check(
    trees[0],
    tests.filter((test) => existsSync(join(trees[0], test))),
    20 * least,
  );
  limits[room] = Math.ceil(Math.max(least, 3 * (performance.now() - start)));
  if (whole.passed) continue;
  console.error(`the tests fail without any change: ${whole.said}`);
  process.exit(2);
}

let next = 0;
const began = performance.now();
async function work(tree) {
  while (next < open.length) {
    const task = open[next++];
    const { file, text, mutant } = task;
    const target = join(tree, file.replace(/\.ts$/, '.js'));
    writeFileSync(target, transpile(text.slice(0, mutant.start) + mutant.text + text.slice(mutant.end)));
    const { passed, said } = await check(tree, task.tests, limits[task.room]);
    writeFileSync(target, transpile(text));
    task.killed = !passed;
    task.said = said;
    keepFound(file);
  }
}

/** Keeps what is found of a file when all of it is. */
function keepFound(file) {
  const own = tasks.filter((task) => task.file === file);
  const killed = own.map((task) => task.killed);
  if (killed.includes(undefined)) return;
  mkdirSync(dirname(foundOf(file)), { recursive: true });
  writeFileSync(foundOf(file), JSON.stringify({ state: states[own[0].room], killed }));
}

await Promise.all(trees.map(work));
for (const tree of trees) rmSync(tree, { recursive: true });
for (const task of tasks) {
  const { file, text, mutant } = task;
  const lineOf = (whole) => whole.split('\n')[mutant.line - 1].trim();
  const changed = lineOf(text.slice(0, mutant.start) + mutant.text + text.slice(mutant.end));
  task.source = lineOf(text);
  task.equal = task.killed ? undefined : equals({ file, source: task.source, changed });
  if (task.killed) continue;
  console.log(
    `${task.equal ? 'equal' : 'LIVES'} ${file}:${mutant.line} ${mutant.kind}   ${task.source}   =>   ${changed}`,
  );
}
const text = mutationDocument(tasks, { seed: options.seed, perFile: options['per-file'], names });
console.log(text);
console.log(`${tasks.length} changes in ${Math.round((performance.now() - began) / 1000)} s`);
if (options.keep) writeFileSync(join(root, 'tests/product/trust/MUTATION.md'), text);
const low = [...rooms.keys()].filter((room) => {
  const of = tasks.filter((task) => task.room === room && !task.equal);
  return of.length > 0 && of.filter(({ killed }) => killed).length / of.length <= 0.85;
});
process.exit(low.length > 0 ? 1 : 0);

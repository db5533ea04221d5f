/**
 * Holds every output of the built command line against a kept state, byte for byte: for changes that are to change
 * nothing, such as moving, merging and renaming of files.
 *
 *   npm run outputs -- --keep         run all cases and keep what they put out
 *   npm run outputs                   run all cases anew; exit 1 and a list where an output is not as kept
 *   npm run outputs -- --only WORD    only cases whose name or command holds the word (also with --keep)
 *   npm run outputs -- --list         the cases
 *
 * An output is what a command writes on stdout and stderr, its exit code, and every file that it writes or changes.
 * Checksums go to `.reports/outputs.json`, the texts to `.reports/outputs/kept` and `.reports/outputs/now`. They are of
 * this Node and are not committed: keep on the tree before the change, hold on the tree after it. The cases stand in
 * `outputs-cases.mjs`. Each runs in a folder of its own that holds a copy of the shipped scenarios.
 */
import { Buffer } from 'node:buffer';
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { cases, copied, files, generated } from './outputs-cases.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const command = join(root, 'packages/cli/dist/main.js');
const keptFile = join(root, '.reports/outputs.json');
const temporary = mkdtempSync(join(tmpdir(), 'leat-outputs-'));
process.on('exit', () => rmSync(temporary, { recursive: true }));
const textsOf = (state) => join(root, '.reports/outputs', state);

/**
 * What may differ between two runs of the same code, and the only things that are put right before the checksum:
 * a pattern, what stands for it, and why. Bars of progress need no entry: they are drawn on a terminal only.
 */
const unsettled = (folder) => [
  [folder, '<folder>', 'each case runs in a new temporary folder'],
  [root, '<root>/', 'the tree may lie anywhere'],
];

/** Variables of the caller that change what the command puts out, or how Node runs it. */
const unwanted = ['COLUMNS', 'FORCE_COLOR', 'LEAT_DEBUG', 'NODE_OPTIONS', 'NO_COLOR'];
const environment = Object.fromEntries(
  Object.entries({ ...process.env, TZ: 'UTC' }).filter(([name]) => !unwanted.includes(name)),
);

/** The same bytes, with what is unsettled put right where they are text. */
function settled(bytes, folder) {
  if (bytes.includes(0)) return bytes;
  let text = bytes.toString('utf8');
  for (const [found, put] of unsettled(folder)) text = text.replaceAll(found, put);
  return Buffer.from(text);
}

const sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex');

/** The words of a command as a shell would split it: quotes hold one word together. */
const wordsOf = (line) => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain);

/** Runs the command in a folder. */
function call(words, folder) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [command, ...words], {
      cwd: folder,
      env: environment,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const said = { stdout: [], stderr: [] };
    for (const name of ['stdout', 'stderr']) child[name].on('data', (data) => said[name].push(data));
    child.on('error', reject);
    child.on('close', (code, signal) =>
      resolve({
        code: code ?? signal,
        stdout: Buffer.concat(said.stdout),
        stderr: Buffer.concat(said.stderr),
      }),
    );
  });
}

/** Every file of a folder, by its path in it. */
function filesIn(folder) {
  const found = readdirSync(folder, { withFileTypes: true, recursive: true }).filter((one) => one.isFile());
  return new Map(
    found.map((one) => {
      const path = join(one.parentPath ?? one.path, one.name);
      return [path.slice(folder.length + 1), readFileSync(path)];
    }),
  );
}

const folderOf = (name) => name.replaceAll(/[^\w.-]+/g, '-');

/** Runs the commands of a case one after another in one folder; gives the checksums, and leaves the texts. */
async function run(name, lines, texts) {
  const folder = join(temporary, folderOf(name));
  mkdirSync(folder);
  for (const path of copied) cpSync(join(root, path), join(folder, basename(path)));
  for (const [path, text] of Object.entries(files)) writeFileSync(join(folder, path), text);
  const place = join(texts, folderOf(name));
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  let before = filesIn(folder);
  const calls = [];
  for (const [index, line] of lines.entries()) {
    // `> FILE` at the end keeps stdout for a later command of the case.
    const [asked, target] = line.split(' > ');
    const { code, stdout, stderr } = await call(wordsOf(asked), folder);
    const after = filesIn(folder);
    const outputs = { stdout, stderr };
    for (const [path, bytes] of after)
      if (before.get(path)?.equals(bytes) !== true) outputs[`file ${path}`] = bytes;
    for (const path of before.keys())
      if (!after.has(path)) outputs[`file ${path}`] = Buffer.from('(removed)');
    const sums = {};
    for (const [output, bytes] of Object.entries(outputs)) {
      const right = settled(bytes, folder);
      sums[output] = sha256(right);
      writeFileSync(join(place, textName(index, output)), right);
    }
    calls.push({ line, code, outputs: sums });
    before = after;
    if (target === undefined) continue;
    writeFileSync(join(folder, target), stdout);
    before.set(target, stdout);
  }
  return calls;
}

const textName = (index, output) =>
  `${String(index + 1).padStart(2, '0')}-${folderOf(output.replace('file ', ''))}`;

/** Runs the cases, as many at a time as there are cores. */
async function runAll(names, texts) {
  const left = [...names];
  const found = {};
  const worker = async () => {
    for (let name = left.shift(); name !== undefined; name = left.shift())
      found[name] = await run(name, cases[name], texts);
  };
  await Promise.all(Array.from({ length: availableParallelism() }, worker));
  return Object.fromEntries(names.map((name) => [name, found[name]]));
}

/** Where two texts part: the line's number, and both lines around the first character that differs. */
function parting(one, other) {
  if (one.includes(0) || other.includes(0)) return `  (not text: ${one.length} / ${other.length} bytes)`;
  const [a, b] = [one.toString('utf8').split('\n'), other.toString('utf8').split('\n')];
  const row = a.findIndex((line, index) => line !== b[index]);
  const at = row < 0 ? a.length : row;
  const [left, right] = [a[at] ?? '(end)', b[at] ?? '(end)'];
  let column = 0;
  while (column < left.length && left[column] === right[column]) column += 1;
  const start = Math.max(0, column - 60);
  const cut = (line) => `${start > 0 ? '...' : ''}${line.slice(start, start + 140)}`;
  return `  line ${at + 1}\n  - ${cut(left)}\n  + ${cut(right)}`;
}

/** What differs between a kept case and the same case now, in lines for a person. */
function differences(name, kept, now) {
  if (kept === undefined) return [`${name}: not among the kept`];
  const said = [];
  for (let index = 0; index < Math.max(kept.length, now.length); index++) {
    const [was, is] = [kept[index], now[index]];
    if (was?.line !== is?.line) {
      said.push(`${name}: another command: ${was?.line ?? '(none)'} / ${is?.line ?? '(none)'}`);
      continue;
    }
    const head = `${name}: leat ${is.line}`;
    if (was.code !== is.code) said.push(`${head}\n  exit code ${was.code} / ${is.code}`);
    for (const output of new Set([...Object.keys(was.outputs), ...Object.keys(is.outputs)])) {
      if (was.outputs[output] === is.outputs[output]) continue;
      const pair = ['kept', 'now'].map((state) =>
        join(textsOf(state), folderOf(name), textName(index, output)),
      );
      if (was.outputs[output] === undefined) said.push(`${head}\n  ${output}: only now`);
      else if (is.outputs[output] === undefined) said.push(`${head}\n  ${output}: no longer`);
      else
        said.push(`${head}\n  ${output}, ${parting(...pair.map((path) => readFileSync(path))).trimStart()}`);
    }
  }
  return said;
}

/** Files that are made from the command and lie in the tree: they are taken as they are. */
function madeFiles() {
  return Object.fromEntries(generated.map((path) => [path, sha256(readFileSync(join(root, path)))]));
}

const words = process.argv.slice(2);
const onlyAt = words.indexOf('--only');
const only = onlyAt < 0 ? undefined : words.splice(onlyAt, 2)[1];
const strange = words.find((word) => !['--keep', '--list'].includes(word));
if (strange !== undefined || (onlyAt >= 0 && only === undefined)) {
  console.error(
    `outputs knows --keep, --list and --only WORD${strange === undefined ? '' : `, not ${strange}`}`,
  );
  process.exit(2);
}
const chosen = Object.keys(cases).filter(
  (name) => only === undefined || [name, ...cases[name]].some((text) => text.includes(only)),
);
if (chosen.length === 0) {
  console.error(`no case holds ${only}; --list shows them`);
  process.exit(2);
}
if (words.includes('--list')) {
  for (const name of chosen) console.log([name, ...cases[name].map((line) => `  leat ${line}`)].join('\n'));
  process.exit(0);
}
const keep = words.includes('--keep');
if (!keep && !existsSync(keptFile)) {
  console.error('nothing is kept yet: npm run outputs -- --keep, on the tree as it was');
  process.exit(2);
}

const kept = existsSync(keptFile) ? JSON.parse(readFileSync(keptFile, 'utf8')) : undefined;
const began = performance.now();
if (only === undefined) rmSync(textsOf(keep ? 'kept' : 'now'), { recursive: true, force: true });
const now = await runAll(chosen, textsOf(keep ? 'kept' : 'now'));
const calls = Object.values(now).flat();
const count = calls.reduce((sum, { outputs }) => sum + 1 + Object.keys(outputs).length, 0);
const seconds = Math.round((performance.now() - began) / 1000);
console.log(`${chosen.length} cases, ${calls.length} commands, ${count} outputs in ${seconds} s`);

if (keep) {
  const all = only === undefined ? now : { ...kept?.cases, ...now };
  const told = { node: process.version, made: (only && kept?.made) ?? madeFiles(), cases: all };
  writeFileSync(keptFile, `${JSON.stringify(told, null, 1)}\n`);
  console.log('kept in .reports/outputs.json and .reports/outputs/kept');
} else {
  if (kept.node !== process.version)
    console.log(`kept with Node ${kept.node}, this is ${process.version}: last digits may differ`);
  const said = chosen.flatMap((name) => differences(name, kept.cases[name], now[name]));
  for (const [path, sum] of Object.entries(madeFiles()))
    if (kept.made[path] !== sum) said.push(`${path}: another file than when it was kept`);
  if (only === undefined)
    for (const name of Object.keys(kept.cases)) if (!(name in cases)) said.push(`${name}: no longer a case`);
  for (const text of said) console.log(text);
  console.log(
    said.length === 0
      ? 'all as kept'
      : `${said.length} differ; all of both: diff -r .reports/outputs/kept .reports/outputs/now`,
  );
  process.exit(said.length === 0 ? 0 : 1);
}

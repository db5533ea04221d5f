/**
 * Binds the command with all that it needs into one script, `packages/cli/dist/bundle/leat.cjs`, with the licences of what
 * is in it beside it. Done before packing; the installed command starts from it (`packages/cli/src/bundled.ts`).
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const dist = fileURLToPath(new URL('../packages/cli/dist/', import.meta.url));
const folder = join(dist, 'bundle');

/** The bundler that vite is made of. */
async function bundler() {
  const vite = createRequire(import.meta.url).resolve('vite/package.json');
  return import(pathToFileURL(createRequire(vite).resolve('rolldown')).href);
}

/**
 * Modules of the command ask for their own places, for jobs of workers and for what lies beside the code, and import modules
 * that a user names: both is done by what the script is given (`packages/cli/src/bundled.ts`). A script whose code was kept
 * imports nothing by itself.
 */
const fromOutside = {
  name: 'leat-from-outside',
  transform(code, id) {
    if (!id.startsWith(dist)) return undefined;
    const path = relative(dist, id).split(sep).join('/');
    return code
      .replaceAll('import.meta.url', `__leatPlace(${JSON.stringify(path)})`)
      .replaceAll(/\bimport\((?=[^'"`])/g, '__leatImport(');
  },
};

const manifestOf = (folder) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** The folder of the package that a module is of; a part of a package may hold a manifest too. */
function packageOf(id) {
  for (let at = dirname(id); at !== dirname(at); at = dirname(at)) {
    if (!existsSync(join(at, 'package.json'))) continue;
    if (/^(?:@[^/]+\/)?[^/]+$/.test(manifestOf(at).name ?? '')) return at;
  }
  throw new Error(`${id} is of no package`);
}

/** The licences of all packages that modules come from, but our own. */
function licencesOf(ids) {
  const texts = new Map();
  for (const at of new Set(ids.map(packageOf))) {
    const { name, version, license } = manifestOf(at);
    if (name.startsWith('@leat/')) continue;
    const file = readdirSync(at).find((each) => /^licen[cs]e/i.test(each));
    const text =
      file === undefined ? `${license}, as its manifest says` : readFileSync(join(at, file), 'utf8');
    texts.set(`${name} ${version}`, text.trim());
  }
  const sorted = [...texts].sort(([a], [b]) => (a < b ? -1 : 1));
  return sorted.map(([name, text]) => `${name}\n${'-'.repeat(name.length)}\n\n${text}\n`).join('\n\n');
}

/**
 * The script in letters of one byte each, which Node reads in half the time and V8 holds in half the memory: the few beyond
 * Latin-1 are escaped. In a raw text they would stay escapes; raw texts are patterns, which mean the same by them.
 */
function inOneByte(code) {
  const escaped = /.{0,40}\\[^\0-\xff]/.exec(code);
  if (escaped !== null) throw new Error(`a letter beyond Latin-1 behind a backslash: ${escaped[0]}`);
  return code.replaceAll(
    /[^\0-\xff]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** Written whole or not at all: another packing may be at work. */
function write(name, text, encoding = 'utf8') {
  const file = join(folder, name);
  writeFileSync(`${file}.${process.pid}`, text, encoding);
  renameSync(`${file}.${process.pid}`, file);
}

/** Makes the script and the licences. */
export async function bundle() {
  const { rolldown } = await bundler();
  const build = await rolldown({
    input: join(dist, 'start.js'),
    platform: 'node',
    external: /^node:/,
    plugins: [fromOutside],
  });
  const { output } = await build.generate({
    format: 'cjs',
    codeSplitting: false,
    minify: { compress: false, mangle: false, codegen: { removeWhitespace: true } },
  });
  if (output.length !== 1)
    throw new Error(`one script was wanted, got ${output.map((each) => each.fileName)}`);
  const [{ code: written, moduleIds }] = output;
  const code = inOneByte(written);
  const own = /.{0,40}\bimport(?:\.meta|\().{0,40}/.exec(code);
  if (own !== null) throw new Error(`a module asks for what a script cannot give: ${own[0]}`);
  mkdirSync(folder, { recursive: true });
  // The last line names the script by what is in it: code that V8 kept of another is not taken for this one's.
  const name = createHash('sha256').update(code).digest('hex').slice(0, 16);
  write('leat.cjs', `${code.trimEnd()}\n//${name}\n`, 'latin1');
  write('LICENSES.txt', licencesOf(moduleIds.filter((id) => existsSync(id))));
}

import { mkdirSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { call, emptyFolder, packed, root } from './packed.js';

const names = ['core', 'view', 'cli'] as const;
type Name = (typeof names)[number];
const tarball: Partial<Record<Name, string>> = {};
const folder: Partial<Record<Name, string>> = {};

const there = (held: Partial<Record<Name, string>>, name: Name): string => {
  const found = held[name];
  if (found === undefined) throw new Error(`${name} was not packed`);
  return found;
};

/** Files of the packed package, sorted. */
const filesOf = (name: Name): readonly string[] =>
  readdirSync(there(folder, name), { recursive: true, encoding: 'utf8' })
    .filter((path) => statSync(join(there(folder, name), path)).isFile())
    .sort();

const textOf = (name: Name, path: string): string => readFileSync(join(there(folder, name), path), 'utf8');

const manifestOf = (name: Name): Record<string, unknown> =>
  JSON.parse(textOf(name, 'package.json')) as Record<string, unknown>;

const fromPackages = (program: string, args: readonly string[]): { status: number | null; said: string } => {
  const { status, stdout, stderr } = call(join(root, 'node_modules/.bin', program), args, root);
  return { status, said: `${stdout}${stderr}` };
};

beforeAll(() => {
  const into = emptyFolder();
  for (const name of names) {
    tarball[name] = packed(name, into);
    const opened = join(into, name);
    mkdirSync(opened);
    const done = call('tar', ['-xzf', there(tarball, name), '-C', opened], into);
    expect([done.status, done.stderr]).toEqual([0, '']);
    folder[name] = join(opened, 'package');
  }
});

describe.each(names)('the packed package %s', (name) => {
  it('is described whole', () => {
    const held = manifestOf(name);
    expect(held).toMatchObject({
      name: `@leat/${name}`,
      license: 'MIT',
      type: 'module',
      engines: { node: '>=20' },
    });
    for (const key of ['description', 'exports', 'files', 'sideEffects', 'dependencies'])
      expect(held[key], key).toBeDefined();
    expect(JSON.stringify(held)).not.toMatch(/workspace:|file:|link:/);
  });

  it('is not packed by npm, which would leave workspace:* in it', () => {
    const { status, stderr } = call('npm', ['pack', '--dry-run'], join(root, 'packages', name));
    expect(status).not.toBe(0);
    expect(stderr).toContain('Pack and publish with pnpm');
  });

  it('holds what its manifest names, the licence, and nothing beside', () => {
    const files = filesOf(name);
    for (const path of ['LICENSE', 'README.md', 'package.json']) expect(files).toContain(path);
    const allowed = {
      core: /^(?:LICENSE|README\.md|package\.json|docs\/[\w-]+\.md|src\/library\/data\/[a-z]+\.tsv|(?:dist|src)\/.+\.(?:ts|js))$/,
      view: /^(?:LICENSE|README\.md|package\.json|(?:dist|src)\/.+\.(?:ts|js))$/,
      cli: /^(?:LICENSE|README\.md|package\.json|docs\/[\w-]+\.md|THIRD-PARTY\.md|man\/leat\.1|schema\/leat\.schema\.json|scenarios\/[\w-]+\.(?:yaml|csv|map)|dist\/.+\.(?:ts|js)|dist\/bundle\/(?:leat\.cjs|LICENSES\.txt)|src\/.+\.(?:ts|html))$/,
    };
    expect(files.filter((path) => !allowed[name].test(path))).toEqual([]);
    const built = files.filter((path) => /^dist\/.*\.js$/.test(path));
    const sources = files.filter((path) => /^src\/.*\.ts$/.test(path));
    expect(built.map((path) => path.slice(5, -3))).toEqual(sources.map((path) => path.slice(4, -3)));
  });

  it('names no place of the machine it was made on', () => {
    const paths = filesOf(name);
    expect(paths.length).toBeGreaterThan(name === 'view' ? 60 : 100);
    const home = process.env['HOME'] ?? '/root';
    const telling = paths.filter((path) => {
      const text = textOf(name, path);
      return text.includes(root) || text.includes(`${home}/`);
    });
    expect(telling).toEqual([]);
  });

  it('has no fault that publint finds', () => {
    const { status, said } = fromPackages('publint', ['--strict', there(tarball, name)]);
    expect([status, said]).toEqual([0, expect.stringContaining('All good!')]);
    const { status: source, said: more } = fromPackages('publint', [
      '--strict',
      '--pack',
      'npm',
      join('packages', name),
    ]);
    expect([source, more]).toEqual([0, expect.stringContaining('All good!')]);
  });

  it('has types that are right for who imports it (ESM only)', () => {
    const { status, said } = fromPackages('attw', [
      '--profile',
      'esm-only',
      '--no-emoji',
      there(tarball, name),
    ]);
    expect([status, said]).toEqual([0, expect.stringContaining(`@leat/${name}`)]);
  });
});

describe('the packed command', () => {
  it('asks for the library and the pictures of its own version', () => {
    const version = manifestOf('core')['version'];
    expect(manifestOf('cli')['dependencies']).toMatchObject({ '@leat/core': version, '@leat/view': version });
    expect(manifestOf('view')['dependencies']).toMatchObject({ '@leat/core': version });
    expect([manifestOf('view')['version'], manifestOf('cli')['version']]).toEqual([version, version]);
  });

  it('brings its scenarios, the schema, the man page and the licences of what it uses', () => {
    const files = filesOf('cli');
    const scenarios = readdirSync(join(root, 'packages/cli/scenarios'));
    for (const path of [
      ...scenarios.map((each) => `scenarios/${each}`),
      'schema/leat.schema.json',
      'man/leat.1',
      'THIRD-PARTY.md',
      'docs/system-file.md',
      'docs/commands.md',
    ])
      expect(files).toContain(path);
    expect(manifestOf('cli')).toMatchObject({ bin: { leat: './dist/main.js' }, man: './man/leat.1' });
    expect(textOf('cli', 'dist/main.js').startsWith('#!/usr/bin/env node\n')).toBe(true);
  });

  it('brings itself in one script, with the licences of all that is in it', () => {
    const files = filesOf('cli');
    expect(files.filter((path) => path.startsWith('dist/bundle/'))).toEqual([
      'dist/bundle/LICENSES.txt',
      'dist/bundle/leat.cjs',
    ]);
    const licences = textOf('cli', 'dist/bundle/LICENSES.txt');
    const table = textOf('cli', 'THIRD-PARTY.md');
    const named = [...licences.matchAll(/^(\S+ \d\S*)\n-+$/gm)].map(([, name]) => name);
    for (const own of ['commander', 'yaml', 'zod']) expect(named.join('\n')).toContain(`${own} `);
    for (const each of named) expect(table).toContain(`| ${each.replace(' ', ' | ')} |`);
    const asked = textOf('cli', 'dist/bundle/leat.cjs').matchAll(/\brequire\("(?:node:)?([^"]+)"/g);
    // linkedom asks for canvas and does without it.
    for (const [, name] of asked) expect([...builtinModules, 'canvas']).toContain(name);
  });
});

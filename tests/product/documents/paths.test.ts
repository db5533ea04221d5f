import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../packages/packed.js';
import { at, documents, forEngineers, forUsers } from './documents.js';

const passedOver = new Set([
  'node_modules',
  'dist',
  'dist-notebooks',
  'coverage',
  '.git',
  '.reports',
  '.api',
]);

/** Every file and folder of the tree, by its path from the root. */
function treeBelow(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    if (passedOver.has(entry.name)) return [];
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    return entry.isDirectory() ? [path, ...treeBelow(path)] : [path];
  });
}
const tree = treeBelow('');
const folders = (below: string): readonly string[] =>
  [...new Set(tree.filter((path) => path.startsWith(`${below}/`)).map(dirname))].map((path) =>
    relative(below, path),
  );

/** What stands in backticks, outside of blocks of code. */
const marked = (text: string): readonly string[] =>
  [...text.replace(/```[\s\S]*?```/g, '').matchAll(/`([^`\n]+)`/g)].map(([, inner]) => inner);

/** Where a path may begin: the root, or what a document of a package is about. */
const from = [
  '',
  'packages/core/src/',
  'packages/view/src/',
  'packages/cli/src/',
  'tests/',
  'tests/published/',
  'notebooks/',
];

/** Whether a path, in which `*`, NAME and the like stand for anything, is in the tree. */
function isThere(path: string): boolean {
  const form = path.replace(/[.+?^${}()|[\]\\]/g, '\\$&').replace(/\*|NAME|TOPIC|NN/g, '[^/]*');
  return from.some((start) => {
    const whole = new RegExp(`^${start}${form}/?$`);
    return tree.some((each) => whole.test(each));
  });
}

const sources = ['packages/core/src', 'packages/view/src', 'packages/cli/src'];
const ending = /\.(?:ts|mts|mjs|cjs|md|tsv|yaml|json|html|csv|svg|map|1)$/;
const tops = /^(?:packages|tests|notebooks|\.tools|\.ci)\//;

/** The words in backticks of a document for engineers that are paths of the tree. */
const pathsOf = (document: string): readonly string[] =>
  marked(at(document)).filter((word) => {
    if (!/^\.?[\w-]+(?:\/[\w.*-]+)+$/.test(word) || /^\.(?:reports|api)\//.test(word)) return false;
    const [first] = word.split('/');
    return (
      tops.test(word) || ending.test(word) || sources.some((below) => existsSync(join(root, below, first)))
    );
  });

describe('documents for engineers', () => {
  it.each(forEngineers)('%s names paths that are there', (document) => {
    expect(pathsOf(document).filter((path) => !isThere(path))).toEqual([]);
  });

  it('name many', () => {
    expect(forEngineers.flatMap(pathsOf).length).toBeGreaterThan(150);
  });
});

describe('unit tests', () => {
  it('stand in the rooms of the source', () => {
    const rooms = ['core', 'view', 'cli'].flatMap((part) =>
      folders(`tests/unit/${part}`).map((room) => `packages/${part}/src/${room}`.replace(/\/$/, '')),
    );
    expect(rooms.length).toBeGreaterThan(20);
    expect(rooms.filter((room) => !tree.includes(room))).toEqual([]);
  });
});

describe.each(forUsers)('%s', (document) => {
  it('names paths that are there', () => {
    const paths = at(document).match(/(?<![\w/.])(?:packages|tests|notebooks)\/[\w./-]*\w/g) ?? [];
    expect(paths.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});

/** The anchors of a document, as they are made of its headings. */
const anchorsOf = (text: string): readonly string[] =>
  [...text.replace(/```[\s\S]*?```/g, '').matchAll(/^#+ (.+)$/gm)].map(([, heading]) =>
    heading
      .toLowerCase()
      .replace(/[^\w\s-]/g, '')
      .replace(/\s/g, '-'),
  );

describe.each(documents)('links of %s', (document) => {
  it('lead somewhere', () => {
    const links = [
      ...at(document)
        .replace(/```[\s\S]*?```/g, '')
        .matchAll(/\]\(([^)\s]+)\)/g),
    ].map(([, to]) => to);
    const lost = links.filter((link) => {
      if (/^https?:/.test(link)) return false;
      const [path, anchor] = link.split('#');
      const target = path === '' ? document : relative(root, join(root, dirname(document), path));
      if (!existsSync(join(root, target))) return true;
      return anchor !== undefined && !anchorsOf(at(target)).includes(anchor);
    });
    expect(lost).toEqual([]);
  });
});

describe('the house in DEVELOPERS.md', () => {
  const text = at('DEVELOPERS.md');
  const named = new Set(marked(text));

  it('has every room of the packages', () => {
    const rooms = sources.flatMap(folders);
    const untold = rooms.filter(
      (room) =>
        room !== '' &&
        !named.has(room) &&
        !folders('packages/core/src').some((other) => other.startsWith(`${room}/`) && named.has(other)),
    );
    expect(rooms.length).toBeGreaterThan(40);
    expect(untold).toEqual(['commands']);
  });

  it('has every room of the tests', () => {
    const rooms = folders('tests')
      .filter((room) => room !== '' && room.split('/').length === 1)
      .map((room) => `tests/${room}`);
    expect(rooms.filter((room) => !named.has(room))).toEqual([]);
    const inTests = new Set(marked(at('tests/README.md')).map((path) => path.replace(/^tests\//, '')));
    const product = folders('tests').filter((room) => /^product\/[^/]+$/.test(room));
    expect(product.filter((room) => !inTests.has(room))).toEqual([]);
  });

  it('has the floors of the layering rules', () => {
    const rules = at('.dependency-cruiser.cjs');
    const floorsOf = (name: string): readonly (readonly string[])[] => {
      const [, list = '[]'] = new RegExp(`const ${name} = (\\[[\\s\\S]*?\\]);`).exec(rules) ?? [];
      return JSON.parse(list.replace(/'/g, '"').replace(/,(\s*\])/g, '$1')) as string[][];
    };
    const rows = [...text.matchAll(/^\| (\d+) +\| `([^`]+)`/gm)].map(
      ([, floor, room]) => [room, Number(floor)] as const,
    );
    const expected = (room: string): number => {
      const [core, cli] = [floorsOf('coreFloors'), floorsOf('cliFloors')];
      const top = room.split('/')[0];
      const inCore = core.findIndex((floor) => floor.includes(top));
      if (inCore >= 0) return inCore + 1;
      const plain = room === 'commands/NAME' ? 'commands/(?!shared)' : room;
      return cli.findIndex((floor) => floor.includes(plain)) + 1;
    };
    expect(rows.length).toBeGreaterThan(20);
    expect(rows.filter(([room, floor]) => expected(room) !== floor)).toEqual([]);
  });

  it('is short: 200 lines of at most 110 characters', () => {
    const lines = text.split('\n');
    expect(lines.length).toBeLessThan(200);
    expect(lines.filter((line) => line.length > 110)).toEqual([]);
  });
});

import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import * as main from '@leat/core';
import * as analysis from '@leat/core/analysis';
import * as calibration from '@leat/core/calibration';
import * as module from '@leat/core/module';
import * as odex from '@leat/core/odex';
import * as tasks from '@leat/core/tasks';
import * as units from '@leat/core/units';
import * as workers from '@leat/core/workers';
import { describe, expect, it } from 'vitest';
import { root } from './packed.js';

const entries: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  '.': main,
  './analysis': analysis,
  './calibration': calibration,
  './module': module,
  './odex': odex,
  './tasks': tasks,
  './units': units,
  './workers': workers,
};
const namesOf = (entry: string): readonly string[] => Object.keys(entries[entry]).sort();

/** Texts below a folder of the tree, of files with these endings. */
const textsBelow = (folder: string, endings: RegExp): string =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => endings.test(path) && !/node_modules|dist\//.test(path))
    .map((path) => readFileSync(join(root, folder, path), 'utf8'))
    .join('\n');

/** What programs of ours import from the library by name. */
const byName = [
  'packages/cli/src',
  'packages/view/src',
  'packages/page/src',
  'packages/examples',
  'notebooks',
]
  .map((folder) => textsBelow(folder, /\.(?:tsx?|html)$/))
  .flatMap((text) => [...text.matchAll(/import\s+(?:type\s+)?\{([^}]*)\}\s+from\s+'@leat\/core[^']*'/g)]);

/** What tasks are made of: who wants other tasks than ours makes them of the same. */
const inTasks = [
  ...textsBelow('packages/core/src/tasks', /\.ts$/).matchAll(/import\s+(?:type\s+)?\{([^}]*)\}\s+from/g),
];

const imported = [...byName, ...inTasks]
  .flatMap(([, names]) => names.split(','))
  .map(
    (name) =>
      name
        .trim()
        .replace(/^type /, '')
        .split(' as ')[0],
  );

/** What documents for users of the library name. */
const documents = `${textsBelow('packages/core/docs', /\.md$/)}${readFileSync(join(root, 'README.md'), 'utf8')}`;
const told = new Set([...documents.matchAll(/\b[a-zA-Z]+\b/g)].map(([word]) => word));

describe('the surface of the library', () => {
  it('is the one that is kept: a name that comes or goes is meant to', async () => {
    const list = Object.keys(entries)
      .map((entry) => `${entry}: ${namesOf(entry).join(' ')}`)
      .join('\n\n');
    await expect(`${list}\n`).toMatchFileSnapshot('./surface.txt');
  });

  it('has nothing that nobody outside uses: each value is imported by ours or told by a document', () => {
    const used = new Set(imported);
    const idle = Object.keys(entries)
      .flatMap(namesOf)
      .filter((name) => !used.has(name) && !told.has(name));
    // What reads and writes quantities stays together.
    expect([...new Set(idle)].sort()).toEqual(['WorkerDiedError', 'formatQuantity', 'internalUnit']);
  });

  it('holds no list that one program could change for another', () => {
    const open = Object.keys(entries).flatMap((entry) =>
      Object.entries(entries[entry])
        .filter(([, value]) => typeof value === 'object' && value !== null && !Object.isFrozen(value))
        .map(([name]) => name),
    );
    expect([...new Set(open)].sort()).toEqual([]);
    const row = main.rowOf(main.createParameters(), 'aob.growth') as { value: number };
    expect(() => {
      row.value = 9;
    }).toThrow(TypeError);
    expect(() => {
      (main.sourceList[0] as { year: string }).year = '1900';
    }).toThrow(TypeError);
  });
});

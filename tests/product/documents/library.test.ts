import { spawnSync } from 'node:child_process';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as library from '@leat/core';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { folderWith } from '../../support/leat.js';
import { root } from '../packages/packed.js';
import { at } from './documents.js';

const text = at('packages/core/docs/library.md');

describe('the document of the library', () => {
  it('shows a system built in code that runs to its end, and as it is told', () => {
    const program = [...text.matchAll(/```ts\n([\s\S]*?)```/g)].map(([, block]) => block).join('\n');
    const telling = 'console.log(run.outcome.kind, nitrate.length, fedRun.outcome.kind);';
    const folder = folderWith();
    mkdirSync(join(folder, 'node_modules/@leat'), { recursive: true });
    symlinkSync(join(root, 'packages/core'), join(folder, 'node_modules/@leat/core'));
    const { outputText } = ts.transpileModule(`${program}\n${telling}`, {
      compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 },
    });
    writeFileSync(join(folder, 'program.mjs'), outputText);
    const { stdout, stderr } = spawnSync(process.execPath, ['program.mjs'], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect([stdout, stderr]).toEqual(['done 11 done\n', '']);
  });

  it('names exports that there are', () => {
    const [, list] = text.split('## What there is');
    const names = [...list.matchAll(/`([a-zA-Z]+)[`(]/g)].map(([, name]) => name);
    expect(names.length).toBeGreaterThan(20);
    expect(names.filter((name) => !(name in library))).toEqual([]);
  });
});

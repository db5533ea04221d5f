import { readFileSync } from 'node:fs';
import { version } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith();
const manifest = (name: string): { version: string } =>
  JSON.parse(readFileSync(new URL(`../../../${name}package.json`, import.meta.url), 'utf8')) as {
    version: string;
  };

describe('the version', () => {
  it('is one, in every package, in the root, in the library, in the command', async () => {
    const one = manifest('').version;
    expect(one).toMatch(/^\d+\.\d+\.\d+$/);
    expect(manifest('packages/core/').version).toBe(one);
    expect(manifest('packages/view/').version).toBe(one);
    expect(manifest('packages/cli/').version).toBe(one);
    expect(version).toBe(one);
    expect(await leat(['--version'], folder)).toEqual({ code: 0, out: `${one}\n`, err: '' });
  });
});

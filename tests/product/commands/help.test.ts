import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith();

describe('leat --help', () => {
  it('names the commands and the exit codes', async () => {
    const { code, out, err } = await leat(['--help'], folder);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('run [options] <file>');
    expect(out).toContain('check [options] <file>');
    expect(out).toContain('0 done, 2 bad input, 3 did not finish, 4 balance broken, 5 bad usage, 70 our bug');
  });

  it('names every option of run', async () => {
    const { out } = await leat(['run', '--help'], folder);
    for (const option of [
      'days',
      'every',
      'set',
      'integrator',
      'tables',
      'tolerance',
      'json',
      'csv',
      'save',
      'sources',
      'quiet',
    ]) {
      expect(out).toContain(`--${option}`);
    }
  });

  it('says the version of the package', async () => {
    const text = readFileSync(new URL('../../../packages/cli/package.json', import.meta.url), 'utf8');
    expect((await leat(['--version'], folder)).out.trim()).toBe(
      (JSON.parse(text) as { version: string }).version,
    );
  });
});

import {
  existsSync,
  lstatSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, shell } from '../../support/leat.js';

const folder = folderWith();
const noTrace = /^\s+at |node:internal|Error:/m;
const highest = 'highest tan@tank averaged 1 d';

/** Commands with much to say. */
const talkers: readonly (readonly [string, string])[] = [
  ['run', 'run small.yaml'],
  ['run --json', 'run small.yaml --json'],
  ['check', 'check small.yaml'],
  ['compare', 'compare small.yaml small.yaml'],
  ['show', 'show'],
  ['steady', 'steady small.yaml'],
  ['help', '--help'],
];

describe('a pipe that its reader closes', () => {
  it.each(talkers)('ends leat %s without a word', (_name, words) => {
    for (const reader of ['head -1', 'true']) {
      const { code, err } = shell(
        `set -o pipefail; $LEAT ${words} 2>err.txt | ${reader} >/dev/null; exit \${PIPESTATUS[0]}`,
        folder,
      );
      expect({ code: code === 0 || code === 3, err }).toEqual({ code: true, err: '' });
      expect(readFileSync(join(folder, 'err.txt'), 'utf8')).not.toMatch(noTrace);
    }
  });
});

describe.runIf(existsSync('/dev/full'))('a full disk', () => {
  it.each(talkers)('is said in a line by leat %s, which leaves with 2', (_name, words) => {
    const { code, err } = shell(`$LEAT ${words} >/dev/full`, folder);
    expect(code).toBe(2);
    expect(err).toContain('the result cannot be written: the disk is full');
    expect(err).not.toMatch(noTrace);
  });

  it.each([
    ['run --csv', ['run', 'small.yaml', '--csv', '/dev/full']],
    ['run --save', ['run', 'small.yaml', '--save', '/dev/full']],
    ['plot', ['plot', 'small.yaml', '--of', 'nitrate@sump', '--out', 'full.svg']],
    ['report', ['report', 'small.yaml', '--out', 'full.svg']],
    [
      'sweep',
      [
        'sweep',
        'small.yaml',
        '--days',
        '2',
        '--vary',
        'vessels.filter.surface=5 m2:50 m2:2',
        '--of',
        highest,
        '--csv',
        '/dev/full',
      ],
    ],
  ])('is named with its file by leat %s', async (_name, args) => {
    const there = folderWith();
    symlinkSync('/dev/full', join(there, 'full.svg'));
    const { code, err } = await leat(args, there);
    expect(code).toBe(2);
    expect(err).toMatch(/full(\.svg)?: cannot be written: the disk is full/);
    expect(err).not.toMatch(noTrace);
    expect(readdirSync(there).sort()).toEqual(['full.svg', 'small.yaml']);
    expect(statSync('/dev/full').isCharacterDevice()).toBe(true);
  });
});

describe('a file that is written', () => {
  it('may be a device or a pipe, which is written to and stays what it is', async () => {
    const { code, out } = shell('$LEAT run small.yaml --quiet --csv /dev/stdout | head -1', folder);
    expect(code).toBe(0);
    expect(out).toMatch(/^time/);
    expect((await leat(['run', 'small.yaml', '--quiet', '--csv', '/dev/null'], folder)).code).toBe(0);
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
  });

  it('may be a link, which stays a link: what it leads to is written', async () => {
    const there = folderWith({ 'real.csv': 'time [d],old\n' });
    symlinkSync('real.csv', join(there, 'link.csv'));
    expect((await leat(['run', 'small.yaml', '--quiet', '--csv', 'link.csv'], there)).code).toBe(0);
    expect(lstatSync(join(there, 'link.csv')).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(there, 'real.csv'), 'utf8')).not.toContain('old');
  });

  it('may not be a folder', async () => {
    const there = folderWith();
    writeFileSync(join(there, 'out.csv'), 'old');
    const { code, err } = await leat(['run', 'small.yaml', '--quiet', '--csv', '.'], there);
    expect(code).toBe(2);
    expect(err).toMatch(/^\.: cannot be written: /);
    expect(readdirSync(there).sort()).toEqual(['out.csv', 'small.yaml']);
  });
});

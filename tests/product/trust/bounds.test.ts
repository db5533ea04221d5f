import { chmodSync, existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { getuid } from 'node:process';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { digest } from '../../../packages/cli/src/files/digest.js';
import { processorSeconds } from '../../support/processor-time.js';
import { smallSystem } from '../../support/small-text.js';
import { folderWith, leat } from '../../support/leat.js';

/** Exit code and message of a check, and what it cost in processor time. */
async function checked(
  text: string,
  files: Readonly<Record<string, string | Uint8Array>> = {},
): Promise<{ code: number | null; err: string; seconds: number }> {
  const folder = folderWith({ ...files, 'small.yaml': text });
  const { result, seconds } = await processorSeconds(() => leat(['check', 'small.yaml'], folder));
  return { ...result, seconds };
}

/** s of processor time, thirty times what the costliest takes: only what grows without bound comes here. */
const endless = 60;

const anchors = Array.from({ length: 9 }, (_, i) =>
  i === 0 ? 'a0: &a0 [x, x, x, x, x, x, x, x, x, x]' : `a${i}: &a${i} [${`*a${i - 1}, `.repeat(10)}]`,
).join('\n');
const cells = (count: number): string =>
  Array.from({ length: count }, (_, i) => `  v${i}: { kind: sump, volume: 1 m3, area: 1 m2 }`).join('\n');

/** Files made to cost time or memory, and what is said of each. */
const costly: [what: string, text: string, said: RegExp][] = [
  [
    'a file of 50 MB',
    '#'.repeat(50_000_000),
    /^small\.yaml: too long; got 50000000 characters; expected at most 2000000$/m,
  ],
  [
    'anchors that explode',
    `${anchors}\n`,
    /^small\.yaml:\d+:\d+: more than 400000 values once aliases are followed$/m,
  ],
  ['an anchor that holds itself twice', 'a: &a [*a, *a]\n', /nested more than 40 deep/],
  [
    'brackets a million deep',
    '['.repeat(1_000_000),
    /too much in one file; got 1000000 line ends, commas, colons/,
  ],
  ['brackets a hundred thousand deep', '['.repeat(100_000), /nested more than 40 deep/],
  [
    'a hundred thousand keys',
    Array.from({ length: 100_000 }, (_, i) => `k${i}: 1`).join('\n'),
    /^small\.yaml:\d+:\d+: k\d+: unknown key[^\n]*$/m,
  ],
  ['a hundred thousand equal keys', 'a: 1\n'.repeat(100_000), /99\d{3} more faults/],
  ['a hundred thousand faults of syntax', '}\n'.repeat(100_000), /not YAML from here on/],
  [
    '10,000 vessels',
    smallSystem.replace('vessels:\n', `vessels:\n${cells(10_000)}\n`),
    /vessels: too many entries; got 10004; expected at most 5000/,
  ],
  [
    '25,000 flows',
    smallSystem.replace('flows:\n', `flows:\n${'  - { from: tank, to: bed }\n'.repeat(25_000)}`),
    /flows: too many entries; got 25004; expected at most 20000|too much in one file/,
  ],
  ['a key of a million letters', `${'k'.repeat(1_000_000)}: 1\n`, /^small\.yaml:1:1: .{0,500}$/m],
];

describe('bounds before anything is simulated', () => {
  it.each(costly)('%s is refused by name', async (_, text, said) => {
    const { code, err, seconds } = await checked(text);
    expect(code).toBe(2);
    expect(err.slice(0, 400_000)).toMatch(said);
    expect(err.split('\n').length).toBeLessThan(600);
    expect(seconds).toBeLessThan(endless);
  });

  it('64 files of two megabytes are refused together', async () => {
    const names = Array.from({ length: 64 }, (_, i) => `a${i}.yaml`);
    const files = Object.fromEntries(names.map((name) => [name, `note: "${'x'.repeat(100_000)}"\n`]));
    const { code, err } = await checked(`include: [${names.join(', ')}]\n`, files);
    expect(code).toBe(2);
    expect(err).toContain('more than 2000000 characters in all files together');
  });

  it('a file that is named is at most 16 MB, one on the command line at most 64 MB', async () => {
    const system = smallSystem.replace('et0: 4 mm/d', 'et0: { csv: big.csv, column: et0, unit: mm/d }');
    expect((await checked(system, { 'big.csv': '0'.repeat(17 * 2 ** 20) })).err).toContain(
      'larger than 16 MB',
    );
    const folder = folderWith({ 'big.csv': '0'.repeat(65 * 2 ** 20) });
    expect((await leat(['log', 'big.csv'], folder)).err).toBe('big.csv: cannot be read: larger than 64 MB\n');
  });

  it('outputs times vessels are bounded', async () => {
    const text = smallSystem.replace('days: 40', 'days: 36525\nevery: 1 h');
    expect((await checked(text)).err).toContain(
      'every: too many outputs for so many vessels; got 876600 outputs of 4 vessels; expected at most 2000000',
    );
  });

  it('an ensemble that would unpack to more than was written is refused', async () => {
    const bomb = gzipSync(Buffer.alloc(50_000_000));
    const packed = [{ form: 'u8', length: 10, bytes: bomb.length }];
    const head = {
      label: 'leat ensemble',
      schema: 3,
      id: 'x',
      counts: [0, 0, 0, 0],
      kinds: ['exact', 'exact'],
      packed,
    };
    // With the right hash, so that it is read on.
    const whole = (first: object, ...bodies: readonly Buffer[]): Buffer => {
      const hash = digest(JSON.stringify(first), ...bodies);
      return Buffer.from(`${JSON.stringify({ ...first, hash })}\n`);
    };
    const folder = folderWith({
      'a.ens': Buffer.concat([whole(head, bomb), bomb]),
      'b.ens': whole({ label: 'leat ensemble', schema: 3 }),
    });
    for (const name of ['a.ens', 'b.ens']) {
      const { code, err } = await leat(['merge', name, name], folder);
      expect(code).toBe(2);
      expect(err).toMatch(new RegExp(`^${name}: damaged or cut short: `));
    }
  });

  it('a spreadsheet that would unpack to more than its bound, or is none, is refused', async () => {
    const folder = folderWith({ 'a.xlsx': 'no zip', 'b.xlsx': new Uint8Array(9 * 2 ** 20), 'c.xlsx': '' });
    const said = async (name: string): Promise<string> => (await leat(['log', name], folder)).err;
    expect(await said('a.xlsx')).toBe(
      'a.xlsx: cannot be read as a spreadsheet: it is no spreadsheet of the form .xlsx\n',
    );
    expect(await said('b.xlsx')).toBe('b.xlsx: cannot be read as a spreadsheet: larger than 8 MB\n');
    expect(await said('c.xlsx')).toContain('it is no spreadsheet');
  });
});

describe('files that cannot be read or written', () => {
  it('a directory and a file that is not there', async () => {
    const folder = folderWith({ 'below/x': '' });
    expect(await leat(['check', 'below'], folder)).toEqual({
      code: 2,
      out: '',
      err: 'below: cannot be read: it is a folder\n',
    });
    expect((await leat(['check', 'none.yaml'], folder)).err).toBe(
      'none.yaml: cannot be read: no such file or folder\n',
    );
    expect((await leat(['check', 'small.yaml/x'], folder)).err).toContain('part of the path is not a folder');
    expect((await leat(['check', 'a\0b'], folder)).code).toBe(2);
  });

  // The superuser may read everything.
  it.skipIf(getuid?.() === 0)('a file without permission to read', async () => {
    const folder = folderWith();
    chmodSync(join(folder, 'small.yaml'), 0);
    expect((await leat(['check', 'small.yaml'], folder)).err).toBe(
      'small.yaml: cannot be read: no permission\n',
    );
  });

  it.skipIf(!existsSync('/dev/full'))('a full disk ends with a word and leaves nothing behind', async () => {
    const folder = folderWith();
    const { code, err } = await leat(
      ['run', 'small.yaml', '--days', '1', '--quiet', '--csv', '/dev/full'],
      folder,
    );
    expect([code, err]).toEqual([2, '/dev/full: cannot be written: the disk is full\n']);
    expect(statSync('/dev/full').isCharacterDevice()).toBe(true);
    expect(readdirSync(folder)).toEqual(['small.yaml']);
    const never = await leat(['check', '/dev/zero'], folder);
    expect(never).toEqual({ code: 2, out: '', err: '/dev/zero: cannot be read: larger than 64 MB\n' });
  });
});

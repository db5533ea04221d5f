import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { program } from '../../../packages/cli/src/program.js';
import { algae, algaeCaution, leakingAlgae } from '../../support/algae.js';
import { folderWith, leat } from '../../support/leat.js';

// Invented readings, ten days of them.
const readings = [
  'date,TAN,nitrate',
  ...Array.from({ length: 10 }, (_, i) => `2025-03-${String(2 * i + 2).padStart(2, '0')},0.4,${21 + i}`),
];
const map = `version: 1
date: { column: date }
columns:
  TAN: { reads: ammonia, in: tank, unit: mg N/L }
  nitrate: { reads: nitrate, in: tank, unit: mg N/L }
`;
const folder = folderWith({
  'algae.mjs': algae,
  'leak.mjs': leakingAlgae,
  'log.csv': `${readings.join('\n')}\n`,
  'log.map': map,
});
const logged = ['small.yaml', '--log', 'log.csv', '--map', 'log.map'];
await leat(['fit', ...logged, '--free', 'start.nitrate', '--starts', '1', '--out', 'fit.json'], folder);

const short = ['small.yaml', '--days', '2'];
const tan = ['--of', 'last tan@tank'];
const kept = ['--keep', 'highest tan@tank below 50 mg N/L'];
const one = ['--workers', '1'];

/** A call of every command that takes a file and runs it, which answers with numbers. */
const calls: readonly (readonly [word: string, args: readonly string[]])[] = [
  ['run', [...short, '--json']],
  ['compare', [short[0], short[0], '--days', '2', '--json']],
  ['why', [...short, '--of', 'tan@tank', '--from', '0d', '--to', '2d', '--json']],
  ['advise', [...short, '--keep', 'highest tan@tank below 0.4 mg N/L', '--change', 'feed', '--json', ...one]],
  ['report', [...short, '--out', 'told.html', '--force']],
  ['plot', [...short, '--of', 'tan@tank', '--out', 'tan.svg', '--force']],
  [
    'steady',
    ['small.yaml', ...['nitrate', 'chloride', 'alkalinity'].flatMap((c) => ['--hold', c]), '--json'],
  ],
  [
    'size',
    [...short, '--vary', 'fish.tilapia.number', '--from', '1', '--to', '40', ...kept, '--largest', '--json'],
  ],
  ['plan', [...short, '--vary', 'fish=20:22', '--members', '1', '--json', ...one]],
  ['sweep', [...short, ...tan, '--vary', 'fish.tilapia.number=20:40:2', '--json', ...one]],
  ['ensemble', [...short, ...tan, '--members', '2', '--json', ...one]],
  ['sensitivity', [...short, ...tan, '--method', 'local', '--only', 'aob.*', '--json', ...one]],
  ['fit', [...logged, '--free', 'start.nitrate', '--starts', '1', '--json']],
  ['forecast', [...logged, '--fit', 'fit.json', '--days', '2', '--members', '2', '--json']],
  [
    'backtest',
    [...logged, '--free', 'start.nitrate', '--step', '7', '--warm-up', '7', '--fits', '1', '--json'],
  ],
];
const written = (args: readonly string[]): string => {
  const out = args.find((_, i) => args[i - 1] === '--out');
  return out === undefined ? '' : readFileSync(join(folder, out), 'utf8');
};

describe('--extend', () => {
  it('is an option of these commands, of check, and of no other', () => {
    const silent = { result: () => undefined, note: () => undefined };
    const has = program(silent, () => undefined).commands.filter(({ options }) =>
      options.some(({ long }) => long === '--extend'),
    );
    const named = [...calls.map(([word]) => word), 'check'];
    expect(has.map((command) => command.name()).sort()).toEqual(named.sort());
  });

  it.each(calls)('works in what leat %s answers, and its rows are checked there', async (word, args) => {
    const plain = await leat([word, ...args], folder);
    const before = written(args);
    const own = await leat([word, ...args, '--extend', 'algae.mjs'], folder);
    expect(own.code).toBe(plain.code);
    expect([own.err.split(algaeCaution).length - 1, plain.err.includes(algaeCaution)]).toEqual([1, false]);
    expect(own.out.length + written(args).length).toBeGreaterThan(100);
    expect(own.out === plain.out && written(args) === before).toBe(false);
    const leak = await leat([word, ...args, '--extend', 'leak.mjs'], folder);
    expect(leak.code).toBe(2);
    expect(leak.err).toMatch(/leak\.mjs: the row algae-growth makes .* of nitrogen per g N;/);
  });

  it('is checked by leat check', async () => {
    const own = await leat(['check', 'small.yaml', '--extend', 'algae.mjs'], folder);
    expect([own.code, own.err.includes(algaeCaution)]).toEqual([0, true]);
    const leak = await leat(['check', 'small.yaml', '--extend', 'leak.mjs'], folder);
    expect([leak.code, leak.err.includes('the row algae-growth makes')]).toEqual([2, true]);
  });

  it.each([
    ['size', [...calls[7][1], '--members', '2', ...one]],
    ['ensemble', calls[10][1]],
  ])('of another text is other work, with which leat %s does not go on', async (word, args) => {
    writeFileSync(join(folder, 'mine.mjs'), algae);
    const call = [word, ...args, '--extend', 'mine.mjs'];
    expect((await leat([...call, '--out', `${word}.kept`], folder)).code).toBe(0);
    expect((await leat([...call, '--resume', `${word}.kept`], folder)).code).toBe(0);
    // A module is run once in a process: another stands under another name.
    writeFileSync(join(folder, 'other.mjs'), algae.replace('k[0] * v[at[0]] * v[at[1]]', '0.5 * $&'));
    const { code } = await leat([word, ...args, '--extend', 'other.mjs', '--resume', `${word}.kept`], folder);
    expect(code).toBe(2);
  });
});

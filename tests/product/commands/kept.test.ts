import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, leatSignalled } from '../../support/leat.js';
import { full } from '../../support/length.js';

const folder = folderWith({ 'short.yaml': `include: small.yaml\ndays: ${full ? 4 : 2}\n` });
const bytes = (file: string): Buffer => readFileSync(join(folder, file));

const only = ['--only', 'aob.*', '--only', 'nob.*'];

const works = [
  {
    word: 'sensitivity',
    // Morris over all, then Sobol over the few: the second part is chosen by the first.
    args: [
      'sensitivity',
      'short.yaml',
      '--of',
      'highest nitrite@tank',
      '--members',
      full ? '8' : '4',
      ...only,
      '--json',
    ],
    said: /^(\d+) runs are kept in (\S+): the same command with --resume \2 goes on\n$/,
    other: ['--seed', '9'],
    differs: /^kept\.sensitivity: of other work \(kept \/ asked\):\n {2}--seed: 1 \/ 9\n/,
  },
  {
    word: 'size',
    args: [
      ...['size', 'short.yaml', '--vary', 'vessels.filter.surface', '--from', '5 m2', '--to', '200 m2'],
      ...['--keep', 'highest tan@tank averaged 1 d below 0.35 mg N/L', '--members', '8', '--json'],
    ],
    said: /^(\d+) of 8 draws are kept in (\S+): the same command with --resume \2 goes on\nstopped: \1 of 8 draws are told\n$/,
    other: ['--members', '9'],
    differs: /^kept\.size: of other work \(kept \/ asked\):\n {2}--members: 8 \/ 9\n/,
  },
] as const;

/** How many outputs a file holds. */
const held = (file: string): number => {
  const { done } = JSON.parse(bytes(file).toString()) as { done: Record<string, readonly unknown[]> };
  return Object.values(done).reduce((sum, outputs) => sum + outputs.length, 0);
};

describe.each(works)('leat $word', async ({ word, args, said, other, differs }) => {
  const kept = `kept.${word}`;
  const whole = await leat([...args, '--workers', '1', '--out', kept], folder);

  it('keeps what is done, and tells the same from it', async () => {
    expect([whole.code, whole.err]).toEqual([0, '']);
    const before = bytes(kept);
    const again = await leat([...args, '--resume', kept], folder);
    expect([again.code, again.err, again.out]).toEqual([0, '', whole.out]);
    expect(bytes(kept).equals(before)).toBe(true);
  });

  it('by kill -9 goes on from what was kept, with other workers, to the same bytes', async () => {
    const call = [...args, '--workers', '1', '--out', `killed.${word}`];
    expect(leatSignalled(call, folder, 'SIGKILL', `kept killed.${word}`).code).toBe(137);
    const done = held(`killed.${word}`);
    expect(done).toBeGreaterThan(0);
    expect(done).toBeLessThan(held(kept));
    const resumed = await leat([...args, '--workers', '2', '--resume', `killed.${word}`], folder);
    expect([resumed.code, resumed.out]).toEqual([0, whole.out]);
    expect(bytes(`killed.${word}`).equals(bytes(kept))).toBe(true);
  });

  it('by Ctrl-C keeps what is done, says how to go on and leaves with 130', async () => {
    const file = `stopped.${word}`;
    const call = [...args, '--workers', '1', '--out', file];
    const { code, err } = leatSignalled(call, folder, 'SIGINT', `kept ${file}`);
    const [, count = '', at = ''] = said.exec(err) ?? [];
    expect([code, at], err).toEqual([130, file]);
    expect(held(file)).toBe(Number(count));
    expect(Number(count)).toBeLessThan(held(kept));
    const resumed = await leat([...args, '--workers', '1', '--resume', file], folder);
    expect([resumed.code, resumed.out]).toEqual([0, whole.out]);
  });

  it('refuses what was kept of other work, is damaged, or is none', async () => {
    const refused = await leat([...args, ...other, '--workers', '1', '--resume', kept], folder);
    expect([refused.code, refused.out]).toEqual([2, '']);
    expect(refused.err).toMatch(differs);
    writeFileSync(join(folder, `cut.${word}`), bytes(kept).subarray(0, -20));
    const cut = await leat([...args, '--workers', '1', '--resume', `cut.${word}`], folder);
    expect([cut.code, cut.err]).toEqual([
      2,
      `cut.${word}: cut short, damaged, or with something behind its end\n`,
    ]);
    const text = bytes(kept).toString();
    const damaged = text.replace(/\[0,\{[^}]*\}/, '[0,7');
    expect(damaged).not.toBe(text);
    writeFileSync(join(folder, `damaged.${word}`), damaged);
    expect((await leat([...args, '--workers', '1', '--resume', `damaged.${word}`], folder)).code).toBe(2);
    const none = await leat([...args, '--resume', 'none'], folder);
    expect([none.code, none.err]).toEqual([2, 'none: cannot be read: no such file or folder\n']);
  });
});

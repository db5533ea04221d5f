import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const scenarios = fileURLToPath(new URL('../../../packages/cli/scenarios/', import.meta.url));
const shipped = (name: string): string => readFileSync(join(scenarios, name), 'utf8');
const highest = 'highest tan@tank averaged 1 d';
const few = ['--days', '2', '--members', '2', '--workers', '1'];
const sized = ['size', 'small.yaml', '--vary', 'vessels.filter.surface', '--from', '5 m2', '--to', '200 m2'];
const size = [...sized, '--keep', `${highest} below 0.35 mg N/L`, ...few];
const local = [
  'sensitivity',
  'small.yaml',
  '--days',
  '2',
  '--of',
  highest,
  '--method',
  'local',
  '--only',
  'aob.*',
];

const folder = folderWith({
  'backyard.yaml': shipped('backyard.yaml'),
  'backyard.csv': shipped('backyard.csv'),
  'backyard.map': shipped('backyard.map'),
});
const read = (name: string): Buffer => readFileSync(join(folder, name));
const write = (name: string, bytes: Uint8Array | string): void => {
  writeFileSync(join(folder, name), bytes);
};
const fitted = ['fit', 'backyard.yaml', '--log', 'backyard.csv', '--map', 'backyard.map'];
await leat(['run', 'small.yaml', '--days', '2', '--save', 'whole.state', '--quiet'], folder);
write('whole.run', (await leat(['run', 'small.yaml', '--days', '2', '--json'], folder)).out);
write('whole.bands', (await leat(['ensemble', 'small.yaml', ...few, '--json'], folder)).out);
await leat(['ensemble', 'small.yaml', ...few, '--out', 'whole.ens'], folder);
await leat([...size, '--out', 'whole.size'], folder);
await leat([...local, '--out', 'whole.sens'], folder);
await leat(
  [...fitted, '--until', '2026-03-20', '--starts', '1', '--free', 'start.nitrate', '--out', 'whole.fit'],
  folder,
);

/** Every kept form: its file, the call that takes it up from another name, and a word in it that a person may change. */
const forms: readonly (readonly [ending: string, call: (file: string) => readonly string[], from: RegExp])[] =
  [
    [
      'state',
      (file) => ['run', 'small.yaml', '--days', '3', '--set', `start.saved=${file}`, '--quiet'],
      /\d(?=\D{0,30}"unit")/,
    ],
    ['run', (file) => ['compare', 'small.yaml', file, '--days', '2'], /(?<="throughput":)/],
    ['run', (file) => ['report', file, '--out', 'page.html'], /(?<="throughput":)/],
    [
      'bands',
      (file) => ['report', 'small.yaml', '--days', '2', '--ensemble', file, '--out', 'page.html'],
      /(?<="mean":|"resolution":)/,
    ],
    ['ens', (file) => ['merge', file], /(?<="members":)/],
    ['ens', (file) => ['ensemble', 'small.yaml', ...few, '--resume', file], /(?<="title":")/],
    ['size', (file) => [...size, '--resume', file], /(?<="value":)/],
    ['sens', (file) => [...local, '--resume', file], /(?<="value":)/],
    [
      'fit',
      (file) => ['run', 'backyard.yaml', '--days', '2', '--fit', file, '--quiet'],
      /(?<="deviation": )/,
    ],
  ];

describe.each(forms)('a kept %s (%#)', (ending, call, from) => {
  const whole = read(`whole.${ending}`);
  const text = whole.toString('latin1');
  const bad = `bad.${ending}`;
  const refused = async (bytes: string): Promise<string> => {
    write(bad, Buffer.from(bytes, 'latin1'));
    const { code, out, err } = await leat(call(bad), folder);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(bad);
    expect(read(bad).toString('latin1')).toBe(bytes);
    return err;
  };

  it('is taken up as it was written', async () => {
    expect((await leat(call(`whole.${ending}`), folder)).code).toBe(0);
  });

  it('is refused by name where a figure in it was changed', async () => {
    const changed = text.replace(from, '1');
    expect(changed).not.toBe(text);
    expect(await refused(changed)).toMatch(/its hash is of something else|changed after it was written/);
  });

  it('is refused where it has no hash, or that of another', async () => {
    await refused(text.replace(/, ?\s*"hash": ?"[0-9a-f]{64}"/, ''));
    expect(await refused(text.replace(/(?<="hash": ?")[0-9a-f]{4}/, 'beef'))).toContain(
      'its hash is of something else',
    );
  });

  it('is refused where it was cut, anywhere, or goes on behind its end', async () => {
    for (const share of [0.2, 0.5, 0.97]) await refused(text.slice(0, Math.floor(share * text.length)));
    await refused(`${text}x`);
    await refused(`${text}${text}`);
  });
});

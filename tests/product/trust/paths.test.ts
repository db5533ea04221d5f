import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { smallSystem } from '../../support/small-text.js';
import { folderWith, leat } from '../../support/leat.js';

const outside = 'cannot be read: it lies outside the folder of mine/system.yaml';
const days = `day,et0\n${Array.from({ length: 40 }, (_, i) => `${i},4`).join('\n')}\n`;
const csvSystem = (path: string): string =>
  smallSystem.replace('et0: 4 mm/d', `et0: { csv: ${path}, column: et0, unit: mm/d }`);

/** A system in `mine/`, with files beside that folder which it has no business to read. */
function strangers(text: string): string {
  return folderWith({
    'mine/system.yaml': text,
    'mine/below/base.yaml': smallSystem,
    'mine/below/et0.csv': days,
    'base.yaml': smallSystem,
    'et0.csv': days,
    'secret.json': '{"password": "hunter2"}',
  });
}

/** What may be named in a file, each with a path that leads out of its folder. */
const named: [what: string, text: string][] = [
  ['include', 'include: ../base.yaml\n'],
  ['an absolute include', 'include: /etc/hostname\n'],
  ['an include by a round way', 'include: below/../../base.yaml\n'],
  ['include of a list', 'include: [below/base.yaml, ../base.yaml]\n'],
  ['a file of daily values', csvSystem('../et0.csv')],
  ['tables', `${smallSystem}tables: ../secret.json\n`],
  ['a saved state', smallSystem.replace('biofilm: cycled', 'saved: ../secret.json')],
  [
    'weather',
    smallSystem.replace(
      'et0: 4 mm/d',
      'et0: { weather: ../et0.csv, latitude: 50, altitude: 100 m, columns: { high: { column: day, unit: degC }, low: { column: day, unit: degC } } }',
    ),
  ],
];

describe('paths that a file names', () => {
  it.each(named)('%s does not leave the folder of the file', async (_, text) => {
    const folder = strangers(text);
    const refused = await leat(['check', 'mine/system.yaml'], folder);
    expect(refused.code).toBe(2);
    expect(refused.err).toContain(outside);
    expect(refused.err).not.toContain('hunter2');
  });

  it('a link does not lead out of it either', async () => {
    const folder = strangers('include: link.yaml\n');
    symlinkSync(join(folder, 'base.yaml'), join(folder, 'mine/link.yaml'));
    expect((await leat(['check', 'mine/system.yaml'], folder)).err).toContain(outside);
  });

  it('are read below the folder, and elsewhere where that is allowed', async () => {
    const folder = strangers('include: [below/base.yaml, ../base.yaml]\n');
    expect((await leat(['check', 'mine/system.yaml', '--allow-path', '.'], folder)).code).toBe(0);
    expect((await leat(['check', 'mine/system.yaml', '--allow-path', 'mine/below'], folder)).code).toBe(2);
    const below = strangers(csvSystem('below/et0.csv'));
    expect((await leat(['check', 'mine/system.yaml'], below)).code).toBe(0);
  });

  it('a path that a person typed is read wherever it lies', async () => {
    const folder = strangers(csvSystem('below/et0.csv'));
    const csv = (path: string): string[] => ['--set', `climate.et0.csv=${path}`];
    expect((await leat(['check', 'mine/system.yaml', ...csv('et0.csv')], folder)).code).toBe(0);
    const table = await leat(['check', 'mine/system.yaml', '--tables', 'secret.json'], folder);
    expect(table.err).not.toContain('outside');
    expect(table.err).toMatch(/^secret\.json:1:1: unknown column/);
  });

  it('a device or a folder is no plain file', async () => {
    const folder = strangers('include: below\n');
    expect((await leat(['check', 'mine/system.yaml'], folder)).err).toContain('it is no plain file');
    const device = strangers('include: zero\n');
    symlinkSync('/dev/zero', join(device, 'mine/zero'));
    const allowed = await leat(['check', 'mine/system.yaml', '--allow-path', '/dev'], device);
    expect(allowed.err).toContain('it is no plain file');
  });
});

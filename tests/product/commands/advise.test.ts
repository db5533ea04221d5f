import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';
import { smallSystem } from '../../support/small-text.js';

const salty = `${smallSystem}dosing:
  - { into: sump, product: sodium-chloride, mass: 3 kg, at: 4 d }
`;
const folder = folderWith({ 'salty.yaml': salty });
const short = ['--days', '14'];
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => Array.from(line).length));

describe('leat advise', () => {
  it('says that nothing need be done where nothing goes wrong', async () => {
    const { code, out, err } = await leat(
      ['advise', 'small.yaml', '--days', '5', '--save', 'none.yaml'],
      folder,
    );
    expect([code, err]).toEqual([0, 'none.yaml: not written: nothing need be done\n']);
    expect(out).toMatch(/^Nothing need be done\.$/m);
    expect(existsSync(join(folder, 'none.yaml'))).toBe(false);
  });

  it('gives one answer for one change, the lines of the file, and a scenario that runs to it', async () => {
    const { code, out, err } = await leat(
      ['advise', 'salty.yaml', ...short, '--change', 'smaller-dose', '--save', 'advised.yaml'],
      folder,
    );
    expect([code, err]).toEqual([0, 'advised.yaml: proposal 1, to be run by leat run advised.yaml\n']);
    const [, percent] = /^Answer: (\d+) % less sodium chloride\.$/m.exec(out) ?? [];
    const mass = Number((3 * (1 - Number(percent) / 100)).toPrecision(4));
    const line = `- { into: sump, product: sodium-chloride, mass: ${mass} kg, at: 4 d }`;
    expect(out).toContain(`put into the file\n     dosing:\n       ${line}\n`);
    expect(widest(out)).toBeLessThanOrEqual(88);
    const kept = readFileSync(join(folder, 'advised.yaml'), 'utf8');
    expect(kept).toContain('include: "salty.yaml"');
    expect(kept).toContain(`  ${line}\n`);
    expect((await leat(['run', 'salty.yaml', ...short], folder)).out).toContain('salt: chloride above');
    expect((await leat(['run', 'advised.yaml'], folder)).out).not.toContain('salt: chloride above');
  });

  it('takes a condition of one own, and says where nothing of a change is enough', async () => {
    const { code, out } = await leat(
      [
        'advise',
        'small.yaml',
        '--days',
        '5',
        '--change',
        'feed',
        '--keep',
        'highest nitrate@sump below 1 mg N/L',
      ],
      folder,
    );
    expect(code).toBe(0);
    expect(out).toContain('It does not keep "highest nitrate@sump below 1 mg N/L"');
    expect(out).toMatch(/^Not enough, however much: less feed\./m);
  });

  it('never writes over the file that it reads, nor where that could not be included', async () => {
    const over = await leat(['advise', 'salty.yaml', ...short, '--save', 'salty.yaml'], folder);
    expect([over.code, over.err]).toEqual([2, expect.stringContaining('is read')]);
    const elsewhere = await leat(
      ['advise', 'salty.yaml', ...short, '--save', '/tmp/leat-elsewhere/x.yaml'],
      folder,
    );
    expect([elsewhere.code, elsewhere.err]).toEqual([
      2,
      expect.stringContaining('expected a name in the folder'),
    ]);
  });

  it('refuses changes and conditions that there are not', async () => {
    expect((await leat(['advise', 'small.yaml', '--change', 'pray'], folder)).code).toBe(5);
    const { code, err } = await leat(['advise', 'small.yaml', '--keep', 'nitrate low'], folder);
    expect([code, err]).toEqual([2, expect.stringContaining('--keep')]);
  });

  it('gives one document, with the lines of each proposal', async () => {
    const { out } = await leat(
      ['advise', 'salty.yaml', ...short, '--change', 'smaller-dose', '--json'],
      folder,
    );
    const document = JSON.parse(out) as {
      aim: string;
      proposals: { enough: boolean; lines: { put: string[] } }[];
    };
    expect(document).toMatchObject({ schema: 'leat-advice', aim: 'harm', proposals: [{ enough: true }] });
    expect(document.proposals[0].lines.put[0]).toBe('dosing:');
  });
});

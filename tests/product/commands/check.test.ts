import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith();

describe('leat check', () => {
  it('looks a design over beside its published ranges, without simulating', async () => {
    const { code, out, err } = await leat(['check', 'small.yaml'], folder);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/turnover +tank +24 1\/d +24 to 48 1\/d +inside +fao-589/);
    expect(out).toMatch(/stocking density +tank +3.6 kg\/m3 +up to 20 kg\/m3 +inside/);
    expect(out).toContain('TAN by rule');
    expect(out).toContain('closure: every process keeps nitrogen');
  });

  it('prints the stoichiometric table', async () => {
    const { code, out } = await leat(['check', 'small.yaml', '--table'], folder);
    expect(code).toBe(0);
    expect(out).toMatch(
      /nitrite-oxidation-idle, per g N, at \d+ places\n {2}-1 nitrite; 1 nitrate; -1\.14\d* oxygen/,
    );
    expect(out.match(/closes to/g)?.length).toBeGreaterThan(15);
    expect(out).not.toContain('turnover');
  });

  it('prints what the file was taken to say and from where', async () => {
    const { code, out } = await leat(['check', 'small.yaml', '--resolved', '--set', 'days=7'], folder);
    expect(code).toBe(0);
    expect(out).toMatch(/^days=7 +# --set$/m);
    expect(out).toMatch(/^vessels\.tank\.volume=2 m3 +# small\.yaml:\d+$/m);
    expect(out).toMatch(/# default$/m);
  });

  it('leaves with 2 for a file that cannot be, and with 5 for an option of run', async () => {
    expect((await leat(['check', 'small.yaml', '--set', 'reservoir=nowhere'], folder)).code).toBe(2);
    expect((await leat(['check', 'small.yaml', '--json'], folder)).code).toBe(5);
  });
});

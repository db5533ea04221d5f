import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';
import { full } from '../../support/length.js';

interface SensitivityJson {
  readonly measure: string;
  readonly unit: string;
  readonly outcome: number;
  readonly runs: number;
  readonly failed: number;
  readonly spread?: {
    readonly median: number;
    readonly used: number;
    readonly band90: readonly [number, number];
  };
  readonly findings: readonly {
    readonly row: { readonly id: string; readonly source: string; readonly mark: string };
    readonly local?: { readonly elasticity: number; readonly slope: number };
    readonly morris?: { readonly muStar: number };
    readonly sobol?: {
      readonly first: { readonly value: number; readonly low: number; readonly high: number };
      readonly total: { readonly value: number };
      readonly bandIfKnown: number;
    };
  }[];
}

const documentOf = (text: string): SensitivityJson => JSON.parse(text) as SensitivityJson;
const folder = folderWith({
  'short.yaml': 'include: small.yaml\ndays: 4\n',
  'broken.yaml': 'include: short.yaml\nparameters: { oxygen.saturation.a: 1000 }\n',
});
/** Draws: the short form has so few that its intervals are wide, and still the same number comes first. */
const members = full ? 32 : 8;
const fish = ['sensitivity', 'short.yaml', '--of', 'last fish-mass@tilapia', '--only', 'fish.nile-tilapia.*'];

describe('leat sensitivity', async () => {
  it('is in the help, with its options', async () => {
    expect((await leat(['--help'], folder)).out).toContain('sensitivity [options] <file>');
    const { out } = await leat(['sensitivity', '--help'], folder);
    for (const option of 'of method members seed only days every set tolerance workers json'.split(' '))
      expect(out).toContain(`--${option}`);
  });

  const all = [...fish, '--method', 'all', '--members', String(members), '--json'];
  const call = await leat([...all, '--workers', '2'], folder);

  it('finds by every method what the growth of fish depends on: their maintenance', () => {
    expect([call.code, call.err]).toEqual([0, '']);
    const { measure, unit, findings, spread, failed } = documentOf(call.out);
    expect([measure, unit, failed]).toEqual(['last fish-mass@tilapia', 'g', 0]);
    const [{ row, local, morris, sobol }] = findings;
    expect([row.id, row.mark]).toEqual(['fish.nile-tilapia.maintenance', 'C']);
    expect(local?.elasticity).toBeLessThan(0);
    // Screening with few trajectories may put one other before it.
    const screened = findings.map((finding) => finding.morris?.muStar ?? 0).sort((a, b) => b - a);
    expect(screened.slice(0, 2)).toContain(morris?.muStar);
    expect(sobol?.first.low).toBeLessThan(sobol?.first.value ?? 0);
    expect(spread?.used).toBe(members);
    const [low, high] = spread?.band90 ?? [0, 0];
    expect(sobol?.bandIfKnown).toBeLessThan(high - low);
  });

  it('gives the same bytes with one worker', async () => {
    expect((await leat([...all, '--workers', '1'], folder)).out).toBe(call.out);
  });

  it('has an elasticity that a changed number shows', async () => {
    const [{ row, local }] = documentOf(call.out).findings;
    const end = async (value: string): Promise<number> => {
      const { out } = await leat(
        ['run', 'short.yaml', '--set', `parameters.${row.id}=${value}`, '--json'],
        folder,
      );
      const { series } = JSON.parse(out) as { series: Record<string, { values: number[] }> };
      return series['fish-mass@tilapia'].values[4];
    };
    expect(((await end('0.00341')) - (await end('0.00339'))) / 0.00002 / (local?.slope ?? 0)).toBeCloseTo(
      1,
      1,
    );
  });

  it('prints the few numbers that matter with source, mark and what knowing them would leave', async () => {
    const { code, out, err } = await leat([...fish, '--members', '16'], folder);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^last fish-mass@tilapia: [\d.]+ g with the numbers as they stand$/m);
    expect(out).toMatch(/^\d+ numbers looked at in \d+ runs \(screened, seed 1\)$/m);
    expect(out).toMatch(
      /^fish.nile-tilapia.maintenance +0\.0034 \(0\.0013 \.\. 0\.0062\) 1\/d +[\d.]+ % \([-\d.]+ % \.\. [\d.]+ %\) .* [\d.]+ of [\d.]+ +fish-upkeep C$/m,
    );
    expect(out).toContain('screening (Morris)');
  });

  it('screens first and works out Sobol indices of few', async () => {
    const { findings } = documentOf((await leat([...fish, '--members', '8', '--json'], folder)).out);
    const deep = findings.filter(({ sobol }) => sobol !== undefined);
    expect(deep.length).toBeGreaterThan(0);
    expect(deep.length).toBeLessThan(findings.length);
    expect(findings.slice(0, deep.length)).toEqual(deep);
  });

  it.each([
    [
      ['--of', 'last fish-mass@tilapa'],
      2,
      /^--of: last fish-mass@tilapa: no such series; .* did you mean fish-mass@tilapia\?$/m,
    ],
    [['--of', 'final fish-mass@tilapia'], 2, /no such statistic; got final/],
    [
      ['--only', 'fish.rainbow*'],
      2,
      /^--only: no number with a range that this system uses is like that; got fish.rainbow\*/,
    ],
    [['--method', 'guess'], 5, /screened, local, morris, sobol, all/],
    [['--members', '0'], 5, /Give a whole number from 1/],
  ] as const)('refuses %s', async (args, code, message) => {
    const refused = await leat([...fish, ...args], folder);
    expect([refused.code, refused.out]).toEqual([code, '']);
    expect(refused.err).toMatch(message);
  });

  it('asks for --of', async () => {
    expect((await leat(['sensitivity', 'short.yaml'], folder)).code).toBe(5);
  });

  it('leaves with 3 when no run has an outcome', async () => {
    const { code, err } = await leat(
      [
        'sensitivity',
        'broken.yaml',
        '--of',
        'last tan@tank',
        '--only',
        'solids.*',
        '--method',
        'local',
        '--json',
      ],
      folder,
    );
    expect(code).toBe(3);
    expect(err).toMatch(/no run has an outcome: the run broke off on day/);
  });
});

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sealed } from '@leat/core';
import { folderWith, leat } from '../../support/leat.js';

// An invented fit of an invented system, written by hand: two numbers that go together, and water at the start.
const number = { kind: 'number', deviate: 0.5 };
const fit = {
  schema: 'leat-fit',
  version: 1,
  title: 'Some other system',
  provenance: { scenario: '', log: '', from: '2026-03-01', until: '2026-04-30' },
  numbers: [
    {
      ...{ ...number, name: 'biofilm.capacity', unit: 'g/m2', value: 0.37037, deviation: 0.4 },
      prior: { value: 0.3, low: 0.15, high: 0.6, distribution: 'lognormal' },
    },
    {
      ...{ ...number, name: 'aob.growth', unit: '1/d', value: 0.6, deviation: 0.2 },
      prior: { value: 0.5, low: 0.3, high: 0.9, distribution: 'triangular' },
    },
    {
      ...{ name: 'start.nitrate', kind: 'start', unit: 'g/m3', value: 33, deviate: 0, deviation: 0.1 },
      prior: { value: 33, low: 11, high: 99, distribution: 'lognormal' },
    },
  ],
  covariance: [
    [0.16, -0.064, 0],
    [-0.064, 0.04, 0],
    [0, 0, 0.01],
  ],
};

const folder = folderWith();
writeFileSync(join(folder, 'fit.json'), JSON.stringify(sealed(fit)));
const asked = (...args: string[]) => leat([...args, '--fit', 'fit.json'], folder);
const told = 'fit.json: 3 numbers as fitted to the log of 2026-03-01 to 2026-04-30';
const tan = ['--of', 'highest tan@tank'];

describe('--fit', () => {
  it.each([
    ['run', ['small.yaml', '--days', '2']],
    ['check', ['small.yaml']],
    ['compare', ['small.yaml', 'small.yaml', '--days', '2']],
    ['why', ['small.yaml', '--of', 'tan@tank', '--days', '2', '--from', '0d', '--to', '2d']],
    ['report', ['small.yaml', '--days', '2']],
    ['plot', ['small.yaml', '--days', '2', '--of', 'tan@tank', '--out', 'tan.svg']],
    ['steady', ['small.yaml', '--hold', 'nitrate', '--hold', 'chloride', '--hold', 'alkalinity']],
    [
      'sweep',
      ['small.yaml', '--days', '2', ...tan, '--vary', 'fish.tilapia.number=20:40:2', '--workers', '1'],
    ],
    [
      'size',
      [
        ...['small.yaml', '--days', '2', '--vary', 'fish.tilapia.number', '--from', '1', '--to', '40'],
        ...['--keep', 'highest tan@tank below 50 mg N/L', '--largest'],
      ],
    ],
    ['ensemble', ['small.yaml', '--days', '2', '--members', '2', '--workers', '1']],
    [
      'sensitivity',
      ['small.yaml', '--days', '2', ...tan, '--method', 'local', '--only', 'aob.*', '--workers', '1'],
    ],
    ['show', ['aob.growth', '--in', 'small.yaml']],
  ])('is taken by leat %s, which says so and whose it is', async (word, args) => {
    const { code, err } = await asked(word, ...args);
    expect(err).toContain(told);
    expect(err).toContain('fit.json: fitted for "Some other system", used here for');
    expect(code).toBe(0);
  });

  it('numbers, their source and start values stand in the run; --set wins over them', async () => {
    const run = (await asked('run', 'small.yaml', '--days', '2', '--json')).out;
    const document = JSON.parse(run) as { series: Record<string, { values: number[] }> };
    expect(document.series['nitrate@tank'].values[0]).toBeCloseTo(33, 10);
    expect((await asked('show', 'aob.growth', '--in', 'small.yaml')).out).toContain('0.6 1/d');
    expect((await asked('run', 'small.yaml', '--days', '2', '--sources')).out).toContain(
      'fitted to the log of 2026-03-01 to 2026-04-30',
    );
    const set = await asked('show', 'aob.growth', '--in', 'small.yaml', '--set', 'parameters.aob.growth=0.7');
    expect(set.out).toContain('0.7 1/d');
  });

  it('an ensemble draws them from what the log left of their ranges, together as the fit says', async () => {
    const { code } = await asked(
      ...['ensemble', 'small.yaml', '--days', '1', '--every', '1d', '--members', '2', '--workers', '1'],
      ...['--out', 'kept.json', '--json'],
    );
    expect(code).toBe(0);
    const kept = readFileSync(join(folder, 'kept.json'), 'utf8');
    const rowOf = (id: string): { low: number; high: number; distribution: string } =>
      JSON.parse(new RegExp(`\\{[^{}]*"id":"${id}"[^{}]*\\}`).exec(kept)?.[0] ?? '{}') as never;
    // 5 % and 95 % points of a lognormal in the deviate of its prior: 0.3 x 2^((0.5 -+ 1.645 x 0.4)/1.645).
    expect(rowOf('biofilm.capacity')).toMatchObject({ distribution: 'lognormal' });
    expect(rowOf('biofilm.capacity').low).toBeCloseTo(0.3 * 2 ** (0.5 / 1.6449 - 0.4), 4);
    expect(rowOf('biofilm.capacity').high).toBeCloseTo(0.3 * 2 ** (0.5 / 1.6449 + 0.4), 4);
    // A triangle stays a triangle, within the bounds that it had.
    expect(rowOf('aob.growth').distribution).toBe('triangular');
    expect(rowOf('aob.growth').low).toBeGreaterThan(0.3);
    expect(rowOf('aob.growth').high).toBeLessThan(0.9);
    // Correlation of the deviates -0.064/(0.4 x 0.2) = -0.8; by ranks 6/pi asin(-0.4).
    const rank = /"a":"biofilm.capacity","b":"aob.growth","rank":([-0-9.]+)/.exec(kept)?.[1];
    expect(Number(rank)).toBeCloseTo((6 / Math.PI) * Math.asin(-0.4), 10);
  });

  it('stands before what the file gives under parameters, with its range', async () => {
    const text = readFileSync(join(folder, 'small.yaml'), 'utf8');
    writeFileSync(join(folder, 'given.yaml'), `${text}\nparameters: { aob.growth: 0.35 }\n`);
    const { out } = await asked('show', 'aob.growth', '--in', 'given.yaml');
    expect(out).toContain('0.6 1/d');
    const { err } = await asked('run', 'given.yaml', '--days', '2', '--quiet');
    expect(err).toBe('');
  });

  it('is refused by name where it is of a system that has no such path', async () => {
    const path = { ...fit.numbers[2], name: 'vessels.pond.volume', kind: 'path', unit: 'm3' };
    const other = { ...fit, numbers: [...fit.numbers.slice(0, 2), path] };
    writeFileSync(join(folder, 'other.json'), JSON.stringify(sealed(other)));
    const { code, err } = await leat(['run', 'small.yaml', '--fit', 'other.json'], folder);
    expect(code).toBe(2);
    expect(err).toMatch(/vessels\.pond.*no such entry/);
    const missing = await leat(['run', 'small.yaml', '--fit', 'nowhere.json'], folder);
    expect(missing.code).toBe(2);
    expect(missing.err).toContain('nowhere.json: cannot be read');
  });
});

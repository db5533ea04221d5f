import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sealed } from '@leat/core';
import { folderWith, leat } from '../../support/leat.js';

interface ComparisonDocument {
  readonly runs: readonly { readonly name: string; readonly file: string; readonly title: string }[];
  readonly ends: readonly number[];
  readonly apart: number;
  readonly quantities: readonly {
    readonly name: string;
    readonly runs: readonly ({ readonly end: number; readonly highest: number } | null)[];
    readonly end: number | null;
    readonly highest: number | null;
  }[];
  readonly partings: readonly ({ readonly day: number; readonly quantity: string } | null)[];
  readonly limits: readonly { readonly runs: readonly ({ readonly passed: boolean } | null)[] }[];
  readonly nitrogen: { readonly totals: readonly number[] };
  readonly cautions: readonly string[];
}

const documentOf = (text: string): ComparisonDocument => JSON.parse(text) as ComparisonDocument;

const fewer = `include: small.yaml
title: Fewer crops
plantings: { lettuce: { area: 1 m2 } }
`;
const fed = 'include: small.yaml\ntitle: Fed double\nfish: { tilapia: { ration: 3 %/d } }\n';
const folder = folderWith({ 'fewer.yaml': fewer, 'fed.yaml': fed });
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => Array.from(line).length));

describe('leat compare', () => {
  it('is in the help, with its options', async () => {
    expect((await leat(['--help'], folder)).out).toContain('compare [options] <file> <others...>');
    const { out } = await leat(['compare', '--help'], folder);
    for (const option of ['apart', 'days', 'every', 'set', 'json']) expect(out).toContain(`--${option}`);
  });

  it('prints quantities, parting, limits and budgets side by side, 100 columns, plain, with cautions', async () => {
    const { code, out, err } = await leat(['compare', 'small.yaml', 'fed.yaml'], folder);
    expect([code, err]).toEqual([0, '']);
    for (const part of [
      'A  40 d  small.yaml  Small system (invented)',
      'B first differs from A on day 0 (1 Mar): feed in the whole system',
      'nitrate in tank',
      'limits passed in some and not in all',
      'nitrogen came from',
      'nitrogen went to',
      'water went to',
      'Fish welfare',
    ]) {
      expect(out).toContain(part);
    }
    expect(out).toMatch(/nitrogen went to +\d+ g +100\.0 % +\d+ g +100\.0 %/);
    expect(widest(out)).toBeLessThanOrEqual(100);
    expect(out).not.toContain('\u001b');
  });

  it('says with --json the same as the runs themselves, largest differences first', async () => {
    const args = ['--days', '20', '--json'];
    const found = documentOf(
      (await leat(['compare', 'small.yaml', 'fewer.yaml', 'fed.yaml', ...args], folder)).out,
    );
    expect(found.runs.map(({ name, title }) => [name, title])).toEqual([
      ['A', 'Small system (invented)'],
      ['B', 'Fewer crops'],
      ['C', 'Fed double'],
    ]);
    expect(found.ends).toEqual([20, 20, 20]);
    const run = JSON.parse((await leat(['run', 'fewer.yaml', ...args], folder)).out) as {
      series: Record<string, { values: number[] }>;
      budget: Record<string, { in: number }>;
    };
    const nitrate = found.quantities.find(({ name }) => name === 'nitrate@tank');
    const { values } = run.series['nitrate@tank'];
    expect(nitrate?.runs[1]).toMatchObject({ end: values[20], highest: Math.max(...values) });
    const sizes = found.quantities.map(({ end, highest }) =>
      Math.max(Math.abs(end ?? -1), Math.abs(highest ?? -1)),
    );
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    expect(found.partings).toHaveLength(2);
    for (const { runs } of found.limits) {
      expect(new Set(runs.map((verdict) => verdict?.passed ?? false)).size).toBe(2);
    }
    expect(found.cautions.length).toBeGreaterThan(0);
  });

  it('lays more than three runs in several tables that all fit', async () => {
    const { code, out } = await leat(
      ['compare', 'small.yaml', 'fewer.yaml', 'fed.yaml', 'small.yaml', '--days', '5'],
      folder,
    );
    expect(code).toBe(0);
    expect(widest(out)).toBeLessThanOrEqual(100);
    expect(out).toContain('D never differs from A by more than 1 %');
    expect(out.match(/nitrogen came from/g)).toHaveLength(2);
  });

  it('puts --set over every file, and parts by the share that is asked for', async () => {
    const args = ['compare', 'small.yaml', 'fewer.yaml', '--json', '--days', '10'];
    const found = documentOf((await leat([...args, '--set', 'title=Same', '--apart', '100'], folder)).out);
    expect(found.runs.map(({ title }) => title)).toEqual(['Same', 'Same']);
    expect([found.apart, found.partings]).toEqual([1, [null]]);
  });

  it('takes a document of leat run --json for its run, and says that options do not change it', async () => {
    writeFileSync(join(folder, 'saved.json'), (await leat(['run', 'small.yaml', '--json'], folder)).out);
    const { code, out, err } = await leat(['compare', 'saved.json', 'fewer.yaml', '--json'], folder);
    const live = documentOf((await leat(['compare', 'small.yaml', 'fewer.yaml', '--json'], folder)).out);
    expect([code, err]).toEqual([0, '']);
    // The files are of other names, and so is the hash over all.
    const alike = { runs: [], hash: '' };
    expect({ ...documentOf(out), ...alike }).toEqual({ ...live, ...alike });
    const short = await leat(['compare', 'saved.json', 'fewer.yaml', '--days', '10'], folder);
    expect(short.err).toContain(
      'saved.json: a saved run: --set, --tables, --fit, --extend, --days and --every do not change it',
    );
    expect(short.out).toContain('The runs are not of one length');
  });
});

describe('exit codes of leat compare', () => {
  it('2 for a file that is not there, a bad scenario, and a document that is not whole', async () => {
    expect(await leat(['compare', 'small.yaml', 'none.yaml'], folder)).toMatchObject({
      code: 2,
      out: '',
      err: 'none.yaml: cannot be read: no such file or folder\n',
    });
    const bad = await leat(
      ['compare', 'small.yaml', 'fed.yaml', '--set', 'fish.tilapia.species=nile-tilapa'],
      folder,
    );
    expect([bad.code, bad.out]).toEqual([2, '']);
    expect(bad.err).toContain('did you mean nile-tilapia?');
    writeFileSync(
      join(folder, 'torn.json'),
      '{"schema":"leat-run","version":1,"manifest":{},"series":{},"time":[0,"x"]}',
    );
    const torn = await leat(['compare', 'small.yaml', 'torn.json'], folder);
    expect([torn.code, torn.out]).toEqual([2, '']);
    expect(torn.err).toBe(
      'torn.json: not a whole document of leat run --json: see time[1]: expected number, received string\n',
    );
  });

  it('3, naming the file, when a run breaks off', async () => {
    const broken = folderWith({
      'broken.yaml': 'include: small.yaml\nparameters: { oxygen.saturation.a: 1000 }\n',
    });
    const { code, out, err } = await leat(['compare', 'small.yaml', 'broken.yaml'], broken);
    expect(code).toBe(3);
    expect(out).toContain('B BROKE OFF on day 0');
    expect(err).toContain('broken.yaml: not finished: not-finite on day 0');
  });

  it('4, naming the file, when a balance of a saved run is broken', async () => {
    const { hash, ...saved } = JSON.parse(
      (await leat(['run', 'small.yaml', '--json', '--days', '3'], folder)).out,
    ) as { hash: string; vessels: Record<string, Record<string, { residual: number }>> };
    expect(hash).toBe(sealed(saved).hash);
    saved.vessels['filter']['nitrogen'].residual = 5;
    writeFileSync(join(folder, 'leaky.json'), JSON.stringify(sealed(saved)));
    const { code, err } = await leat(['compare', 'small.yaml', 'leaky.json'], folder);
    expect(code).toBe(4);
    expect(err).toContain('leaky.json: balance broken: nitrogen of filter');
  });

  it.each([
    [['compare']],
    [['compare', 'small.yaml']],
    [['compare', 'small.yaml', 'fewer.yaml', '--apart', '101']],
    [['compare', ...new Array<string>(27).fill('small.yaml')]],
  ])('5 for %j', async (args) => {
    const { code, out, err } = await leat(args, folder);
    expect([code, out]).toEqual([5, '']);
    expect(err).not.toBe('');
  });
});

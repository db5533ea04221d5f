import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, leat, shell } from '../../support/leat.js';

interface Budget {
  readonly in: number;
  readonly out: number;
  readonly stored: number;
  readonly residual: number;
  readonly throughput: number;
}

interface RunDocument {
  readonly outcome: { readonly kind: string; readonly time: number };
  readonly time: readonly number[];
  readonly series: Readonly<
    Record<string, { readonly unit: string; readonly values: readonly (number | null)[] }>
  >;
  readonly budget: Readonly<Record<string, Budget>>;
  readonly vessels: Readonly<Record<string, Readonly<Record<string, Budget>>>>;
  readonly limits: readonly {
    readonly quantity: string;
    readonly passed: boolean;
    readonly source: string;
  }[];
  readonly events: readonly { readonly kind: string; readonly short?: true }[];
  readonly work: { readonly steps: number };
  readonly manifest: { readonly scenario: string; readonly integrator: string; readonly seed: null };
  readonly sources: readonly { readonly citation: string; readonly ids: readonly string[] }[];
}

const documentOf = (text: string): RunDocument => JSON.parse(text) as RunDocument;
const folder = folderWith();

describe('leat run', () => {
  it('prints a summary of one screen on stdout and nothing on stderr', async () => {
    const { code, out, err } = await leat(['run', 'small.yaml'], folder);
    const lines = out.trimEnd().split('\n');
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(lines[0]).toBe('Small system (invented)');
    expect(lines.length).toBeLessThanOrEqual(52);
    expect(Math.max(...lines.map((line) => Array.from(line).length))).toBeLessThanOrEqual(100);
    for (const part of [
      'nitrogen came from',
      'nitrogen went to',
      'water went to',
      'limits passed',
      'Fish welfare',
    ]) {
      expect(out).toContain(part);
    }
    expect(out).not.toContain('\u001b');
  });

  it('closes where the nitrogen went to 100 percent', async () => {
    const { out } = await leat(['run', 'small.yaml'], folder);
    expect(out).toMatch(/nitrogen went to +\d+ g +100\.0 %/);
  });

  it('prints one JSON document', async () => {
    const { code, out, err } = await leat(
      ['run', 'small.yaml', '--json', '--days', '12', '--every', '6h'],
      folder,
    );
    const run = documentOf(out);
    expect([code, err]).toEqual([0, '']);
    expect(run.outcome).toEqual({ kind: 'done', time: 12 });
    expect(run.time).toHaveLength(12 * 4 + 1);
    expect(run.series['nitrate@tank'].unit).toBe('mg N/L');
    expect(run.series['nitrate@tank'].values).toHaveLength(run.time.length);
    for (const quantity of ['nitrogen', 'oxygen-demand', 'charge', 'chloride', 'water']) {
      const { in: came, out: went, stored, residual, throughput } = run.budget[quantity];
      expect(came - went - stored).toBeCloseTo(residual, 9);
      expect(Math.abs(residual)).toBeLessThanOrEqual(1e-9 * throughput);
      expect(Math.abs(run.vessels['filter'][quantity].residual)).toBeLessThanOrEqual(
        1e-9 * run.vessels['filter'][quantity].throughput,
      );
    }
    expect(run.limits.length).toBeGreaterThan(10);
    expect(run.work.steps).toBeGreaterThan(0);
    expect(run.manifest).toMatchObject({ integrator: 'rosenbrock', seed: null });
    expect(run.manifest.scenario).toMatch(/^[0-9a-f]{64}$/);
    expect(run.sources.flatMap(({ ids }) => ids)).toContain('fish.nile-tilapia.body-nitrogen');
    expect(run.sources.flatMap(({ ids }) => ids)).not.toContain('fish.rainbow-trout.body-nitrogen');
  });

  it('gives the same bytes twice', async () => {
    const call = async (): Promise<string> => (await leat(['run', 'small.yaml', '--json'], folder)).out;
    expect(await call()).toBe(await call());
  });

  it('runs the same system by the second integrator', async () => {
    const run = documentOf(
      (
        await leat(
          ['run', 'small.yaml', '--json', '--days', '3', '--integrator', 'odex', '--tolerance', '1e-7'],
          folder,
        )
      ).out,
    );
    expect(run.manifest).toMatchObject({ integrator: 'odex', tolerance: 1e-7 });
    expect(run.outcome.kind).toBe('done');
  });

  it('puts values in place of those of the file, as often as asked', async () => {
    const args = ['--set', 'fish.tilapia.number=30', '--set', 'fish.tilapia.mass=200 g'];
    const run = documentOf((await leat(['run', 'small.yaml', '--json', '--days', '2', ...args], folder)).out);
    expect(run.series['fish-mass@tilapia'].values[0]).toBe(6000);
    expect(run.series['fish-number@tilapia'].values[0]).toBe(30);
  });

  it('writes CSV and the end state whole, and nothing beside them', async () => {
    const place = folderWith();
    const { code, out } = await leat(
      ['run', 'small.yaml', '--quiet', '--csv', 'out.csv', '--save', 'end.json'],
      place,
    );
    const lines = readFileSync(join(place, 'out.csv'), 'utf8').trimEnd().split('\n');
    const state = JSON.parse(readFileSync(join(place, 'end.json'), 'utf8')) as {
      schema: string;
      version: number;
      time: number;
      states: readonly { component: string; place: string; amount: number }[];
    };
    expect([code, out]).toEqual([0, '']);
    expect(lines).toHaveLength(1 + 41);
    expect(lines[0]).toMatch(/^time_d,date,tan_tank_mg_N_per_L,/);
    expect(new Set(lines.map((line) => line.split(',').length)).size).toBe(1);
    expect(state).toMatchObject({ schema: 'leat-state', version: 3, time: 40 });
    expect(
      state.states.find(({ component, place: at }) => component === 'aob' && at === 'filter')?.amount,
    ).toBeGreaterThan(0);
    expect(readdirSync(place).sort()).toEqual(['end.json', 'out.csv', 'small.yaml']);
  });

  it('prints them as BibTeX in place of the summary', async () => {
    const { code, out } = await leat(['run', 'small.yaml', '--days', '3', '--sources', 'bibtex'], folder);
    expect([code, out.split('{')[0]]).toEqual([0, '@misc']);
    expect(out.match(/^@misc\{/gm)?.length).toBeGreaterThan(10);
    const wrong = await leat(['run', 'small.yaml', '--sources', 'bib'], folder);
    expect([wrong.code, wrong.out]).toEqual([5, '']);
    expect(wrong.err).toContain('Allowed choices are text, bibtex');
  });

  it('prints the sources of what was used when asked', async () => {
    const { out } = await leat(['run', 'small.yaml', '--quiet', '--sources'], folder);
    expect(out).toContain('Sources of the numbers that were used');
    expect(out).toContain('Emerson');
  });

  it('reads what a file includes from the folder of that file', async () => {
    const place = folderWith({ 'base.yaml': 'include: small.yaml\ntitle: Another title\n' });
    const { code, out } = await leat(['run', join(place, 'base.yaml'), '--days', '1'], folderWith());
    expect(code).toBe(0);
    expect(out.split('\n')[0]).toBe('Another title');
  });

  it('ends without a word when the reader closes the pipe', () => {
    const line = '$LEAT run small.yaml --json --every 15min | head -c 20; echo; echo "${PIPESTATUS[0]}"';
    const { out, err } = shell(line, folder);
    expect(out.trimEnd().split('\n')).toEqual(['{"schema":"leat-run"', '0']);
    expect(err).toBe('');
  });
});

describe('an action that asks for more than there is', () => {
  it('is named in the summary and marked in the document', async () => {
    const system = readFileSync(join(folder, 'small.yaml'), 'utf8');
    const harvest = 'actions:\n  - { at: 3 d, harvest-fish: { cohort: tilapia, number: 3000 } }\n';
    const there = folderWith({ 'greedy.yaml': `${system}${harvest}` });
    const { out } = await leat(['run', 'greedy.yaml', '--days', '4'], there);
    const asked =
      /! d 3 \(4 Mar\), harvest-fish of tilapia: [\d.]+ fish, [\d.]+ g; 3000 fish were asked for\n/;
    expect(out).toMatch(asked);
    const { events } = documentOf((await leat(['run', 'greedy.yaml', '--days', '4', '--json'], there)).out);
    expect(events.filter(({ short }) => short).map(({ kind }) => kind)).toEqual(['harvest-fish']);
    expect((await leat(['run', 'small.yaml', '--days', '4'], there)).out).not.toMatch(/^! d/m);
  });
});

describe('exit codes of leat run', () => {
  it('2 and every fault on a line, when the file says what cannot be', async () => {
    const { code, out, err } = await leat(
      ['run', 'small.yaml', '--set', 'fish.tilapia.species=nile-tilapa', '--set', 'vessels.tank.volume=2 m2'],
      folder,
    );
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('did you mean nile-tilapia?');
    expect(err).toContain('vessels.tank.volume: wrong dimension');
  });

  it('2 when the file cannot be read, or a result not be written', async () => {
    expect(await leat(['run', 'none.yaml'], folder)).toEqual({
      code: 2,
      out: '',
      err: 'none.yaml: cannot be read: no such file or folder\n',
    });
    const { code, err } = await leat(
      ['run', 'small.yaml', '--quiet', '--days', '1', '--csv', 'no/where.csv'],
      folder,
    );
    expect(code).toBe(2);
    expect(err).toContain('no/where.csv: cannot be written: no such file or folder');
    expect(existsSync(join(folder, 'no'))).toBe(false);
  });

  it('3 and what there is, when the run breaks off', async () => {
    const args = ['run', 'small.yaml', '--set', 'parameters.oxygen.saturation.a=1000'];
    const { code, out, err } = await leat(args, folder);
    const run = documentOf((await leat([...args, '--json'], folder)).out);
    expect(code).toBe(3);
    expect(out).toContain('BROKEN OFF on day 0 (1 Mar): not-finite');
    expect(err).toContain('not finished: not-finite on day 0 at oxygen@');
    expect(run.outcome.kind).toBe('not-finite');
    expect(run.time[0]).toBe(0);
  });

  it.each([
    [[]],
    [['run']],
    [['swim']],
    [['run', 'small.yaml', '--dayz', '3']],
    [['run', 'small.yaml', '--days', '-3']],
    [['run', 'small.yaml', '--days', 'ten']],
    [['run', 'small.yaml', '--integrator', 'euler']],
    [['run', 'small.yaml', '--tolerance', '0']],
    [['run', 'small.yaml', '--set', 'days']],
    [['run', 'small.yaml', 'another.yaml']],
  ])('5 for %j', async (args) => {
    const { code, out, err } = await leat(args, folder);
    expect([code, out]).toEqual([5, '']);
    expect(err).not.toBe('');
  });
});

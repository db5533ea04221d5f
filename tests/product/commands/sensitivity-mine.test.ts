import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

interface OwnDocument {
  readonly outcome: number;
  readonly over: string;
  readonly effects: readonly {
    readonly path: string;
    readonly error: number;
    readonly stated: boolean;
    readonly low: number;
    readonly high: number;
    readonly moves: number;
  }[];
}

const folder = folderWith({});
const mine = (...args: string[]) =>
  leat(['sensitivity', 'small.yaml', '--over', 'mine', '--days', '5', ...args], folder);

describe('leat sensitivity --over mine', () => {
  it('moves the numbers of the file by usual errors, the strongest first, and says what to measure with what', async () => {
    const { code, out } = await mine('--of', 'last nitrate@sump');
    expect(code).toBe(0);
    expect(out).toMatch(
      /^last nitrate@sump is [\d.]+ mg N\/L, give or take [\d.]+ by what you may have measured wrong/,
    );
    expect(out).toMatch(/^measure first: \S+: /m);
    expect(out).toContain('the estimate of the authors');
    const document = JSON.parse((await mine('--of', 'last nitrate@sump', '--json')).out) as OwnDocument;
    expect(document.over).toBe('mine');
    const paths = document.effects.map(({ path }) => path);
    for (const path of ['fish.tilapia.ration', 'start.water.nitrate']) expect(paths).toContain(path);
    const moves = document.effects.map((effect) => effect.moves);
    expect(moves).toEqual([...moves].sort((a, b) => b - a));
    const ration = document.effects.find(({ path }) => path === 'fish.tilapia.ration');
    expect(ration?.high ?? 0).toBeGreaterThan(ration?.low ?? Infinity);
  });

  it('takes errors as stated', async () => {
    const args = ['--of', 'last nitrate@sump', '--json'];
    const usual = JSON.parse((await mine(...args)).out) as OwnDocument;
    const stated = JSON.parse((await mine(...args, '--error', 'fish.*.ration=40 %')).out) as OwnDocument;
    const of = ({ effects }: OwnDocument) => effects.find(({ path }) => path === 'fish.tilapia.ration');
    expect(of(stated)).toMatchObject({ error: 0.4, stated: true });
    expect(of(usual)?.stated).toBe(false);
    expect(of(stated)?.moves ?? 0).toBeGreaterThan(2 * (of(usual)?.moves ?? Infinity));
  });

  it('says a constant outcome in a sentence, here and over the tables', async () => {
    const { out } = await mine('--of', 'lowest temperature@tank');
    expect(out.replaceAll('\n ', '')).toMatch(/ is [\d.]+ degC whatever your own numbers are/);
    expect(out).not.toContain('measure first');
    const tables = await leat(
      ['sensitivity', 'small.yaml', '--days', '2', '--method', 'local', '--of', 'lowest temperature@tank'],
      folder,
    );
    expect(tables.out).toMatch(
      /it is [\d.]+ degC whatever the numbers are: none of the \d+ that were varied moves it/,
    );
    expect(tables.out).not.toMatch(/ 0 +0 /);
  });

  it('exits with 2 for an error that is none', async () => {
    const { code, err } = await mine('--of', 'last nitrate@sump', '--error', 'ration');
    expect([code, err.includes('--error: not an error of a number')]).toEqual([2, true]);
  });
});

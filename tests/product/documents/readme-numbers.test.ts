import { describe, expect, it } from 'vitest';
import { join } from 'node:path';
import { folderWith, leat } from '../../support/leat.js';
import { root } from '../packages/packed.js';
import { at, callsOf, words as cut } from './documents.js';

/** Text with its lines joined: a number may stand on another line than what it is of. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const readme = at('README.md');
const words = flat(readme);
const folder = folderWith();

/** What the groups of a pattern hold; throws where the text does not say so, so that no check passes by silence. */
function found(text: string, pattern: RegExp): readonly string[] {
  const match = pattern.exec(text);
  if (match === null) throw new Error(`nothing like ${pattern.source}`);
  return match.slice(1);
}

const calls = callsOf(readme);

interface Sized {
  readonly value: number;
  readonly drawn: { readonly chosen: number; readonly spread: Readonly<Record<string, number>> };
}

describe('the README', () => {
  it('counts hits and misses as the table of published values does', () => {
    const table = at('tests/published/VALIDATION.md');
    const shown = found(
      words,
      /(\d+) published values that nothing in Leat was chosen for \((\d+) hit, (\d+) miss\), (\d+) that a number of the tables was chosen for .*?, and (\d+) computed by other code/,
    );
    const [chosen] = found(table, /that a number of the tables was chosen for, .*?: (\d+):/);
    const [computed] = found(table, /computed by other code from a published formula, .*?: (\d+):/);
    const own = found(table, /that nothing in Leat was chosen for: (\d+): (\d+) hit, (\d+) miss/);
    expect(shown).toEqual([...own, chosen, computed]);
    const systems = found(
      words,
      /Of (\d+) quantities (\d+) lie in the 90 % band of Leat's own ranges, (\d+) do not/,
    );
    expect(systems).toEqual(found(table, /(\d+) quantities of 6 systems: (\d+) hit, (\d+) missed/));
  });

  it('tells the size that its first search gives, and what draws make of it', async () => {
    const call = calls.find((each) => each.startsWith('size ')) ?? '';
    const paths = cut(call).map((arg) => (arg.startsWith('packages/') ? join(root, arg) : arg));
    const [answer, draws, median, chosen, survive, of] = found(
      words,
      /the answer was (\d+) L, the median of (\d+) draws (\d+) L, and (\d+) L survived (\d+) of the (\d+)/,
    );
    const more = ['--members', draws, '--chosen', `${chosen} L`, '--json'];
    const { code, out } = await leat([...paths, ...more], folder);
    expect(code).toBe(0);
    const { value, drawn } = JSON.parse(out) as Sized;
    expect([value, drawn.spread['median']].map(Math.round)).toEqual([Number(answer), Number(median)]);
    expect([drawn.spread['survive'], drawn.spread['members']]).toEqual([Number(survive), Number(of)]);
  }, 600_000);

  it('tells how often the model is the best of the backtest', async () => {
    const [best] = found(words, /the model is best in (\d+ of \d+) cells/);
    const names = 'backyard.yaml --log backyard.csv --map backyard.map'.split(' ');
    expect((await leat(['new', 'backyard'], folder)).code).toBe(0);
    const { code, out } = await leat(['backtest', ...names], folder);
    expect(code).toBe(0);
    expect(found(out, /the model is best in (\d+ of \d+)/)).toEqual([best]);
  }, 600_000);
});

import { describe, expect, it } from 'vitest';
import { algae, algaeCaution, leakingAlgae } from '../../support/algae.js';
import { folderWith, leat } from '../../support/leat.js';

const folder = folderWith({
  'algae.mjs': algae,
  'half.mjs': algae
    .replace("unit: 'g N', place: 'water'", "place: 'water'")
    .replace("title: 'taken up by algae', ", ''),
  'leak.mjs': leakingAlgae,
  'named.mjs': 'export const other = 1;\n',
  'broken.mjs': 'export default {\n',
});
interface Document {
  readonly series: Readonly<Record<string, { readonly values: readonly number[] }>>;
}

describe('--extend', () => {
  it('runs a system with a process of its user, and says that it runs code', async () => {
    const call = ['run', 'small.yaml', '--days', '10', '--json'];
    const { code, out, err } = await leat([...call, '--extend', 'algae.mjs'], folder);
    expect([code, err.includes(`algae.mjs: ${algaeCaution}`)]).toEqual([0, true]);
    const own = (JSON.parse(out) as Document).series['algae@tank'].values;
    expect(own.at(-1)).toBeGreaterThan(1.05);
    const plain = JSON.parse((await leat(call, folder)).out) as Document;
    expect(Object.keys(plain.series)).not.toContain('algae@tank');
  });

  it('goes through the workers of an ensemble and of a sensitivity', async () => {
    const common = ['small.yaml', '--days', '5', '--json', '--workers', '2', '--extend', 'algae.mjs'];
    const ensemble = await leat(
      ['ensemble', ...common, '--members', '3', '--of', 'highest algae@tank'],
      folder,
    );
    expect([ensemble.code, ensemble.err.includes(algaeCaution)]).toEqual([0, true]);
    const { drawn } = JSON.parse(ensemble.out) as { drawn: readonly { readonly id: string }[] };
    expect(drawn.map(({ id }) => id)).toContain('algae.growth');
    const local = await leat(
      ['sensitivity', ...common, '--of', 'highest algae@tank', '--method', 'local', '--only', 'algae.*'],
      folder,
    );
    expect([local.code, local.err.includes(algaeCaution)]).toEqual([0, true]);
    expect(local.out).toContain('algae.growth');
  });

  it('refuses what is no such module, by the name of the file', async () => {
    const said = async (file: string): Promise<string> => {
      const { code, out, err } = await leat(['run', 'small.yaml', '--extend', file], folder);
      expect([code, out]).toEqual([2, '']);
      return err.trim();
    };
    expect(await said('named.mjs')).toBe(
      'named.mjs: no addition; expected an object of components, processes, numbers',
    );
    expect(await said('half.mjs')).toBe('half.mjs: processes[0].title: missing; expected a string');
    expect(await said('broken.mjs')).toMatch(/^broken\.mjs: could not be run: /);
    expect(await said('absent.mjs')).toMatch(/^absent\.mjs: could not be run: /);
    expect(await said('leak.mjs')).toMatch(/leak\.mjs: the row algae-growth makes .* of nitrogen per g N;/);
  });

  it('is no option of commands that would pass it over', async () => {
    for (const word of ['show', 'log', 'merge', 'new']) {
      const { code, err } = await leat([word, 'small.yaml', '--extend', 'algae.mjs'], folder);
      expect([word, code, err]).toEqual([word, 5, expect.stringContaining("unknown option '--extend'")]);
    }
  });
});

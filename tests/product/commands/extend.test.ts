import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';

const algae = `export default {
  components: [{ id: 'algae', unit: 'g N', place: ['tank'], start: 1, content: () => ({ nitrogen: 1 }) }],
  numbers: [{ id: 'algae.growth', value: 0.1, low: 0.05, high: 0.2, unit: 'm3/(g d)', source: 'invented', mark: 'P' }],
  processes: [{
    id: 'algae-growth', title: 'taken up by algae', place: 'water', unit: 'g N', basis: 'whole',
    reads: ['tan', 'algae'],
    stoichiometry: () => [
      { component: 'tan', coefficient: -1 },
      { component: 'algae', coefficient: 1 },
      { component: 'alkalinity', coefficient: { closes: 'charge' } },
    ],
    coefficients: (values) => [values.value('algae.growth')],
    rate: (v, at, k) => k[0] * v[at[0]] * v[at[1]],
    partials: (v, at, k, d) => { d[0] = k[0] * v[at[1]]; d[1] = k[0] * v[at[0]]; },
  }],
};
`;
const folder = folderWith({
  'algae.mjs': algae,
  'half.mjs': algae
    .replace("unit: 'g N', place: 'water'", "place: 'water'")
    .replace("title: 'taken up by algae', ", ''),
  'leak.mjs': algae.replace(
    "{ component: 'algae', coefficient: 1 }",
    "{ component: 'algae', coefficient: 2 }",
  ),
  'named.mjs': 'export const other = 1;\n',
  'broken.mjs': 'export default {\n',
});
const caution =
  'its code is run, with all that you may do on this machine: 1 processes, 1 components, 1 numbers of your own';

interface Document {
  readonly series: Readonly<Record<string, { readonly values: readonly number[] }>>;
}

describe('--extend', () => {
  it('runs a system with a process of its user, and says that it runs code', async () => {
    const call = ['run', 'small.yaml', '--days', '10', '--json'];
    const { code, out, err } = await leat([...call, '--extend', 'algae.mjs'], folder);
    expect([code, err.includes(`algae.mjs: ${caution}`)]).toEqual([0, true]);
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
    expect([ensemble.code, ensemble.err.includes(caution)]).toEqual([0, true]);
    const { drawn } = JSON.parse(ensemble.out) as { drawn: readonly { readonly id: string }[] };
    expect(drawn.map(({ id }) => id)).toContain('algae.growth');
    const local = await leat(
      ['sensitivity', ...common, '--of', 'highest algae@tank', '--method', 'local', '--only', 'algae.*'],
      folder,
    );
    expect([local.code, local.err.includes(caution)]).toEqual([0, true]);
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
    const { code, err } = await leat(['check', 'small.yaml', '--extend', 'algae.mjs'], folder);
    expect([code, err]).toEqual([5, expect.stringContaining("unknown option '--extend'")]);
  });
});

import {
  basisOf,
  ensembleOf,
  extendedBy,
  extension,
  InputError,
  openRuns,
  openScenarioText,
  seriesOf,
  type Additions,
} from '@leat/core';
import { describe, expect, it } from 'vitest';
import { smallSystem } from '../../../../support/small-text.js';

/** Something that grows on ammonium in the tank, at a rate that is known to a factor of four. */
const added: Additions = {
  components: [{ id: 'algae', unit: 'g N', place: ['tank'], start: 1, content: () => ({ nitrogen: 1 }) }],
  numbers: [
    {
      id: 'algae.growth',
      ...{ value: 0.1, low: 0.05, high: 0.2, unit: 'm3/(g d)', source: 'invented', mark: 'P' },
    },
  ],
  processes: [
    {
      ...{ id: 'algae-growth', title: 'taken up by algae', place: 'water', unit: 'g N', basis: 'whole' },
      reads: ['tan', 'algae'],
      stoichiometry: () => [
        { component: 'tan', coefficient: -1 },
        { component: 'algae', coefficient: 1 },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
      ],
      coefficients: (values) => [values.value('algae.growth')],
      rate: (v, at, k) => k[0] * v[at[0]] * v[at[1]],
      partials: (v, at, k, d) => {
        d[0] = k[0] * v[at[1]];
        d[1] = k[0] * v[at[0]];
      },
    },
  ],
};
const opened = openScenarioText(smallSystem, { file: 'small.yaml', days: 10 });
const extended = extendedBy(opened, extension(added));
const none = { measures: [], conditions: [] };

describe('an ensemble of a system with a process of its own', () => {
  it('draws its numbers as ours are drawn', () => {
    const { rows } = basisOf(extended, none);
    expect(rows.find(({ id }) => id === 'algae.growth')).toMatchObject({
      low: 0.05,
      high: 0.2,
      table: 'own',
    });
    expect(basisOf(opened, none).rows.some(({ table }) => table === 'own')).toBe(false);
  });

  it('builds every member with it, at the numbers of the member', () => {
    const { rows } = basisOf(extended, none);
    const place = rows.findIndex(({ id }) => id === 'algae.growth');
    const runAt = openRuns(extended, rows);
    const [slow, fast] = [0.01, 0.99].map((u) => {
      const run = runAt(rows.map((_, i) => (i === place ? u : 0.5)));
      expect(run.model.parameters.value('algae.growth')).toBeCloseTo(0.05 + 0.15 * u, 12);
      return seriesOf(run, 'algae@tank').at(10);
    });
    expect(slow).toBeGreaterThan(1);
    expect(fast - 1).toBeGreaterThan(1.5 * (slow - 1));
  });

  it('has bands of its series', () => {
    const sampling = { method: 'latin-hypercube', members: 8, seed: 1 } as const;
    const { series, failed } = ensembleOf(extended, sampling);
    expect(failed).toEqual([]);
    const algae = series.find(({ name }) => name === 'algae@tank');
    const [low, high] = algae?.band90 ?? [];
    expect(high?.at(-1)).toBeGreaterThan(low?.at(-1) ?? Infinity);
  });

  it('is of another hash than the same system without, or with another number', () => {
    const numbers = (added.numbers ?? []).map((number) => ({ ...number, high: 0.3 }));
    const other = extendedBy(opened, extension({ ...added, numbers }));
    const hashes = [opened, extended, other].map((open) => basisOf(open, none).hash);
    expect(new Set(hashes).size).toBe(3);
  });
});

describe('an extension of another form', () => {
  const faultsOf = (given: unknown): readonly string[] => {
    try {
      extension(given as Additions);
    } catch (error) {
      if (error instanceof InputError) return error.message.split('\n');
      throw error;
    }
    return [];
  };

  it('is refused with every fault, each at its path', () => {
    expect(faultsOf(undefined)).toEqual([
      'no addition; expected an object of components, processes, numbers',
    ]);
    expect(
      faultsOf({ components: {}, processes: [7], numbers: [{ id: 'a.b', value: '1', unit: '1' }] }),
    ).toEqual([
      'components: not a list; got object',
      'processes[0]: not an object; got number',
      'numbers[0].value: of another form; got string; expected a number',
      'numbers[0].source: missing; expected a string',
      'numbers[0].mark: missing; expected a string',
    ]);
    const [process] = added.processes ?? [];
    expect(faultsOf({ processes: [{ ...process, rate: 1, reads: 'tan' }] })).toEqual([
      'processes[0].reads: of another form; got string; expected a list',
      'processes[0].rate: of another form; got number; expected a function',
    ]);
  });
});

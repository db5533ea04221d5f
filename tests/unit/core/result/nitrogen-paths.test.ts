import { budgetOf, fatesOf, nitrogenPaths, type NitrogenPaths, type Run } from '@leat/core';
import { describe, expect, it } from 'vitest';
import { doneRun } from '../../../support/run-of.js';
import { shippedScenario } from '../../../support/shipped-scenario.js';

/** All that places of one kind and name gave and received, g. */
function through({ places, links }: NitrogenPaths, kind: string, name: string): { in: number; out: number } {
  const is = (index: number): boolean => places[index].kind === kind && places[index].name === name;
  const total = (end: 'from' | 'to'): number =>
    links.filter((link) => is(link[end])).reduce((sum, { amount }) => sum + amount, 0);
  return { in: total('to'), out: total('from') };
}

const shares = (run: Run) => fatesOf(budgetOf(run, 'nitrogen', 'system'));

describe.each(['glasshouse', 'double-stock', 'start-up', 'dry-spell'])('nitrogenPaths of %s', (name) => {
  const run = doneRun(shippedScenario(name, 60));
  const paths = nitrogenPaths(run);
  const fates = shares(run);

  it('gives every fate and every account the grams that fatesOf gives it', () => {
    const water = ['drawn from water', 'kept in water'];
    for (const { name: fate, amount } of fates.to.filter((share) => !water.includes(share.name)))
      expect(through(paths, 'fate', fate).in, fate).toBeCloseTo(amount, 6);
    for (const { name: source, amount } of fates.from.filter((share) => !water.includes(share.name)))
      expect(through(paths, 'source', source).out, source).toBeCloseTo(amount, 6);
  });

  it('shows what one form of nitrogen in the water lost beside what another gained, not their difference', () => {
    const net = (list: typeof fates.to, part: string): number =>
      list.find((share) => share.name === part)?.amount ?? 0;
    const kept =
      through(paths, 'fate', 'kept in water').in - through(paths, 'source', 'drawn from water').out;
    expect(kept).toBeCloseTo(net(fates.to, 'kept in water') - net(fates.from, 'drawn from water'), 6);
  });

  it('lets every form give what it receives', () => {
    const pools = paths.places.filter(({ kind }) => kind === 'pool');
    expect(pools.length).toBeGreaterThan(4);
    for (const { name: pool } of pools) {
      const { in: came, out: went } = through(paths, 'pool', pool);
      expect(came, pool).toBeCloseTo(went, 6);
    }
  });

  it('holds no circle and only amounts above 0', () => {
    const left = new Set(paths.places.keys());
    let free: number[];
    do {
      free = [...left].filter((place) => !paths.links.some(({ from, to }) => to === place && left.has(from)));
      for (const place of free) left.delete(place);
    } while (free.length > 0);
    expect([...left]).toEqual([]);
    expect(paths.links.every(({ amount }) => amount > 0)).toBe(true);
    expect(paths.circled).toBeGreaterThanOrEqual(0);
  });
});

describe('nitrogenPaths', () => {
  it('makes nitrogen gas of nitrate and nothing else', () => {
    const { places, links } = nitrogenPaths(doneRun(shippedScenario('glasshouse', 30)));
    const gas = places.findIndex(({ name }) => name === 'nitrogen gas');
    const givers = links.filter(({ to }) => to === gas).map(({ from }) => places[from].name);
    expect(givers).toEqual(['nitrate']);
  });
});

import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import type { Process } from '../../../../packages/core/src/processes/process.js';
import type { Run } from '../../../../packages/core/src/run/run.js';
import { scenarioOf, startOf, stillWater, vessel } from '../../../support/scenario-builder.js';

const list = '../../../../packages/core/src/processes/index.js';

/** What someone who adds a process writes: one object. Nitrate that leaves as gas from large floors, per g N. */
const added: Process = {
  id: 'gas-from-large-floors',
  title: 'nitrogen gas from large floors',
  place: 'floor',
  where: ({ floor }) => floor > 1,
  unit: 'g N',
  basis: 'whole',
  reads: ['nitrate'],
  stoichiometry: () => [
    { component: 'nitrate', coefficient: -1 },
    { component: 'dinitrogen', coefficient: { closes: 'nitrogen' }, outside: 'air' },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
  ],
  coefficients: (_values, { floor }) => [0.01 * floor],
  rate: (v, at, k) => k[0] * v[at[0]],
  partials: (_v, _at, k, d) => {
    d[0] = k[0];
  },
};

// The files of a worker share what they import: the library is loaded anew with the longer list, and once more after it.
beforeAll(() => {
  vi.resetModules();
  vi.doMock(list, async (original) => {
    const { processes } = await original<{ processes: readonly Process[] }>();
    return { processes: [...processes, added] };
  });
});
afterAll(() => {
  vi.doUnmock(list);
  vi.resetModules();
});

it('is one object in the list: it runs where it says, closes, and stands in the table', async () => {
  const { budgetOf } = await import('../../../../packages/core/src/result/budget.js');
  const { processTable } = await import('../../../../packages/core/src/result/process-table.js');
  const { processes } = await import('../../../../packages/core/src/processes/index.js');
  const { concentration, doneRun, lastOf } = await import('../../../support/run-of.js');
  expect(processes).toContain(added);
  const small = vessel('small', 1, { floor: 0.5 });
  const large = vessel('large', 2, { floor: 4 });
  const alone = (each: typeof small): Run => {
    const start = [startOf(each, { water: stillWater(2, 7.5, { nitrate: 50 }) })];
    return doneRun(scenarioOf([each], { start, days: 5 }), { tolerance: 1e-8 });
  };
  const without = alone(small);
  expect(without.model.rows.filter(({ process }) => process === added.id)).toEqual([]);
  expect(concentration(without, lastOf(without), 'nitrate', 'small')).toBeCloseTo(50, 9);
  const run = alone(large);
  expect(run.model.rows.filter(({ process }) => process === added.id).map(({ id }) => id)).toEqual([
    'gas-from-large-floors@large',
  ]);
  // dC/dt = -k F C / V: exp(-0.01 x 4 x 5 / 2) of it is left.
  expect(concentration(run, lastOf(run), 'nitrate', 'large')).toBeCloseTo(50 * Math.exp(-0.1), 5);
  const budget = budgetOf(run, 'nitrogen', 'system');
  expect(Math.abs(budget.residual / budget.throughput)).toBeLessThan(1e-12);
  expect(budget.lines.some(({ by, component }) => by === added.id && component === 'dinitrogen')).toBe(true);
  expect(processTable(run.model).find(({ process }) => process === added.id)?.rows).toHaveLength(1);
});

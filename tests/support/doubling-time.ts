import type { StartWater } from '../../packages/core/src/scenario/scenario.js';
import { amountOf, doneRun } from './run-of.js';
import { constant, scenarioOf, startOf, stillWater, vessel } from './scenario-builder.js';

/** Doubling time of few oxidisers on a surface in water that does not change, 25 degC and pH 7.8, h. */
export function doublingTime(group: 'aob' | 'nob'): number {
  const cell = vessel('cell', 1e5, { surface: 1, temperature: constant(25) });
  const food: Partial<StartWater> = group === 'aob' ? { ammonia: 20 } : { nitrite: 20 };
  const start = [startOf(cell, { water: stillWater(10, 7.8, food), [group]: 1e-6 })];
  const run = doneRun(scenarioOf([cell], { start, days: 2, every: 1 }), { tolerance: 1e-8 });
  const [from, to] = [1, 2].map((day) => amountOf(run, run.samples[day], group, 'cell'));
  return (24 * Math.LN2) / Math.log(to / from);
}

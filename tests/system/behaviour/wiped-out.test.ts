import { describe, expect, it } from 'vitest';
import { budgetsOf, relativeResidual, worstResidual } from '../../../packages/core/src/result/budget.js';
import { deathsOf } from '../../../packages/core/src/result/deaths.js';
import { excretion, growing } from '../../../packages/core/src/processes/fish.js';
import { readScenario } from '../../../packages/core/src/scenario/read-scenario.js';
import { edited } from '../../product/faults/small-system.js';
import { amountOf, doneRun, lastOf } from '../../support/run-of.js';

describe('a cohort that was wiped out', () => {
  const run = doneRun(
    readScenario(
      edited(
        ['days: 30', 'days: 400'],
        ['  - { at: 10 d, for: 6 h, pump-off: main }', '  - { at: 10 d, for: 3 d, power-cut: all }'],
      ),
      { file: 'small.yaml' },
    ),
  );
  const end = lastOf(run);

  it('is gone to the last part of a fish, booked as dead, and the run goes on to its end', () => {
    for (const component of ['fish-number', 'fish-mass', 'fish-fat'])
      expect(amountOf(run, end, component, 'tilapia'), component).toBe(0);
    expect(run.events.some(({ kind }) => kind === 'fish-death')).toBe(true);
    expect(deathsOf(run)[0].wipedOut).toBeLessThan(14);
  });

  it('closes every balance', () => {
    expect(relativeResidual(worstResidual(budgetsOf(run)).budget)).toBeLessThan(1e-9);
  });
});

describe('fish that come to water which kills them within the day', () => {
  const stock = (time: string) => `  - { at: ${time}, stock: { cohort: tilapia, number: 3, mass: 200 g } }`;
  const run = doneRun(
    readScenario(
      edited(
        ['days: 30', 'days: 120'],
        ['water-temperature: 24 degC', 'water-temperature: 2 degC'],
        ['  - { at: 10 d, for: 6 h, pump-off: main }', [stock('20 d'), stock('40.2 d')].join('\n')],
      ),
      { file: 'small.yaml' },
    ),
  );

  it('are told of and gone each time, where they came at the start of a day or within it', () => {
    const told = run.events.filter(({ kind }) => kind === 'fish-death').map(({ time }) => time);
    expect(told).toHaveLength(3);
    expect(told.slice(1)).toEqual([21, 41]);
    for (const day of [22, 42, 120])
      for (const component of ['fish-number', 'fish-mass', 'fish-fat'])
        expect(amountOf(run, run.samples[day], component, 'tilapia'), `${component} ${day}`).toBe(0);
  });
});

describe('less of a fish than an atom', () => {
  it.each([growing, excretion].map((process) => [process.id, process] as const))(
    '%s has finite rates and partials',
    (_id, { rate, partials, reads }) => {
      const at = reads.map((_, i) => i);
      const d = new Float64Array(reads.length);
      const k = Float64Array.from([0, 0.02, 0.03, 0.3, 0.5, 1, 5, 30, 1, 0.4, 0.8, 0.3, 8, 0.2, 0.05, 0.03]);
      for (const left of [1e-150, 1e-199, 1e-250, 1e-308, 5e-324]) {
        const v = Float64Array.from([6, 0.01, 0.1, 40, 0.1, left, left, left]);
        expect(Number.isFinite(rate(v, at, k))).toBe(true);
        partials(v, at, k, d);
        expect([...d].every(Number.isFinite), `${left}: ${d.join()}`).toBe(true);
      }
    },
  );
});

import { describe, expect, it } from 'vitest';
import { conserved } from '../../../../packages/core/src/processes/components.js';
import {
  budgetOf,
  budgetsOf,
  relativeResidual,
  worstResidual,
  type Budget,
} from '../../../../packages/core/src/result/budget.js';
import type { Model, Row } from '../../../../packages/core/src/model/model.js';
import type { Run } from '../../../../packages/core/src/run/run.js';
import { extents, smallRun, sumpTan } from './small-run.js';

const sump = 1;

describe('budgetOf', () => {
  it('counts the nitrogen of the whole from rows and postings', () => {
    const budget = budgetOf(smallRun(), 'nitrogen', 'system');
    // In: 40 g of feed and 3 g in the water poured in. Out: 2 g to air and 1.5 g harvested.
    expect(budget.in).toBeCloseTo(43, 12);
    expect(budget.out).toBeCloseTo(3.5, 12);
    expect(budget.stored).toBeCloseTo(39.5, 10);
    expect(Math.abs(budget.residual)).toBeLessThan(1e-12);
    expect(budget.lines.map(({ name, amount }) => [name, amount])).toEqual([
      ['feed: feed-nitrogen', 40],
      ['air: ammonia-gas', -2],
      ['harvested crop: crop-nitrogen', -1.5],
      ['source water: nitrate', 3],
    ]);
  });

  it('counts what water carries as coming and going between vessels', () => {
    const budget = budgetOf(smallRun(), 'nitrogen', sump);
    expect(budget.in).toBeCloseTo(extents.down + 3, 10);
    expect(budget.out).toBeCloseTo(extents.up + extents.loss + 1.5, 10);
    expect(budget.lines.find(({ name, amount }) => name === 'tank: tan' && amount < 0)?.amount).toBe(
      -extents.up,
    );
  });

  it('counts water from streams, volumes and what was poured in', () => {
    const budget = budgetOf(smallRun(), 'water', 'system');
    expect(budget.in).toBeCloseTo(0.5, 12);
    expect(budget.out).toBeCloseTo(0.3, 12);
    expect(budget.stored).toBeCloseTo(0.2, 12);
    expect(budget.lines.map(({ by }) => by)).toEqual(
      expect.arrayContaining(['top-up', 'evaporation', 'transpiration', 'action']),
    );
    const beyond = (place: 'system' | number): readonly string[] => [
      ...new Set(
        budgetOf(smallRun(), 'water', place)
          .lines.filter(({ by }) => by !== 'action')
          .map(({ by, beyond: there }) => `${by}: ${there}`),
      ),
    ];
    expect(beyond('system')).toEqual([
      'top-up: source water',
      'evaporation: air',
      'overflow: discharge',
      'transpiration: air',
    ]);
    expect(beyond(0)).toEqual(['pumped: sump', 'gravity: sump', 'evaporation: air']);
  });

  it('adds up: lines are in less out, stores are what is stored', () => {
    for (const { lines, stores, stored, ...budget } of budgetsOf(smallRun())) {
      const total = (amounts: readonly { amount: number }[]): number =>
        amounts.reduce((sum, { amount }) => sum + amount, 0);
      expect(total(lines)).toBeCloseTo(budget.in - budget.out, 9);
      expect(total(stores)).toBeCloseTo(stored, 9);
    }
  });

  it('measures a quantity that nothing brings in against what is there', () => {
    const { in: came, out, throughput } = budgetOf(smallRun(), 'chloride', 'system');
    expect([came, out]).toEqual([0, 0]);
    expect(throughput).toBeCloseTo(40 * 2 + 40 * 1, 12);
  });
});

describe('budgetsOf', () => {
  it('closes for every quantity of the whole and of each vessel of a sound run', () => {
    const budgets = budgetsOf(smallRun());
    expect(budgets).toHaveLength(3 * conserved.length);
    for (const budget of budgets)
      expect(relativeResidual(budget), `${budget.quantity}@${budget.place}`).toBeLessThan(1e-13);
  });
});

describe('worstResidual', () => {
  it('finds ten micrograms of nitrogen made from nothing, and names where', () => {
    const budgets = budgetsOf(smallRun({ state: sumpTan, amount: 1e-5 }));
    const { budget, share } = worstResidual(budgets);
    const whole = budgets.find(({ quantity, place }) => quantity === 'nitrogen' && place === 'system');
    expect(share).toBeGreaterThan(1e-9);
    expect(['sump', 'system']).toContain(budget.place);
    expect(whole?.residual).toBeCloseTo(-1e-5, 10);
    expect(
      budgets.find(({ quantity, place }) => quantity === 'nitrogen' && place === 'tank')?.residual,
    ).toBeCloseTo(0, 9);
  });

  it('finds a row that makes nitrogen inside a vessel', () => {
    const run = smallRun();
    const leaky = run.model.rows.map((row): Row =>
      row.process === 'nitrification'
        ? { ...row, entries: row.entries.filter(({ component }) => component !== 'tan') }
        : row,
    );
    const end = run.samples[10].y.slice();
    end[sumpTan] += extents.nitrification;
    const samples = run.samples.map((sample, i) => (i === 10 ? { ...sample, y: end } : sample));
    const broken = { ...run, model: { ...run.model, rows: leaky } as Model, samples } satisfies Run;
    const budget = budgetOf(broken, 'nitrogen', sump);
    expect(budget.residual).toBeCloseTo(-extents.nitrification, 9);
  });

  it('does not take a value that is no number for a closed balance', () => {
    const { share } = worstResidual(budgetsOf(smallRun({ state: sumpTan, amount: Number.NaN })));
    expect(share).toBe(Infinity);
  });

  it('refuses an empty list', () => {
    expect(() => worstResidual([])).toThrow(RangeError);
  });
});

describe('relativeResidual', () => {
  const budget = (residual: number, throughput: number): Budget => ({
    quantity: 'water',
    place: 'system',
    in: 0,
    out: 0,
    stored: 0,
    residual,
    throughput,
    lines: [],
    stores: [],
  });

  it.each([
    [0, 0, 0],
    [-2, 4, 0.5],
    [1, 0, Infinity],
    [Number.NaN, 1, Infinity],
  ])('of %d in %d is %d', (residual, throughput, share) => {
    expect(relativeResidual(budget(residual, throughput))).toBe(share);
  });
});

import { describe, expect, it } from 'vitest';
import { budgetOf } from '../../../../packages/core/src/result/budget.js';
import { fatesOf } from '../../../../packages/core/src/result/fates.js';
import { smallRun, sumpTan } from './small-run.js';

describe('fatesOf', () => {
  const fates = fatesOf(budgetOf(smallRun(), 'nitrogen', 'system'));

  it('says in plain words where nitrogen came from and went', () => {
    expect(fates.from.map(({ name }) => name)).toEqual(['feed', 'source water', 'drawn from standing crop']);
    expect(fates.to.map(({ name }) => name)).toEqual(['kept in water', 'ammonia to air', 'harvested crop']);
  });

  it('closes to the whole', () => {
    const total = (list: typeof fates.to): number => list.reduce((sum, { share }) => sum + share, 0);
    expect(total(fates.from)).toBeCloseTo(1, 12);
    expect(total(fates.to)).toBeCloseTo(1, 12);
    expect(fates.total).toBeCloseTo(44.5, 10);
  });

  it('does not close when nitrogen is made from nothing', () => {
    const broken = fatesOf(budgetOf(smallRun({ state: sumpTan, amount: 4.45 }), 'nitrogen', 'system'));
    expect(broken.to.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1.1, 10);
    expect(broken.residual).toBeCloseTo(-4.45, 10);
  });

  it('tells evaporation from transpiration of water', () => {
    const water = fatesOf(budgetOf(smallRun(), 'water', 'system'));
    expect(water.from.map(({ name }) => name)).toEqual(['top-up', 'source water']);
    expect(water.to.map(({ name }) => name)).toEqual(['evaporation', 'kept in vessels', 'transpiration']);
  });
});

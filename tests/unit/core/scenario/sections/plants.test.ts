import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../../packages/core/src/library/parameters.js';
import { readScenario } from '../../../../../packages/core/src/scenario/read-scenario.js';
import { smallSystem } from '../../../../support/small-text.js';
import { messagesOf } from '../../../../product/faults/small-system.js';

const parameters = createParameters();
const lettuce = (name: string): number => parameters.value(`crop.lettuce-butterhead.${name}`);
const withKeys = (keys: string): string =>
  smallSystem.replace('area: 4 m2, batches: 2', `area: 4 m2, ${keys}, batches: 2`);
const seedlingOf = (keys: string): number | undefined =>
  readScenario(withKeys(keys), { file: 'small.yaml' }).plantings[0].seedling;

describe('how many plants are set out', () => {
  it('makes what stands on a m2 at the start, each plant as in the tables', () => {
    const each = lettuce('seedling-mass') / lettuce('density');
    expect(seedlingOf('plants: 40')).toBeCloseTo(10 * each, 12);
    expect(seedlingOf('plants: 80')).toBeCloseTo(20 * each, 12);
  });

  it('goes with the fresh mass of a plant where that is written', () => {
    expect(seedlingOf('plants: 40, seedling: 3 g')).toBeCloseTo(10 * 3 * lettuce('dry-matter'), 12);
    expect(seedlingOf('seedling: 3 g')).toBeCloseTo(lettuce('density') * 3 * lettuce('dry-matter'), 12);
  });

  it('is a whole number from 1', () => {
    expect(messagesOf(withKeys('plants: 0')).join()).toContain('plants');
    expect(messagesOf(withKeys('plants: 2.5')).join()).toContain('plants');
  });
});

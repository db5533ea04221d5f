import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { scopeTo } from '../../../../packages/core/src/model/scope.js';

const tables = createParameters();
const demand = (protein: number): number =>
  scopeTo(tables, { feed: { name: 'grower-32', protein } }).value('feed.demand');

describe('a feed whose protein is stated', () => {
  it('holds what its kind holds, with the protein in place of starch: 1.42 for 192/162 g COD per g', () => {
    expect(demand(0.42)).toBeCloseTo(tables.value('feed.grower-32.demand') + 0.1 * (1.42 - 192 / 162), 4);
    expect(demand(0.25)).toBeCloseTo(tables.value('feed.grower-32.demand') - 0.07 * (1.42 - 192 / 162), 4);
  });

  it('is that of the tables, to the bit, at the protein of the tables', () => {
    expect(demand(0.32)).toBe(tables.value('feed.grower-32.demand'));
  });
});

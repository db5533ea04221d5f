import { describe, expect, it } from 'vitest';
import { addedProduct, stoichiometryProduct } from '../../../packages/core/src/solve/sparse-product.js';
import { sparseRows } from '../../support/plain-system.js';

const rows = sparseRows([
  [
    [0, 1],
    [2, -2],
  ],
  [],
  [[1, 3]],
]);

describe('sparse products', () => {
  it('applies the stoichiometry, over what was there', () => {
    const out = Float64Array.from([9, 9, 9]);
    stoichiometryProduct(rows, 3).apply(rows.value, Float64Array.from([5, 7, 2]), out);
    expect([...out]).toEqual([5, 6, -10]);
  });

  it('adds the product to what was there', () => {
    const out = Float64Array.from([1, 1, 1]);
    addedProduct(rows).apply(rows.value, Float64Array.from([1, 10, 100]), out);
    expect([...out]).toEqual([-198, 1, 31]);
  });
});

import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { addedProduct, stoichiometryProduct } from '../../../../packages/core/src/solve/sparse-rows.js';
import { sparseRows } from '../../../support/plain-system.js';
import { drawsFrom } from '../../../support/random-network.js';

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

describe.each([1, 2, 3, 4, 5])(
  'sparse products of a random matrix (draw %d), as those of ml-matrix',
  (seed) => {
    const draw = drawsFrom(seed);
    const [height, width] = [2 + Math.floor(9 * draw()), 2 + Math.floor(9 * draw())];
    const dense = Matrix.zeros(height, width);
    const sparse = sparseRows(
      Array.from({ length: height }, (_, i) => {
        const columns = Array.from({ length: width }, (_v, j) => j).filter(() => draw() < 0.4);
        return columns.map((j): [number, number] => {
          dense.set(i, j, 2 * draw() - 1);
          return [j, dense.get(i, j)];
        });
      }),
    );
    const vector = (length: number): Float64Array => Float64Array.from({ length }, () => 2 * draw() - 1);
    const differ = (got: Float64Array, wanted: Matrix): number =>
      Math.max(...wanted.to1DArray().map((value, i) => Math.abs(value - got[i])));

    it('applies its transpose', () => {
      const rates = vector(height);
      const out = vector(width);
      stoichiometryProduct(sparse, width).apply(sparse.value, rates, out);
      expect(differ(out, dense.transpose().mmul(Matrix.columnVector([...rates])))).toBeLessThan(1e-14);
    });

    it('adds its product', () => {
      const states = vector(width);
      const out = vector(height);
      const wanted = Matrix.add(Matrix.columnVector([...out]), dense.mmul(Matrix.columnVector([...states])));
      addedProduct(sparse).apply(sparse.value, states, out);
      expect(differ(out, wanted)).toBeLessThan(1e-14);
    });
  },
);

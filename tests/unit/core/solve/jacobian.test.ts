import { describe, expect, it } from 'vitest';
import { denseLu } from '../../../support/dense-lu.js';
import { stepMatrix } from '../../../../packages/core/src/solve/jacobian.js';
import { Room } from '../../../../packages/core/src/solve/room.js';
import { sparseLu } from '../../../../packages/core/src/solve/sparse-lu.js';
import { largestDeviation } from '../../../support/deviation.js';
import { randomNetwork } from '../../../support/random-network.js';

describe('stepMatrix', () => {
  it.each([
    ['sparseLu', sparseLu],
    ['denseLu', denseLu],
  ] as const)('solves with I/(hγ) − SᵀR in %s', (_name, make) => {
    const { system, start } = randomNetwork(12, 30, 5);
    const { stoichiometry: s, dependence: d } = system;
    const dr = new Float64Array(d.column.length);
    system.differentiate(0, start, dr, new Float64Array(system.rates));
    const wanted = Array.from({ length: 12 }, (_, i) => Math.sin(i + 1));
    const hGamma = 0.01;
    const b = Float64Array.from(wanted, (value) => value / hGamma);
    for (let k = 0; k < system.rates; k++) {
      for (let a = s.start[k]; a < s.start[k + 1]; a++) {
        for (let p = d.start[k]; p < d.start[k + 1]; p++) {
          const [i, j] = [s.column[a], d.column[p]];
          b[i] -= s.value[a] * dr[p] * wanted[j];
        }
      }
    }
    const room = new Room();
    const moved = room.floats(s.value);
    const matrix = stepMatrix(system, make, { room, moved, partials: room.floats(dr) });
    matrix.assemble();
    // Twice: a second factorisation must not see what the first has overwritten.
    expect(matrix.factor(0.02)).toBe(true);
    expect(matrix.factor(hGamma)).toBe(true);
    matrix.solver.solve(b);
    expect(largestDeviation(b, wanted)).toBeLessThan(1e-11);
  });
});

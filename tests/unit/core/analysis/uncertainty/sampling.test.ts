import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError, openSampling, type Sampling } from '@leat/core';
import { placeOf } from '../../../../../packages/core/src/analysis/uncertainty/sampling.js';

const ids = ['a.one', 'b.two', 'c.three'];
const hypercube = (members: number, seed = 1): Sampling => ({ method: 'latin-hypercube', members, seed });

function ranksOf(values: readonly number[]): number[] {
  const order = values.map((_, i) => i).sort((a, b) => values[a] - values[b]);
  const ranks = new Array<number>(values.length);
  order.forEach((i, rank) => (ranks[i] = rank));
  return ranks;
}

/** Spearman's rank correlation. */
function rankCorrelation(a: readonly number[], b: readonly number[]): number {
  const [x, y] = [ranksOf(a), ranksOf(b)];
  const squares = x.reduce((sum, rank, i) => sum + (rank - y[i]) ** 2, 0);
  return 1 - (6 * squares) / (a.length * (a.length ** 2 - 1));
}

const drawn = (sampling: Sampling, names = ids): Float64Array[] => {
  const draw = openSampling(sampling, names);
  return Array.from({ length: sampling.members }, (_, member) => draw(member));
};

function fault(sampling: Sampling, names = ids): string {
  try {
    openSampling(sampling, names);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error('it was taken');
}

describe('a random order', () => {
  it('holds every place once, for any number and key', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 2 ** 32 - 1 }), (n, key) => {
        const places = Array.from({ length: n }, (_, i) => placeOf(i, n, key));
        expect(new Set(places).size).toBe(n);
        expect(Math.max(...places)).toBe(n - 1);
      }),
    );
  });

  it('is no more often anywhere than anywhere else', () => {
    const counts = new Array<number>(10).fill(0);
    for (let key = 0; key < 20_000; key++) counts[placeOf(3, 10, key)]++;
    const chiSquare = counts.reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0);
    expect(chiSquare).toBeLessThan(27.9); // 9 degrees of freedom, 0.1 %
  });
});

describe('a Latin hypercube', () => {
  it.each([1, 2, 7, 100, 1000])('has one of %i members in each stratum of each number', (members) => {
    const rows = drawn(hypercube(members));
    for (const [column] of ids.entries()) {
      const strata = rows.map((row) => Math.floor(row[column] * members));
      expect(strata.sort((a, b) => a - b)).toEqual(strata.map((_, i) => i));
    }
  });

  it('draws numbers independently of each other', () => {
    const rows = drawn(hypercube(2000));
    const column = (i: number): number[] => rows.map((row) => row[i]);
    for (const [a, b] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ])
      expect(Math.abs(rankCorrelation(column(a), column(b)))).toBeLessThan(3.3 / Math.sqrt(2000));
  });

  it('draws a number the same whatever other numbers are drawn', () => {
    const alone = openSampling(hypercube(50), ['b.two'])(17);
    expect(openSampling(hypercube(50), ids)(17)[1]).toBe(alone[0]);
  });

  it('draws otherwise for another seed, also for seeds beyond 32 bits', () => {
    const at = (seed: number): number => openSampling(hypercube(50, seed), ids)(17)[0];
    expect(new Set([1, 2, 2 ** 32 + 1, 2 ** 53 - 1].map(at)).size).toBe(4);
    expect(at(1)).toBe(at(1));
  });
});

describe('Sobol points', () => {
  it('keep a member in each stratum of 2^k, under any seed, and never give 0', () => {
    for (const seed of [0, 1, 99]) {
      const rows = drawn({ method: 'sobol', members: 64, seed });
      for (const [column] of ids.entries()) {
        expect(new Set(rows.map((row) => Math.floor(row[column] * 64))).size).toBe(64);
        expect(Math.min(...rows.map((row) => row[column]))).toBeGreaterThan(0);
      }
    }
  });

  it('draw a member the same whatever the number of members', () => {
    const at = (members: number): number[] =>
      Array.from(openSampling({ method: 'sobol', members, seed: 5 }, ids)(9));
    expect(at(10)).toEqual(at(1000));
  });
});

describe('a stated rank correlation', () => {
  const correlations = [
    { a: 'a.one', b: 'c.three', rank: 0.6 },
    { a: 'b.two', b: 'c.three', rank: -0.3 },
  ];

  it.each(['latin-hypercube', 'sobol'] as const)('comes out (%s)', (method) => {
    const rows = drawn({ method, members: 4000, seed: 3, correlations });
    const column = (i: number): number[] => rows.map((row) => row[i]);
    expect(rankCorrelation(column(0), column(2))).toBeCloseTo(0.6, 1);
    expect(rankCorrelation(column(1), column(2))).toBeCloseTo(-0.3, 1);
    expect(Math.abs(rankCorrelation(column(0), column(1)))).toBeLessThan(0.05);
  });

  it('leaves every number uniform, and those not named as they were', () => {
    const plain = drawn(hypercube(1000));
    const tied = drawn({ ...hypercube(1000), correlations: correlations.slice(0, 1) });
    const third = tied.map((row) => row[2]).sort((a, b) => a - b);
    const gap = Math.max(...third.map((value, i) => Math.abs(value - (i + 0.5) / 1000)));
    expect(gap).toBeLessThan(1.63 / Math.sqrt(1000)); // Kolmogorov and Smirnov, 1 %
    expect(tied.map((row) => row[1])).toEqual(plain.map((row) => row[1]));
  });

  it('is refused where it cannot be, all faults at once', () => {
    expect(fault({ ...hypercube(9), correlations: [{ a: 'a.one', b: 'b.tow', rank: 2 }] })).toMatch(
      /not a number that is drawn here; got b.tow; did you mean b.two\?\n.*not a rank correlation; got 2/,
    );
    expect(fault({ ...hypercube(9), correlations: [{ a: 'a.one', b: 'a.one', rank: 0.1 }] })).toMatch(
      /with itself/,
    );
    const apart = [
      { a: 'a.one', b: 'b.two', rank: 0.9 },
      { a: 'a.one', b: 'c.three', rank: 0.9 },
      { a: 'b.two', b: 'c.three', rank: -0.9 },
    ];
    expect(fault({ ...hypercube(9), correlations: apart })).toMatch(/cannot hold together/);
  });
});

describe('a sampling that cannot be', () => {
  it.each([0, -3, 1.5, NaN, 2 ** 33])('of %d members', (members) => {
    expect(fault(hypercube(members))).toBe(
      `not a number of members; got ${members}; expected a whole number from 1`,
    );
  });

  it('by its seed', () => {
    expect(fault(hypercube(3, -1))).toMatch(/not a seed; got -1/);
    expect(fault(hypercube(3, 0.5))).toMatch(/not a seed; got 0.5/);
  });

  it('by more numbers than Sobol points reach', () => {
    const many = Array.from({ length: 801 }, (_, i) => `n.${i}`);
    expect(fault({ method: 'sobol', members: 4, seed: 1 }, many)).toMatch(
      /too many numbers for Sobol points; got 801; expected at most 800, or latin-hypercube/,
    );
  });
});

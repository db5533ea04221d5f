import { describe, expect, it } from 'vitest';
import {
  createParameters,
  elementaryEffects,
  fewOf,
  localDesign,
  localEffects,
  middleOf,
  morrisDesign,
  sobolDesign,
  sobolIndices,
  type SobolAnswer,
} from '@leat/core';
import { shareBelow } from '../../../../../packages/core/src/analysis/uncertainty/one-at-a-time.js';
import { drawnValues } from '../../../../../packages/core/src/analysis/uncertainty/open-runs.js';
import { quantile } from '../../../../../packages/core/src/library/distributions.js';
import { tableRows } from '../../../../../packages/core/src/library/table-rows.js';

type Outcome = (u: ArrayLike<number>) => number;

/** T. Ishigami and T. Homma (1990), a = 7, b = 0.1, inputs over -pi .. pi. */
const ishigami: Outcome = (u) => {
  const [x, y, z] = [u[0], u[1], u[2]].map((each) => (2 * each - 1) * Math.PI);
  return Math.sin(x) + 7 * Math.sin(y) ** 2 + 0.1 * z ** 4 * Math.sin(x);
};

/** The known indices of it. */
function ishigamiIndices(): { first: number[]; total: number[] } {
  const [a, b] = [7, 0.1];
  const one = (1 + (b * Math.PI ** 4) / 5) ** 2 / 2;
  const two = a ** 2 / 8;
  const both = (b ** 2 * Math.PI ** 8 * 8) / 225;
  const variance = one + two + both;
  return {
    first: [one / variance, two / variance, 0],
    total: [(one + both) / variance, two / variance, both / variance],
  };
}

/** The g-function of I. M. Sobol. */
const weights = [0, 1, 4.5, 9, 99, 99];
const gFunction: Outcome = (u) =>
  weights.reduce((product, a, i) => (product * (Math.abs(4 * u[i] - 2) + a)) / (1 + a), 1);

function gIndices(): { first: number[]; total: number[] } {
  const parts = weights.map((a) => 1 / (3 * (1 + a) ** 2));
  const variance = parts.reduce((product, part) => product * (1 + part), 1) - 1;
  return {
    first: parts.map((part) => part / variance),
    total: parts.map((part) => (part / (1 + part)) * ((variance + 1) / variance)),
  };
}

function indicesOf(outcome: Outcome, inputs: number, basePoints: number, seed = 1): SobolAnswer {
  return sobolIndices(inputs, sobolDesign(inputs, basePoints, seed).map(outcome), { seed });
}

describe.each([
  ['the Ishigami function', ishigami, 3, ishigamiIndices()],
  ['the g-function', gFunction, 6, gIndices()],
] as const)('Sobol indices of %s', (_, outcome, inputs, known) => {
  const { indices, used } = indicesOf(outcome, inputs, 4096);

  it('are the known ones, within the interval told and within 0.01', () => {
    expect(used).toBe(4096);
    indices.forEach(({ first, total }, i) => {
      expect(Math.abs(first.value - known.first[i]), `first ${i}`).toBeLessThan(0.01);
      expect(Math.abs(total.value - known.total[i]), `total ${i}`).toBeLessThan(0.01);
      expect(first.low).toBeLessThanOrEqual(known.first[i]);
      expect(first.high).toBeGreaterThanOrEqual(known.first[i]);
      expect(total.low).toBeLessThanOrEqual(known.total[i]);
      expect(total.high).toBeGreaterThanOrEqual(known.total[i]);
    });
  });

  it('have an interval that narrows with more points, and follow from the seed', () => {
    const few = indicesOf(outcome, inputs, 64);
    const width = (answer: SobolAnswer): number => answer.indices[0].first.high - answer.indices[0].first.low;
    expect(width(few)).toBeGreaterThan(3 * width({ indices, used }));
    expect(indicesOf(outcome, inputs, 64)).toEqual(few);
    expect(indicesOf(outcome, inputs, 64, 2)).not.toEqual(few);
  });

  it('leave out a base point that has an outcome missing', () => {
    const outcomes = sobolDesign(inputs, 64, 1).map(outcome);
    outcomes[inputs + 2 + 1] = Number.NaN;
    const answer = sobolIndices(inputs, outcomes, { seed: 1 });
    expect(answer.used).toBe(63);
    expect(answer.indices[0].first.value).not.toBeNaN();
  });
});

describe('elementary effects', () => {
  const effectsOf = (outcome: Outcome, inputs: number, trajectories = 40) => {
    const points = morrisDesign(inputs, trajectories, 3);
    return elementaryEffects(points, points.map(outcome));
  };

  it('of a straight outcome are its slopes, all alike', () => {
    const effects = effectsOf((u) => 3 * u[0] - 5 * u[1] + 2, 3);
    expect(effects.map(({ muStar }) => muStar)).toEqual(
      [3, 5, 0].map((each) => expect.closeTo(each, 12) as number),
    );
    expect(effects[1].mu).toBeCloseTo(-5, 12);
    for (const { sigma, effects: count } of effects) {
      expect(sigma).toBeCloseTo(0, 12);
      expect(count).toBe(40);
    }
  });

  it('of a product are the other input: mean 1/2, deviation that of the four levels', () => {
    const [one] = effectsOf((u) => u[0] * u[1], 2, 4000);
    expect(one.mu).toBeCloseTo(0.5, 1);
    expect(one.sigma).toBeCloseTo(Math.sqrt(5) / 8, 1);
  });

  it('put the inputs of the g-function in order', () => {
    const effects = effectsOf(gFunction, 6);
    const stars = effects.map(({ muStar }) => muStar);
    expect([...stars.slice(0, 5)].sort((a, b) => b - a)).toEqual(stars.slice(0, 5));
  });

  it('find the few that matter, the strongest first', () => {
    const effects = [0.5, 1, 0.09, 0.2, Number.NaN].map((muStar) => ({ muStar }));
    expect(fewOf(effects)).toEqual([1, 0, 3]);
    expect(fewOf(effects, { most: 2 })).toEqual([1, 0]);
    expect(fewOf(effects, { share: 0.3 })).toEqual([1, 0]);
    expect(fewOf(effectsOf(() => 7, 2))).toEqual([]);
  });

  it('leave out what could not be worked out', () => {
    const points = morrisDesign(2, 2, 1);
    const [one, two] = elementaryEffects(
      points,
      points.map((u, i) => (i === 0 ? Number.NaN : u[0] + u[1])),
    );
    expect(one.effects + two.effects).toBe(3);
    expect(one.muStar).toBeCloseTo(1, 12);
  });
});

describe('local effects', () => {
  const ranged = [...tableRows.values()].filter(({ distribution }) => distribution !== 'fixed');
  const rows = ranged.slice(0, 30);

  it('of a power law are its exponents', () => {
    const at = (u: ArrayLike<number>): number[] => [...drawnValues(rows, u).values()];
    const outcome: Outcome = (u) => {
      const values = at(u);
      return values[0] * Math.sqrt(values[1]) * values[2] ** -2;
    };
    const inputs = [0, 1, 2, 3];
    const points = localDesign(rows, inputs);
    const effects = localEffects(rows, inputs, points.map(outcome), outcome(middleOf(rows)));
    const wanted = [1, 0.5, -2, 0];
    effects.forEach(({ elasticity, slope, overRange }, i) => {
      const { low, high, value } = rows[i];
      const bend = Math.abs(wanted[i]) * ((high - low) / value) ** 2 * 0.05;
      expect(Math.abs(elasticity - wanted[i])).toBeLessThanOrEqual(1e-9 + bend);
      expect(overRange).toBeCloseTo(slope * (high - low), 12);
    });
  });

  it('are taken around the values of the tables', () => {
    const values = drawnValues(ranged, middleOf(ranged));
    const parameters = createParameters();
    for (const { id } of ranged) expect(values.get(id) ?? 0).toBeCloseTo(parameters.value(id), 6);
  });

  it('undo the quantiles of every row', () => {
    for (const row of ranged)
      for (const u of [0.05, 0.3, 0.5, 0.7, 0.95])
        expect(shareBelow(row, quantile(row, u))).toBeCloseTo(u, 6);
  });
});

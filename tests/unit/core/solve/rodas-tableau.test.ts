import { describe, expect, it } from 'vitest';
import {
  A,
  C,
  GAMMA,
  rightSideWeights,
  solutionWeights,
  STAGES,
  TIME_SHARE,
} from '../../../../packages/core/src/solve/rodas-tableau.js';

const at = (s: number): Float64Array => {
  const weights = new Float64Array(STAGES);
  solutionWeights(s, weights);
  return weights;
};

const untransformed = (weights: Float64Array): Float64Array => {
  const out = new Float64Array(STAGES);
  rightSideWeights(weights, out);
  return out;
};

describe('the tableau of RODAS', () => {
  it('is stiffly accurate: the last stage is taken at the solution but for itself', () => {
    expect([...at(1)]).toEqual([...A[5], 1]);
  });

  it('is nothing at the beginning of a step', () => {
    expect([...at(0)].every((weight) => weight === 0)).toBe(true);
  });

  it('corrects the dense output by the first five stages alone: the last has the weight of the share [R]', () => {
    for (const s of [0.1, 0.3, 0.75]) expect(at(s)[5]).toBe(s);
  });

  it('sums a constant right side to the share of the step, at any share', () => {
    for (const s of [0.25, 0.5, 0.9, 1]) {
      const sum = untransformed(at(s)).reduce((all, weight) => all + weight, 0);
      expect(GAMMA * sum).toBeCloseTo(s, 12);
    }
  });

  it('turns weights of stages into weights of right sides', () => {
    const right = Float64Array.from([1.5, -2, 0.25, 3, -1, 0.5]);
    const stages: number[] = [];
    for (let i = 0; i < STAGES; i++) {
      const coupled = C[i].reduce((sum, c, j) => sum + c * stages[j], 0);
      stages.push(GAMMA * (right[i] + coupled));
    }
    const weights = at(0.7);
    const direct = stages.reduce((sum, u, j) => sum + weights[j] * u, 0);
    const turned = untransformed(weights).reduce((sum, w, i) => sum + GAMMA * w * right[i], 0);
    expect(turned).toBeCloseTo(direct, 10);
  });

  it('integrates a right side linear in time exactly: Σ wᵢγ(αᵢ + dᵢ) = 1/2', () => {
    const alpha = [0, 0.386, 0.21, 0.63, 1, 1];
    const sum = untransformed(at(1)).reduce((all, w, i) => all + w * GAMMA * (alpha[i] + TIME_SHARE[i]), 0);
    expect(sum).toBeCloseTo(0.5, 12);
  });
});

import type { Matrix } from 'ml-matrix';
import type { Measurable } from '../scenario/scenario.js';

/** A test that could be made, with what a reading would be worth. */
export interface TestCandidate {
  readonly reads: Measurable;
  readonly vessel: string;
  /** d since the start. */
  readonly time: number;
  /** Variance of a reading: of the kit, and of its step. */
  readonly variance: number;
  /** Derivatives of the value by the deviates. */
  readonly row: readonly number[];
}

/** What a further test would tell. */
export interface NextTest {
  readonly reads: Measurable;
  readonly vessel: string;
  readonly date: string;
  /** Gain of information, bits: half the base-2 log of by how much the volume of the band of all numbers shrinks. */
  readonly bits: number;
  /** The number that it narrows most, and by which `share` of its standard deviation, 0..1. */
  readonly narrows: { readonly name: string; readonly share: number };
}

/** What one reading is worth, by the covariance as it stands (linear in the deviates). */
export function worthOf(
  candidate: TestCandidate,
  covariance: Matrix,
  names: readonly string[],
  dateOf: (time: number) => string,
): NextTest {
  const { reads, vessel, time, variance, row } = candidate;
  const size = names.length;
  const along = names.map((_, j) => {
    let sum = 0;
    for (let k = 0; k < size; k++) sum += covariance.get(j, k) * row[k];
    return sum;
  });
  const spread = along.reduce((sum, each, j) => sum + each * row[j], 0);
  const shares = along.map(
    (each, j) => 1 - Math.sqrt(Math.max(1 - (each * each) / ((variance + spread) * covariance.get(j, j)), 0)),
  );
  const best = shares.reduce((most, share, j) => (share > shares[most] ? j : most), 0);
  return {
    reads,
    vessel,
    date: dateOf(time),
    bits: Math.log2(1 + spread / variance) / 2,
    narrows: { name: names[best], share: shares[best] },
  };
}

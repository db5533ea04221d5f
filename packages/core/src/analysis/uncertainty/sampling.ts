import { floorLog2, powerOfTwo } from '../../base/elementary.js';
import { InputError } from '../../base/faults.js';
import { keyOf, mix, uniformAt } from '../../base/hashes.js';
import { type RankCorrelation, withTableCorrelations } from '../../library/correlations.js';
import { correlate } from './correlate.js';
import { sobolDimensions, sobolSequence } from './sobol-sequence.js';

const rounds = 6;

/**
 * The place of i in a random order of 0 .. n-1, worked out alone, so that no order of a million need be
 * kept: a Feistel network over the next power of four (Luby and Rackoff 1988), gone through again until it
 * ends below n (cycle walking).
 * @param n 1 to 2^32
 */
export function placeOf(i: number, n: number, key: number): number {
  const half = Math.max(1, n > 1 ? Math.ceil((floorLog2(n - 1) + 1) / 2) : 0);
  const size = powerOfTwo(half);
  let place = i;
  do {
    let left = Math.floor(place / size);
    let right = place % size;
    for (let round = 0; round < rounds; round++) {
      const next = (left ^ mix(right ^ mix(key + round))) & (size - 1);
      left = right;
      right = next;
    }
    place = left * size + right;
  } while (place >= n);
  return place;
}

/** How members are drawn. */
export interface Sampling {
  /** `latin-hypercube`: each number has one member in each of N strata. `sobol`: a low-discrepancy sequence. */
  readonly method: 'latin-hypercube' | 'sobol';
  /** Number of members, 1 to 2^32. */
  readonly members: number;
  /** Whole number from 0 to 2^53 - 1. */
  readonly seed: number;
  /** Beside those of the tables, which hold between numbers that none of these names. */
  readonly correlations?: readonly RankCorrelation[];
}

function latinHypercube(
  { members, seed }: Sampling,
  ids: readonly string[],
): (member: number) => Float64Array {
  const keys = ids.map((id) => keyOf(seed, id));
  return (member) =>
    Float64Array.from(keys, (key) => (placeOf(member, members, key) + uniformAt(mix(key), member)) / members);
}

/** Sobol points moved by a random digital shift of each dimension, which keeps their evenness and never gives 0. */
function sobol({ seed }: Sampling, ids: readonly string[]): (member: number) => Float64Array {
  const points = sobolSequence(Math.max(1, ids.length));
  const shifts = ids.map((id) => keyOf(seed, id));
  return (member) => {
    const point = points(member);
    return Float64Array.from(
      shifts,
      (shift, dimension) => (((point[dimension] ^ shift) >>> 0) + 0.5) / 2 ** 32,
    );
  };
}

/**
 * Opens the draws of an ensemble: uniform numbers in [0, 1) of a member, one for each id. They depend on
 * the sampling, the id and the member alone (a Latin hypercube: also on N; Sobol: also on the place of the
 * id), so that shards and resumed runs agree.
 *
 * Throws InputError for a number of members or a seed that cannot be, too many numbers for Sobol, and
 * correlations that cannot be.
 */
export function openSampling(sampling: Sampling, ids: readonly string[]): (member: number) => Float64Array {
  const { method, members, seed } = sampling;
  if (!(Number.isInteger(members) && members >= 1 && members <= 2 ** 32))
    throw new InputError([
      { problem: 'not a number of members', got: String(members), expected: 'a whole number from 1' },
    ]);
  if (!(Number.isSafeInteger(seed) && seed >= 0))
    throw new InputError([
      { problem: 'not a seed', got: String(seed), expected: 'a whole number from 0 to 2^53 - 1' },
    ]);
  if (method === 'sobol' && ids.length > sobolDimensions)
    throw new InputError([
      {
        problem: 'too many numbers for Sobol points',
        got: String(ids.length),
        expected: `at most ${sobolDimensions}, or latin-hypercube`,
      },
    ]);
  const draw = (method === 'sobol' ? sobol : latinHypercube)(sampling, ids);
  const together = correlate(withTableCorrelations(sampling.correlations ?? []), ids);
  return (member) => together(draw(member));
}

import { normalQuantile } from '../library/normal-quantile.js';
import { createRandom } from '../library/random.js';
import { minimise, sumAt, type Minimum, type MinimiseOptions, type Problem } from './minimise.js';

/**
 * Standard deviates spread over their priors: each number takes one draw from each of `count` slices of equal share, in
 * random order (Latin hypercube). The same for the same seed.
 */
function spreadStarts(count: number, size: number, seed: number): readonly Float64Array[] {
  const random = createRandom(seed);
  const starts = Array.from({ length: count }, () => new Float64Array(size));
  for (let j = 0; j < size; j++) {
    const slices = Array.from({ length: count }, (_, i) => i);
    for (let i = count - 1; i > 0; i--) {
      const k = Math.floor(random() * (i + 1));
      [slices[i], slices[k]] = [slices[k], slices[i]];
    }
    slices.forEach((slice, i) => {
      starts[i][j] = normalQuantile(Math.min(Math.max((slice + random()) / count, 0.01), 0.99));
    });
  }
  return starts;
}

/** How often more places are looked at than searched from. */
const looked = 3;

/**
 * Minima of a problem in standard deviates: from their middle, and from the best of some spread starts; the first is
 * that from the middle.
 * @param further how many starts besides the middle, if so many places have a prediction
 * @throws RangeError where the model gives no prediction at the middle
 */
export function minimaFrom(
  problem: Problem,
  further: number,
  seed: number,
  options: MinimiseOptions,
): readonly Minimum[] {
  const { size } = problem;
  const spread = spreadStarts(looked * further, size, seed)
    .map((at) => ({ at, cost: sumAt(problem, at, problem.predict(at)) }))
    .filter(({ cost }) => cost < Infinity)
    .sort((a, b) => a.cost - b.cost)
    .slice(0, further);
  return [new Float64Array(size), ...spread.map(({ at }) => at)].map((start) =>
    minimise(problem, start, options),
  );
}

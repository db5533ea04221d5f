import { normalQuantile } from '../library/normal-quantile.js';
import { createRandom } from '../library/random.js';

/**
 * Standard deviates spread over their priors: each number takes one draw from each of `count` slices of equal share, in
 * random order (Latin hypercube). The same for the same seed.
 */
export function spreadStarts(count: number, size: number, seed: number): readonly Float64Array[] {
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

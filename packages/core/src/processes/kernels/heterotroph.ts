import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import { transferOf } from './film-coefficients.js';
import { reached, reachedByMost, reachedBySubstrate } from './film.js';
import type { Kernel } from './kernel.js';
import { arrhenius, monod, monodSlope } from './rate-terms.js';

/**
 * [mu, K of dissolved matter, K_O2, K_TAN, transfer of dissolved matter and of oxygen in g COD of growth that they
 * allow (m3 d-1 g COD g-1), cells that the water always brings (g COD)].
 */
export function heterotrophCoefficients(values: Values, at: Conditions): readonly number[] {
  const own = (name: string): number => values.value(`heterotroph.${name}`);
  const yields = own('yield');
  return [
    own('growth') * arrhenius(own('growth-theta'), at.temperature),
    own('k-dissolved'),
    own('k-oxygen'),
    own('k-tan'),
    transferOf(values, at, 'dissolved') * yields,
    (transferOf(values, at, 'oxygen') * yields) / (1 - yields),
    own('attached') * at.surface,
  ];
}

const heterotrophKernel: Kernel = {
  name: 'heterotroph',
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 4, o += 7) {
      const most = k[o] * monod(v[at[n + 2]], k[o + 3]) * (v[at[n + 3]] + k[o + 6]);
      const supplied = reached(v[at[n + 1]], most, k[o + 2], k[o + 5]);
      r[row + i] = reached(v[at[n]], supplied, k[o + 1], k[o + 4]);
    }
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 4, o += 7) {
      const food = k[o] * monod(v[at[n + 2]], k[o + 3]);
      const cells = v[at[n + 3]] + k[o + 6];
      const most = food * cells;
      const supplied = reached(v[at[n + 1]], most, k[o + 2], k[o + 5]);
      const used = reached(v[at[n]], supplied, k[o + 1], k[o + 4]);
      const bySupply = reachedByMost(v[at[n]], supplied, k[o + 1], k[o + 4], used);
      const byMost = bySupply * reachedByMost(v[at[n + 1]], most, k[o + 2], k[o + 5], supplied);
      d[n] = reachedBySubstrate(v[at[n]], supplied, k[o + 1], k[o + 4], used);
      d[n + 1] = bySupply * reachedBySubstrate(v[at[n + 1]], most, k[o + 2], k[o + 5], supplied);
      d[n + 2] = byMost * k[o] * monodSlope(v[at[n + 2]], k[o + 3]) * cells;
      d[n + 3] = byMost * food;
    }
  },
};

/**
 * Growth of heterotrophs of a surface, g COD d-1. Variables: dissolved matter, oxygen, TAN, cells. What the cells could
 * do, mu(T) M(TAN) (H + H0), is limited by the oxygen and then by the dissolved matter that come through still water;
 * H0 are cells that the water always brings, so that growth begins wherever there is food.
 */
export const heterotrophGrowing = {
  rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>): number => {
    const most = k[0] * monod(v[at[2]], k[3]) * (v[at[3]] + k[6]);
    return reached(v[at[0]], reached(v[at[1]], most, k[2], k[5]), k[1], k[4]);
  },
  partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array): void => {
    const cells = v[at[3]] + k[6];
    const most = k[0] * monod(v[at[2]], k[3]) * cells;
    const supplied = reached(v[at[1]], most, k[2], k[5]);
    const used = reached(v[at[0]], supplied, k[1], k[4]);
    const bySupply = reachedByMost(v[at[0]], supplied, k[1], k[4], used);
    const byMost = bySupply * reachedByMost(v[at[1]], most, k[2], k[5], supplied);
    d[0] = reachedBySubstrate(v[at[0]], supplied, k[1], k[4], used);
    d[1] = bySupply * reachedBySubstrate(v[at[1]], most, k[2], k[5], supplied);
    d[2] = byMost * k[0] * monodSlope(v[at[2]], k[3]) * cells;
    d[3] = byMost * k[0] * monod(v[at[2]], k[3]);
  },
  kernel: heterotrophKernel,
};

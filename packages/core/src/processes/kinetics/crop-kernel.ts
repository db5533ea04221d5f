import { critical, demandAt, demandPartialsAt, growthAt, growthPartialsAt } from './crop-demand.js';
import type { Kernel } from './kernel.js';
import { monod, monodSlope } from './limits.js';

/**
 * Growth, nitrate uptake and ammonium uptake of every batch, handed over in this order: demand and its critical
 * curve are worked out once. Coefficients as in the three processes.
 */
export const cropKernel: Kernel = {
  rates: ([growth, nitrate, tan], v, r) => {
    const kn = nitrate.k;
    const kt = tan.k;
    for (let i = 0; i < growth.count; i++) {
      const n = 4 * i;
      const mass = v[nitrate.at[n]];
      if (!(mass > 0)) {
        r[growth.row + i] = 0;
        r[nitrate.row + i] = 0;
        r[tan.row + i] = 0;
        continue;
      }
      const nitrogen = v[nitrate.at[n + 1]];
      const g = i * growth.size;
      const wanted = critical(mass, growth.k, g);
      const grown = growthAt(wanted, mass, nitrogen, growth.k, g);
      const demand = demandAt(wanted, grown, mass, nitrogen, growth.k, g);
      const ammonium = v[nitrate.at[n + 3]];
      const o = i * nitrate.size;
      const p = i * tan.size;
      r[growth.row + i] = grown;
      r[nitrate.row + i] =
        demand * monod(v[nitrate.at[n + 2]], kn[o + 8]) * (1 - kn[o + 10] * monod(ammonium, kn[o + 9]));
      r[tan.row + i] = demand * kt[p + 9] * monod(ammonium, kt[p + 8]);
    }
  },
  partials: ([growth, nitrate, tan], v) => {
    const pair = new Float64Array(2);
    const kn = nitrate.k;
    const kt = tan.k;
    for (let i = 0; i < growth.count; i++) {
      const n = 4 * i;
      const mass = v[nitrate.at[n]];
      const nitrogen = v[nitrate.at[n + 1]];
      const g = i * growth.size;
      let demand = 0;
      pair.fill(0);
      if (mass > 0) {
        const wanted = critical(mass, growth.k, g);
        const grown = growthPartialsAt(wanted, mass, nitrogen, growth.k, g, pair);
        growth.d.set(pair, 2 * i);
        demand = demandPartialsAt(wanted, grown, mass, nitrogen, growth.k, g, pair);
      } else growth.d.set(pair, 2 * i);
      const ammonium = v[nitrate.at[n + 3]];
      const o = i * nitrate.size;
      const taken = monod(v[nitrate.at[n + 2]], kn[o + 8]);
      const left = 1 - kn[o + 10] * monod(ammonium, kn[o + 9]);
      nitrate.d[n] = pair[0] * taken * left;
      nitrate.d[n + 1] = pair[1] * taken * left;
      nitrate.d[n + 2] = demand * monodSlope(v[nitrate.at[n + 2]], kn[o + 8]) * left;
      nitrate.d[n + 3] = -demand * taken * kn[o + 10] * monodSlope(ammonium, kn[o + 9]);
      const p = i * tan.size;
      const share = kt[p + 9] * monod(ammonium, kt[p + 8]);
      tan.d[3 * i] = pair[0] * share;
      tan.d[3 * i + 1] = pair[1] * share;
      tan.d[3 * i + 2] = demand * kt[p + 9] * monodSlope(ammonium, kt[p + 8]);
    }
  },
};

import type { Process } from './process.js';
import { uneatenKernel } from './kinetics/feeding-kernel.js';
import { feedNitrogen } from './kinetics/feed-nitrogen.js';
import { monod, monodSlope } from './kinetics/limits.js';

/**
 * Feed not eaten, per g: breaks up into suspended solids of the same oxygen demand; nitrogen beyond
 * that of solids leaches as TAN, by closure.
 */
export const uneatenFeed: Process = {
  id: 'uneaten-feed',
  title: 'feed not eaten',
  place: 'cohort',
  unit: 'g feed',
  basis: 'whole',
  reads: ['oxygen', 'fish-mass'],
  stoichiometry: (values) => [
    { component: 'feed-nitrogen', coefficient: -feedNitrogen(values), outside: 'feed' },
    { component: 'feed-demand', coefficient: -values.value('feed.demand'), outside: 'feed' },
    { component: 'solids', coefficient: values.value('feed.demand') / values.value('solids.demand') },
    { component: 'tan', coefficient: { closes: 'nitrogen' } },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
  ],
  coefficients: (values, at) => [
    at.fed,
    at.fedShare,
    1 - values.value('fish.uneaten'),
    values.value('fish.k-oxygen'),
  ],
  rate: (v, at, k) => (k[0] + k[1] * v[at[1]]) * (1 - k[2] * monod(v[at[0]], k[3])),
  partials: (v, at, k, d) => {
    d[0] = -(k[0] + k[1] * v[at[1]]) * k[2] * monodSlope(v[at[0]], k[3]);
    d[1] = k[1] * (1 - k[2] * monod(v[at[0]], k[3]));
  },
  kernel: uneatenKernel,
};

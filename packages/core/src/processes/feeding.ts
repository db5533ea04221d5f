import type { Process } from './process.js';
import { feedingKernel } from './kinetics/feeding-kernel.js';
import { feedNitrogen } from './kinetics/feed-nitrogen.js';
import { monod, monodSlope } from './kinetics/limits.js';

/**
 * Feed eaten, per g: growth, faeces, and the rest excreted as TAN (NH4+ with HCO3-) and respired;
 * TAN, oxygen, alkalinity and carbon dioxide by closure. Growth per g of feed is 1/FCR plus what
 * upkeep takes at the ration for which the FCR is stated, so that the FCR itself comes out there.
 * Fish without oxygen do not eat: x M(O2).
 */
export const feeding: Process = {
  id: 'feeding',
  title: 'feed eaten',
  place: 'cohort',
  unit: 'g feed',
  basis: 'whole',
  reads: ['oxygen', 'fish-mass'],
  stoichiometry: (values) => {
    const nitrogen = feedNitrogen(values);
    const growth =
      1 / values.value('species.feed-conversion') +
      values.value('species.fasting-loss') / values.value('species.reference-ration');
    const faecal =
      (nitrogen * (1 - values.value('species.protein-digestibility'))) / values.value('solids.nitrogen');
    return [
      { component: 'feed-nitrogen', coefficient: -nitrogen, outside: 'feed' },
      { component: 'feed-demand', coefficient: -values.value('feed.demand'), outside: 'feed' },
      { component: 'fish-mass', coefficient: growth },
      { component: 'solids', coefficient: faecal },
      { component: 'tan', coefficient: { closes: 'nitrogen' } },
      { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
      { component: 'alkalinity', coefficient: { closes: 'charge' } },
      { component: 'carbon', coefficient: { closes: 'carbon' } },
    ];
  },
  coefficients: (values, at) => {
    const eaten = 1 - values.value('fish.uneaten');
    return [at.fed * eaten, at.fedShare * eaten, values.value('fish.k-oxygen')];
  },
  rate: (v, at, k) => (k[0] + k[1] * v[at[1]]) * monod(v[at[0]], k[2]),
  partials: (v, at, k, d) => {
    d[0] = (k[0] + k[1] * v[at[1]]) * monodSlope(v[at[0]], k[2]);
    d[1] = k[1] * monod(v[at[0]], k[2]);
  },
  kernel: feedingKernel,
};

import type { Values } from '../library/values.js';
import { firstOrder, proportional } from './kernels/first-order.js';
import type { Kernel } from './kernels/kernel.js';
import { arrhenius, monod, monodSlope } from './kernels/rate-terms.js';
import { mineralised } from './kernels/mineral.js';
import type { Process } from './process.js';

/** Feed eaten at every place: coefficients and variables as in `feeding`. */
const feedingKernel: Kernel = {
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += 3) {
      r[row + i] = (k[o] + k[o + 1] * v[at[n + 1]]) * monod(v[at[n]], k[o + 2]);
    }
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += 3) {
      d[n] = (k[o] + k[o + 1] * v[at[n + 1]]) * monodSlope(v[at[n]], k[o + 2]);
      d[n + 1] = k[o + 1] * monod(v[at[n]], k[o + 2]);
    }
  },
};

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
  perFeed: true,
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

/** Feed not eaten at every place: coefficients and variables as in `uneatenFeed`. */
const uneatenKernel: Kernel = {
  rates: ([{ count, row, at, k }], v, r) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += 4) {
      const eaten = k[o + 2] * monod(v[at[n]], k[o + 3]);
      r[row + i] = (k[o] + k[o + 1] * v[at[n + 1]]) * (1 - eaten);
    }
  },
  partials: ([{ count, at, k, d }], v) => {
    for (let i = 0, n = 0, o = 0; i < count; i++, n += 2, o += 4) {
      d[n] = -(k[o] + k[o + 1] * v[at[n + 1]]) * k[o + 2] * monodSlope(v[at[n]], k[o + 3]);
      d[n + 1] = k[o + 1] * (1 - k[o + 2] * monod(v[at[n]], k[o + 3]));
    }
  },
};

/**
 * Feed not eaten, per g: breaks up into suspended solids of the same oxygen demand; nitrogen beyond
 * that of solids leaches as TAN, by closure.
 */
export const uneatenFeed: Process = {
  id: 'uneaten-feed',
  title: 'feed not eaten',
  place: 'cohort',
  perFeed: true,
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

/** Upkeep of fish, per g of body: fed or fasting, body matter is respired and its nitrogen excreted. */
export const upkeep: Process = {
  id: 'upkeep',
  title: 'upkeep of fish (fasting excretion)',
  place: 'cohort',
  unit: 'g fish',
  basis: 'whole',
  reads: ['oxygen', 'fish-mass'],
  stoichiometry: () => mineralised('fish-mass'),
  coefficients: (values, at) => [
    values.value('species.fasting-loss') *
      arrhenius(
        values.value('fish.fasting-theta'),
        at.temperature,
        values.value('species.reference-temperature'),
      ),
    values.value('fish.k-oxygen'),
  ],
  ...firstOrder,
};

/** Fish that die and are taken out, per g of body. */
export const mortality: Process = {
  id: 'mortality',
  title: 'dead fish, mass',
  place: 'cohort',
  unit: 'g fish',
  basis: 'whole',
  reads: ['fish-mass'],
  stoichiometry: () => [
    { component: 'fish-mass', coefficient: -1 },
    { component: 'fish-mass', coefficient: 1, outside: 'dead fish' },
  ],
  coefficients: (values) => [values.value('species.mortality')],
  ...proportional,
};

/** Fish that die and are taken out, per fish. */
export const mortalityCount: Process = {
  id: 'mortality-count',
  title: 'dead fish, number',
  place: 'cohort',
  unit: 'fish',
  basis: 'whole',
  reads: ['fish-number'],
  stoichiometry: () => [
    { component: 'fish-number', coefficient: -1 },
    { component: 'fish-number', coefficient: 1, outside: 'dead fish' },
  ],
  coefficients: (values) => [values.value('species.mortality')],
  ...proportional,
};

/** Nitrogen of feed, g N per g: protein x nitrogen in protein (0.16: the 6.25 convention). */
function feedNitrogen(values: Values): number {
  return values.value('feed.protein') * values.value('protein.nitrogen');
}

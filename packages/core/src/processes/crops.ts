import { hydrogenAt } from '../chemistry/acid-base.js';
import {
  cropCoefficients,
  cropDemand,
  cropDemandPartials,
  cropGrowth,
  cropKernel,
  fruitShare,
  sharePartials,
} from './kernels/crop.js';
import { monod, monodSlope } from './kernels/rate-terms.js';
import { ammoniumAcidity, ammoniumLeft, ammoniumLeftSlope } from './kernels/root-acidity.js';
import type { Process } from './process.js';

/** Growth of a plant without its fruit, per g dry: carbon from air, oxygen to air, by closure. */
export const cropGrowing: Process = {
  id: 'crop-growing',
  title: 'crop growth',
  place: 'batch',
  unit: 'g dry',
  basis: 'whole',
  reads: ['crop-mass', 'crop-nitrogen', 'pH'],
  stoichiometry: () => [
    { component: 'crop-mass', coefficient: 1 },
    { component: 'carbon-dioxide-gas', coefficient: { closes: 'carbon' }, outside: 'air' },
    { component: 'oxygen-gas', coefficient: { closes: 'oxygen-demand' }, outside: 'air' },
  ],
  salted: true,
  coefficients: cropCoefficients,
  rate: (v, at, k) => (1 - fruitShare(k)) * cropGrowth(v[at[0]], v[at[1]], v[at[2]], k),
  partials: (v, at, k, d) => {
    sharePartials(1 - fruitShare(k), v[at[0]], v[at[1]], v[at[2]], k, d);
  },
  kernel: cropKernel,
};

/** Growth of fruit, per g dry: its nitrogen comes out of the plant. */
export const fruitGrowing: Process = {
  id: 'fruit-growing',
  title: 'growth of fruit',
  place: 'batch',
  bears: true,
  unit: 'g dry',
  basis: 'whole',
  reads: ['crop-mass', 'crop-nitrogen', 'pH'],
  stoichiometry: () => [
    { component: 'fruit-mass', coefficient: 1 },
    { component: 'crop-nitrogen', coefficient: { closes: 'nitrogen' } },
    { component: 'carbon-dioxide-gas', coefficient: { closes: 'carbon' }, outside: 'air' },
    { component: 'oxygen-gas', coefficient: { closes: 'oxygen-demand' }, outside: 'air' },
  ],
  salted: true,
  coefficients: cropCoefficients,
  rate: (v, at, k) => fruitShare(k) * cropGrowth(v[at[0]], v[at[1]], v[at[2]], k),
  partials: (v, at, k, d) => {
    sharePartials(fruitShare(k), v[at[0]], v[at[1]], v[at[2]], k, d);
  },
};

/** Share of its uptake that a crop takes as ammonium; [half-saturation, largest share, 1 / H'] begin at k[o]. */
function ammoniumShare(pH: number, tan: number, k: ArrayLike<number>, o: number): number {
  return k[o + 1] * ammoniumLeft(hydrogenAt(pH), k[o + 2]) * monod(tan, k[o]);
}

/** d(ammoniumShare)/d(pH). */
function shareByPh(pH: number, tan: number, k: ArrayLike<number>, o: number): number {
  return k[o + 1] * ammoniumLeftSlope(ammoniumLeft(hydrogenAt(pH), k[o + 2])) * monod(tan, k[o]);
}

/** d(ammoniumShare)/d(TAN). */
function shareByTan(pH: number, tan: number, k: ArrayLike<number>, o: number): number {
  return k[o + 1] * ammoniumLeft(hydrogenAt(pH), k[o + 2]) * monodSlope(tan, k[o]);
}

/**
 * Nitrate taken up by a crop, per g N: demand x M(nitrate) x the share not met by ammonium, which is larger in acid water.
 * Strong cations go with it (`crop.cations`, e eq per mol N), so that it gives 1 - e eq of alkalinity per mol N
 * back, about 0.1; the oxygen freed in its reduction goes to air by the leaves.
 */
export const nitrateUptake: Process = {
  id: 'nitrate-uptake',
  title: 'nitrate uptake by crops',
  place: 'batch',
  unit: 'g N',
  basis: 'whole',
  reads: ['crop-mass', 'crop-nitrogen', 'pH', 'nitrate', 'tan'],
  stoichiometry: () => [
    { component: 'nitrate', coefficient: -1 },
    { component: 'crop-nitrogen', coefficient: 1 },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
    { component: 'oxygen-gas', coefficient: { closes: 'oxygen-demand' }, outside: 'air' },
  ],
  salted: true,
  coefficients: (values, at) => [
    ...cropCoefficients(values, at),
    values.value('crop.k-nitrate'),
    values.value('crop.k-tan'),
    values.value('crop.tan-share'),
    ammoniumAcidity(values),
  ],
  rate: (v, at, k) =>
    cropDemand(v[at[0]], v[at[1]], v[at[2]], k) *
    monod(v[at[3]], k[13]) *
    (1 - ammoniumShare(v[at[2]], v[at[4]], k, 14)),
  partials: (v, at, k, d) => {
    const demand = cropDemandPartials(v[at[0]], v[at[1]], v[at[2]], k, d);
    const nitrate = monod(v[at[3]], k[13]);
    const left = 1 - ammoniumShare(v[at[2]], v[at[4]], k, 14);
    for (let m = 0; m < 3; m++) d[m] *= nitrate * left;
    d[2] -= demand * nitrate * shareByPh(v[at[2]], v[at[4]], k, 14);
    d[3] = demand * monodSlope(v[at[3]], k[13]) * left;
    d[4] = -demand * nitrate * shareByTan(v[at[2]], v[at[4]], k, 14);
  },
  kernel: cropKernel,
};

/**
 * Ammonium taken up by a crop, per g N: demand x M(TAN) x its largest share, less in acid water. With the strong cations that go with it
 * (`crop.cations`, e eq per mol N) it takes 1 + e eq of alkalinity per mol N.
 */
export const tanUptake: Process = {
  id: 'tan-uptake',
  title: 'ammonium uptake by crops',
  place: 'batch',
  unit: 'g N',
  basis: 'whole',
  reads: ['crop-mass', 'crop-nitrogen', 'pH', 'tan'],
  stoichiometry: () => [
    { component: 'tan', coefficient: -1 },
    { component: 'crop-nitrogen', coefficient: 1 },
    { component: 'alkalinity', coefficient: { closes: 'charge' } },
  ],
  salted: true,
  coefficients: (values, at) => [
    ...cropCoefficients(values, at),
    values.value('crop.k-tan'),
    values.value('crop.tan-share'),
    ammoniumAcidity(values),
  ],
  rate: (v, at, k) => cropDemand(v[at[0]], v[at[1]], v[at[2]], k) * ammoniumShare(v[at[2]], v[at[3]], k, 13),
  partials: (v, at, k, d) => {
    const demand = cropDemandPartials(v[at[0]], v[at[1]], v[at[2]], k, d);
    const share = ammoniumShare(v[at[2]], v[at[3]], k, 13);
    for (let m = 0; m < 3; m++) d[m] *= share;
    d[2] += demand * shareByPh(v[at[2]], v[at[3]], k, 13);
    d[3] = demand * shareByTan(v[at[2]], v[at[3]], k, 13);
  },
  kernel: cropKernel,
};

/**
 * Calcium taken up by a crop, per mol: so much per mol of nitrogen that it takes up x M(calcium). It stands for part of
 * the strong cations that go with the nitrogen, so alkalinity is the same with it and without.
 */
export const calciumUptake: Process = {
  id: 'calcium-uptake',
  title: 'calcium uptake by crops',
  place: 'batch',
  unit: 'mol',
  basis: 'whole',
  reads: ['crop-mass', 'crop-nitrogen', 'pH', 'nitrate', 'tan', 'calcium'],
  stoichiometry: () => [
    { component: 'calcium', coefficient: -1 },
    { component: 'crop-calcium', coefficient: 1, outside: 'harvested crop' },
  ],
  salted: true,
  coefficients: (values, at) => [
    ...cropCoefficients(values, at),
    values.value('crop.k-nitrate'),
    values.value('crop.k-tan'),
    values.value('crop.tan-share'),
    ammoniumAcidity(values),
    values.value('crop.calcium') / values.value('molar.nitrogen'),
    values.value('crop.k-calcium'),
  ],
  rate: (v, at, k) => {
    const ammonium = ammoniumShare(v[at[2]], v[at[4]], k, 14);
    const share = monod(v[at[3]], k[13]) * (1 - ammonium) + ammonium;
    return k[17] * cropDemand(v[at[0]], v[at[1]], v[at[2]], k) * share * monod(v[at[5]], k[18]);
  },
  partials: (v, at, k, d) => {
    const demand = cropDemandPartials(v[at[0]], v[at[1]], v[at[2]], k, d);
    const nitrate = monod(v[at[3]], k[13]);
    const ammonium = ammoniumShare(v[at[2]], v[at[4]], k, 14);
    const share = nitrate * (1 - ammonium) + ammonium;
    const calcium = k[17] * monod(v[at[5]], k[18]);
    for (let m = 0; m < 3; m++) d[m] *= share * calcium;
    d[2] += demand * shareByPh(v[at[2]], v[at[4]], k, 14) * (1 - nitrate) * calcium;
    d[3] = demand * monodSlope(v[at[3]], k[13]) * (1 - ammonium) * calcium;
    d[4] = demand * shareByTan(v[at[2]], v[at[4]], k, 14) * (1 - nitrate) * calcium;
    d[5] = demand * share * k[17] * monodSlope(v[at[5]], k[18]);
  },
  kernel: cropKernel,
};

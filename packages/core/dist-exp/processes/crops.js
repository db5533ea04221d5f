import { cropCoefficients, cropDemand, cropDemandPartials, cropGrowth, cropKernel, fruitShare, sharePartials, } from './kernels/crop.js';
import { monod, monodSlope } from './kernels/rate-terms.js';
/** Growth of a plant without its fruit, per g dry: carbon from air, oxygen to air, by closure. */
export const cropGrowing = {
    id: 'crop-growing',
    title: 'crop growth',
    place: 'batch',
    unit: 'g dry',
    basis: 'whole',
    reads: ['crop-mass', 'crop-nitrogen'],
    stoichiometry: () => [
        { component: 'crop-mass', coefficient: 1 },
        { component: 'carbon-dioxide-gas', coefficient: { closes: 'carbon' }, outside: 'air' },
        { component: 'oxygen-gas', coefficient: { closes: 'oxygen-demand' }, outside: 'air' },
    ],
    coefficients: cropCoefficients,
    rate: (v, at, k) => (1 - fruitShare(k)) * cropGrowth(v[at[0]], v[at[1]], k),
    partials: (v, at, k, d) => {
        sharePartials(1 - fruitShare(k), v[at[0]], v[at[1]], k, d);
    },
    kernel: cropKernel,
};
/** Growth of fruit, per g dry: its nitrogen comes out of the plant. */
export const fruitGrowing = {
    id: 'fruit-growing',
    title: 'growth of fruit',
    place: 'batch',
    bears: true,
    unit: 'g dry',
    basis: 'whole',
    reads: ['crop-mass', 'crop-nitrogen'],
    stoichiometry: () => [
        { component: 'fruit-mass', coefficient: 1 },
        { component: 'crop-nitrogen', coefficient: { closes: 'nitrogen' } },
        { component: 'carbon-dioxide-gas', coefficient: { closes: 'carbon' }, outside: 'air' },
        { component: 'oxygen-gas', coefficient: { closes: 'oxygen-demand' }, outside: 'air' },
    ],
    coefficients: cropCoefficients,
    rate: (v, at, k) => fruitShare(k) * cropGrowth(v[at[0]], v[at[1]], k),
    partials: (v, at, k, d) => {
        sharePartials(fruitShare(k), v[at[0]], v[at[1]], k, d);
    },
};
/**
 * Nitrate taken up by a crop, per g N: demand x M(nitrate) x the share not met by ammonium.
 * Strong cations go with it (`crop.cations`, e eq per mol N), so that it gives 1 - e eq of alkalinity per mol N
 * back, about 0.1; the oxygen freed in its reduction goes to air by the leaves.
 */
export const nitrateUptake = {
    id: 'nitrate-uptake',
    title: 'nitrate uptake by crops',
    place: 'batch',
    unit: 'g N',
    basis: 'whole',
    reads: ['crop-mass', 'crop-nitrogen', 'nitrate', 'tan'],
    stoichiometry: () => [
        { component: 'nitrate', coefficient: -1 },
        { component: 'crop-nitrogen', coefficient: 1 },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
        { component: 'oxygen-gas', coefficient: { closes: 'oxygen-demand' }, outside: 'air' },
    ],
    coefficients: (values, at) => [
        ...cropCoefficients(values, at),
        values.value('crop.k-nitrate'),
        values.value('crop.k-tan'),
        values.value('crop.tan-share'),
    ],
    rate: (v, at, k) => cropDemand(v[at[0]], v[at[1]], k) * monod(v[at[2]], k[10]) * (1 - k[12] * monod(v[at[3]], k[11])),
    partials: (v, at, k, d) => {
        const demand = cropDemandPartials(v[at[0]], v[at[1]], k, d);
        const nitrate = monod(v[at[2]], k[10]);
        const left = 1 - k[12] * monod(v[at[3]], k[11]);
        d[0] *= nitrate * left;
        d[1] *= nitrate * left;
        d[2] = demand * monodSlope(v[at[2]], k[10]) * left;
        d[3] = -demand * nitrate * k[12] * monodSlope(v[at[3]], k[11]);
    },
    kernel: cropKernel,
};
/**
 * Ammonium taken up by a crop, per g N: demand x M(TAN) x its largest share. With the strong cations that go with it
 * (`crop.cations`, e eq per mol N) it takes 1 + e eq of alkalinity per mol N.
 */
export const tanUptake = {
    id: 'tan-uptake',
    title: 'ammonium uptake by crops',
    place: 'batch',
    unit: 'g N',
    basis: 'whole',
    reads: ['crop-mass', 'crop-nitrogen', 'tan'],
    stoichiometry: () => [
        { component: 'tan', coefficient: -1 },
        { component: 'crop-nitrogen', coefficient: 1 },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
    ],
    coefficients: (values, at) => [
        ...cropCoefficients(values, at),
        values.value('crop.k-tan'),
        values.value('crop.tan-share'),
    ],
    rate: (v, at, k) => cropDemand(v[at[0]], v[at[1]], k) * k[11] * monod(v[at[2]], k[10]),
    partials: (v, at, k, d) => {
        const demand = cropDemandPartials(v[at[0]], v[at[1]], k, d);
        const share = k[11] * monod(v[at[2]], k[10]);
        d[0] *= share;
        d[1] *= share;
        d[2] = demand * k[11] * monodSlope(v[at[2]], k[10]);
    },
    kernel: cropKernel,
};
/**
 * Calcium taken up by a crop, per mol: so much per mol of nitrogen that it takes up x M(calcium). It stands for part of
 * the strong cations that go with the nitrogen, so alkalinity is the same with it and without.
 */
export const calciumUptake = {
    id: 'calcium-uptake',
    title: 'calcium uptake by crops',
    place: 'batch',
    unit: 'mol',
    basis: 'whole',
    reads: ['crop-mass', 'crop-nitrogen', 'nitrate', 'tan', 'calcium'],
    stoichiometry: () => [
        { component: 'calcium', coefficient: -1 },
        { component: 'crop-calcium', coefficient: 1, outside: 'harvested crop' },
    ],
    coefficients: (values, at) => [
        ...cropCoefficients(values, at),
        values.value('crop.k-nitrate'),
        values.value('crop.k-tan'),
        values.value('crop.tan-share'),
        values.value('crop.calcium') / values.value('molar.nitrogen'),
        values.value('crop.k-calcium'),
    ],
    rate: (v, at, k) => {
        const ammonium = k[12] * monod(v[at[3]], k[11]);
        const share = monod(v[at[2]], k[10]) * (1 - ammonium) + ammonium;
        return k[13] * cropDemand(v[at[0]], v[at[1]], k) * share * monod(v[at[4]], k[14]);
    },
    partials: (v, at, k, d) => {
        const demand = cropDemandPartials(v[at[0]], v[at[1]], k, d);
        const nitrate = monod(v[at[2]], k[10]);
        const ammonium = k[12] * monod(v[at[3]], k[11]);
        const share = nitrate * (1 - ammonium) + ammonium;
        const calcium = k[13] * monod(v[at[4]], k[14]);
        d[0] *= share * calcium;
        d[1] *= share * calcium;
        d[2] = demand * monodSlope(v[at[2]], k[10]) * (1 - ammonium) * calcium;
        d[3] = demand * k[12] * monodSlope(v[at[3]], k[11]) * (1 - nitrate) * calcium;
        d[4] = demand * share * k[13] * monodSlope(v[at[4]], k[14]);
    },
    kernel: cropKernel,
};
//# sourceMappingURL=crops.js.map
import { dissolvedKernel, withNitrate, withOxygen } from './kernels/dissolved.js';
import { proportional } from './kernels/first-order.js';
import { arrhenius } from './kernels/rate-terms.js';
const burning = (values, at) => [
    values.value('dissolved.oxidation') * arrhenius(values.value('solids.theta'), at.temperature),
    values.value('solids.k-oxygen'),
    values.value('dissolved.k-tan'),
];
/** Cells that grow on 1 g COD, as suspended solids, g dry. */
const cells = (values) => values.value('solids.yield') / values.value('solids.demand');
/**
 * Dissolved matter taken up by bacteria of the water with oxygen, per g COD: a share becomes cells (suspended solids,
 * with nitrogen from TAN), the rest is burnt. First order in what is there. Henze et al. 1987.
 */
export const dissolvedOxidation = {
    id: 'dissolved-oxidation',
    title: 'oxidation of dissolved matter',
    place: 'water',
    unit: 'g COD',
    basis: 'volume',
    reads: ['oxygen', 'tan', 'dissolved'],
    stoichiometry: (values) => [
        { component: 'dissolved', coefficient: -1 },
        { component: 'solids', coefficient: cells(values) },
        { component: 'tan', coefficient: { closes: 'nitrogen' } },
        { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
        { component: 'carbon', coefficient: { closes: 'carbon' } },
    ],
    coefficients: burning,
    ...withOxygen,
    kernel: dissolvedKernel,
};
/** The same with nitrate where oxygen is short, per g COD: 2.86 g COD per g N of what is burnt. */
export const dissolvedDenitrification = {
    id: 'dissolved-denitrification',
    title: 'denitrification with dissolved matter',
    place: 'water',
    unit: 'g COD',
    basis: 'volume',
    reads: ['oxygen', 'tan', 'nitrate', 'dissolved'],
    stoichiometry: (values) => {
        const nitrate = ((1 - values.value('solids.yield')) * values.value('molar.nitrogen')) /
            (1.25 * values.value('molar.oxygen-gas'));
        return [
            { component: 'dissolved', coefficient: -1 },
            { component: 'solids', coefficient: cells(values) },
            { component: 'nitrate', coefficient: -nitrate },
            { component: 'dinitrogen', coefficient: nitrate, outside: 'air' },
            { component: 'tan', coefficient: { closes: 'nitrogen' } },
            { component: 'alkalinity', coefficient: { closes: 'charge' } },
            { component: 'carbon', coefficient: { closes: 'carbon' } },
        ];
    },
    coefficients: (values, at) => [
        ...burning(values, at),
        values.value('denitrification.activity'),
        values.value('denitrification.k-nitrate'),
    ],
    ...withNitrate,
    kernel: dissolvedKernel,
};
/** Organic nitrogen to TAN, per g N: urea and the like, first order. */
export const ammonification = {
    id: 'ammonification',
    title: 'organic nitrogen to ammonia',
    place: 'water',
    unit: 'g N',
    basis: 'volume',
    reads: ['organic-nitrogen'],
    stoichiometry: () => [
        { component: 'organic-nitrogen', coefficient: -1 },
        { component: 'tan', coefficient: 1 },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
    ],
    coefficients: (values, at) => [
        values.value('organic-nitrogen.ammonification') * arrhenius(values.value('solids.theta'), at.temperature),
    ],
    ...proportional,
};
//# sourceMappingURL=dissolved.js.map
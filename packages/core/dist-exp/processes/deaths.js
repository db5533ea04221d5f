import { arrhenius } from './kernels/rate-terms.js';
import { deaths, hazardCoefficients, hazardReads } from './kernels/hazard.js';
import { leanDemand } from './kernels/lean-body.js';
import { proportional } from './kernels/first-order.js';
const dying = { place: 'cohort', basis: 'whole', coefficients: hazardCoefficients, ...deaths };
/** Fish that die and are taken out, per g of body. */
export const mortality = {
    ...dying,
    id: 'mortality',
    title: 'dead fish, mass',
    unit: 'g fish',
    whose: ({ dead }) => dead !== 'left',
    reads: [...hazardReads, 'fish-mass'],
    stoichiometry: () => [
        { component: 'fish-mass', coefficient: -1 },
        { component: 'fish-mass', coefficient: 1, outside: 'dead fish' },
    ],
};
/** The fat of fish that die and are taken out, per g COD. */
export const mortalityFat = {
    ...dying,
    id: 'mortality-fat',
    title: 'dead fish, fat',
    unit: 'g COD',
    whose: ({ dead }) => dead !== 'left',
    reads: [...hazardReads, 'fish-fat'],
    stoichiometry: () => [
        { component: 'fish-fat', coefficient: -1 },
        { component: 'fish-fat', coefficient: 1, outside: 'dead fish' },
    ],
};
/** Fish that die, per fish. */
export const mortalityCount = {
    ...dying,
    id: 'mortality-count',
    title: 'dead fish, number',
    unit: 'fish',
    reads: [...hazardReads, 'fish-number'],
    stoichiometry: () => [
        { component: 'fish-number', coefficient: -1 },
        { component: 'fish-number', coefficient: 1, outside: 'dead fish' },
    ],
};
/** Fish that die and are left in the water, per g of body. */
export const mortalityLeft = {
    ...dying,
    id: 'mortality-left',
    title: 'dead fish left in the water, mass',
    unit: 'g fish',
    whose: ({ dead }) => dead === 'left',
    reads: [...hazardReads, 'fish-mass'],
    stoichiometry: () => [
        { component: 'fish-mass', coefficient: -1 },
        { component: 'fish-dead', coefficient: 1 },
    ],
};
/** The fat of fish that die and are left in the water, per g COD. */
export const mortalityLeftFat = {
    ...dying,
    id: 'mortality-left-fat',
    title: 'dead fish left in the water, fat',
    unit: 'g COD',
    whose: ({ dead }) => dead === 'left',
    reads: [...hazardReads, 'fish-fat'],
    stoichiometry: () => [
        { component: 'fish-fat', coefficient: -1 },
        { component: 'fish-dead-fat', coefficient: 1 },
    ],
};
const rotting = {
    place: 'cohort',
    basis: 'whole',
    whose: ({ dead }) => dead === 'left',
    coefficients: (values, at) => [
        values.value('fish.rot') * arrhenius(values.value('fish.rot-theta'), at.temperature, 25),
    ],
    ...proportional,
};
/** Dead fish that rot, per g: dissolved organic matter and dissolved organic nitrogen (Boros et al. 2015). */
export const rot = {
    ...rotting,
    id: 'rot',
    title: 'dead fish rotting',
    unit: 'g fish',
    reads: ['fish-dead'],
    stoichiometry: (values) => [
        { component: 'fish-dead', coefficient: -1 },
        { component: 'dissolved', coefficient: leanDemand(values) },
        { component: 'organic-nitrogen', coefficient: { closes: 'nitrogen' } },
    ],
};
/** The fat of dead fish that rot, per g COD. */
export const rotFat = {
    ...rotting,
    id: 'rot-fat',
    title: 'fat of dead fish rotting',
    unit: 'g COD',
    reads: ['fish-dead-fat'],
    stoichiometry: () => [
        { component: 'fish-dead-fat', coefficient: -1 },
        { component: 'dissolved', coefficient: 1 },
    ],
};
//# sourceMappingURL=deaths.js.map
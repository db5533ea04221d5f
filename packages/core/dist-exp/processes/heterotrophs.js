import { proportional } from './kernels/first-order.js';
import { heterotrophCoefficients, heterotrophGrowing } from './kernels/heterotroph.js';
import { arrhenius } from './kernels/rate-terms.js';
/**
 * Growth of heterotrophs on a surface, per g COD of cells: 1/Y g COD of dissolved matter, (1 - Y)/Y g O2, cell nitrogen
 * from TAN. Henze et al. 1987 (ASM1), limited by what comes through the still water over the film.
 */
export const heterotrophGrowth = {
    id: 'heterotroph-growth',
    title: 'growth of heterotrophs on surfaces',
    place: 'surface',
    unit: 'g COD',
    basis: 'whole',
    reads: ['dissolved', 'oxygen', 'tan', 'heterotrophs'],
    stoichiometry: (values) => [
        { component: 'heterotrophs', coefficient: 1 },
        { component: 'dissolved', coefficient: -1 / values.value('heterotroph.yield') },
        { component: 'tan', coefficient: { closes: 'nitrogen' } },
        { component: 'oxygen', coefficient: { closes: 'oxygen-demand' } },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
        { component: 'carbon', coefficient: { closes: 'carbon' } },
    ],
    coefficients: heterotrophCoefficients,
    ...heterotrophGrowing,
};
/**
 * Decay and detachment of heterotrophs, per g COD, first order: they become suspended solids of the same oxygen demand,
 * what nitrogen these do not hold goes to TAN. Henze et al. 1987 (death and regeneration).
 */
export const heterotrophLoss = {
    id: 'heterotroph-loss',
    title: 'decay and detachment of heterotrophs',
    place: 'surface',
    unit: 'g COD',
    basis: 'whole',
    reads: ['heterotrophs'],
    stoichiometry: (values) => [
        { component: 'heterotrophs', coefficient: -1 },
        { component: 'solids', coefficient: 1 / values.value('solids.demand') },
        { component: 'tan', coefficient: { closes: 'nitrogen' } },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
    ],
    coefficients: (values, at) => [
        values.value('heterotroph.decay') * arrhenius(values.value('heterotroph.decay-theta'), at.temperature),
    ],
    ...proportional,
};
//# sourceMappingURL=heterotrophs.js.map
import { calciteAttack } from '../chemistry/calcite.js';
import { dissolving, scaling } from './kernels/calcite.js';
/**
 * Lime that dissolves, per mol: active share x area x (k1 h + k2 CO2 + k3) x what is wanting of saturation. Plummer,
 * Wigley & Parkhurst 1978, with 1 - saturation for their 1 - saturation^(2/3), and the area in proportion to the mass:
 * the same at both ends, without an infinite slope where nothing is left.
 */
export const dissolution = {
    id: 'lime-dissolution',
    title: 'dissolution of lime',
    place: 'lime',
    unit: 'mol',
    basis: 'whole',
    reads: ['calcium', 'saturation', 'pH', 'carbon-dioxide', 'calcite'],
    stoichiometry: () => [
        { component: 'calcite', coefficient: -1 },
        { component: 'calcium', coefficient: { closes: 'calcium' } },
        { component: 'carbon', coefficient: { closes: 'carbon' } },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
    ],
    coefficients: (values, at) => {
        const area = values.value('lime.area') * values.value('molar.calcium-carbonate');
        const { hydrogen, carbonDioxide, water } = calciteAttack(values, at.temperature);
        return [values.value('lime.active') * area, hydrogen, carbonDioxide, water];
    },
    ...dissolving,
};
/**
 * Lime that falls on wetted surface, per mol: rate x surface x how far saturation is beyond that at which it begins.
 */
export const scale = {
    id: 'lime-scale',
    title: 'lime scale',
    place: 'lime',
    unit: 'mol',
    basis: 'whole',
    reads: ['calcium', 'saturation'],
    stoichiometry: () => [
        { component: 'calcite', coefficient: 1 },
        { component: 'calcium', coefficient: { closes: 'calcium' } },
        { component: 'carbon', coefficient: { closes: 'carbon' } },
        { component: 'alkalinity', coefficient: { closes: 'charge' } },
    ],
    coefficients: (values, at) => [
        values.value('lime.scale-rate') * at.surface,
        values.value('lime.scale-onset'),
    ],
    ...scaling,
};
//# sourceMappingURL=lime.js.map
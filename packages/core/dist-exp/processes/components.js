import { leanDemand } from './kernels/lean-body.js';
/** What is dissolved or suspended in the water of a vessel, in the order of its states. */
export const waterComponents = [
    'tan',
    'nitrite',
    'nitrate',
    'solids',
    'refractory',
    'dissolved',
    'organic-nitrogen',
    'alkalinity',
    'carbon',
    'oxygen',
    'chloride',
    'calcium',
];
/** What a product that is dosed may bring to the water at once. */
export const dosedComponents = [
    'tan',
    'alkalinity',
    'carbon',
    'chloride',
    'nitrate',
    'calcium',
];
/** Everything outside the vessels, by name. Nothing is exempt from the balance. */
export const accounts = [
    'feed',
    'source water',
    'air',
    'sludge',
    'discharge',
    'stocked fish',
    'harvested fish',
    'graded fish',
    'dead fish',
    'seedlings',
    'harvested crop',
    'dosing',
    'treatment',
];
/** Unit in which a component is counted. */
export const unitOf = {
    tan: 'g N',
    nitrite: 'g N',
    nitrate: 'g N',
    solids: 'g dry',
    refractory: 'g dry',
    dissolved: 'g COD',
    'organic-nitrogen': 'g N',
    alkalinity: 'eq',
    carbon: 'mol C',
    oxygen: 'g O2',
    chloride: 'g Cl',
    calcium: 'mol Ca',
    aob: 'g COD',
    nob: 'g COD',
    acclimation: 'pH',
    awake: '1',
    heterotrophs: 'g COD',
    settled: 'g dry',
    'settled-refractory': 'g dry',
    calcite: 'mol',
    'crop-mass': 'g dry',
    'crop-nitrogen': 'g N',
    'fruit-mass': 'g dry',
    'fish-mass': 'g',
    'fish-number': 'fish',
    'fish-fat': 'g COD',
    'fish-dead': 'g',
    'fish-dead-fat': 'g COD',
    'feed-nitrogen': 'g N',
    'feed-demand': 'g COD',
    dinitrogen: 'g N',
    'ammonia-gas': 'g N',
    'oxygen-gas': 'g O2',
    'carbon-dioxide-gas': 'mol C',
    base: 'eq',
    'crop-calcium': 'mol Ca',
    water: 'm3',
};
/** Quantities that nothing in the model may make or destroy. */
export const conserved = [
    'nitrogen',
    'oxygen-demand',
    'charge',
    'chloride',
    'carbon',
    'calcium',
    'water',
];
const nothing = {
    nitrogen: 0,
    'oxygen-demand': 0,
    charge: 0,
    chloride: 0,
    carbon: 0,
    calcium: 0,
    water: 0,
};
/** Organic matter, g COD, with so much nitrogen; carbon at a respiratory quotient of 1: one mol of C per mol of O2. */
function organic(demand, nitrogen, values) {
    return {
        ...nothing,
        nitrogen,
        'oxygen-demand': demand,
        carbon: demand / values.value('molar.oxygen-gas'),
    };
}
/**
 * Content of one unit of a component. Oxygen demand is counted against ammonia, water and carbon
 * dioxide, so that nitrite owes -3/2, nitrate -2 and nitrogen gas -3/4 mol O2 per mol N (-3.43,
 * -4.57, -1.71 g/g: half reactions).
 * @param component which
 * @param values the tables, scoped to the place (`species.*` needs a species there)
 */
export function contentOf(component, values) {
    const perNitrogen = 1 / values.value('molar.nitrogen');
    const oxygen = values.value('molar.oxygen-gas');
    switch (component) {
        case 'tan':
            return { ...nothing, nitrogen: 1, charge: -perNitrogen };
        case 'nitrite':
            return { ...nothing, nitrogen: 1, 'oxygen-demand': -1.5 * oxygen * perNitrogen, charge: perNitrogen };
        case 'nitrate':
            return { ...nothing, nitrogen: 1, 'oxygen-demand': -2 * oxygen * perNitrogen, charge: perNitrogen };
        case 'dinitrogen':
            return { ...nothing, nitrogen: 1, 'oxygen-demand': -0.75 * oxygen * perNitrogen };
        case 'ammonia-gas':
        case 'feed-nitrogen':
        case 'organic-nitrogen':
            return { ...nothing, nitrogen: 1 };
        case 'crop-nitrogen':
            return { ...nothing, nitrogen: 1, charge: values.value('crop.cations') * perNitrogen };
        case 'alkalinity':
        case 'base':
            return { ...nothing, charge: 1 };
        case 'carbon':
        case 'carbon-dioxide-gas':
            return { ...nothing, carbon: 1 };
        case 'oxygen':
        case 'oxygen-gas':
            return { ...nothing, 'oxygen-demand': -1 };
        case 'chloride':
            return { ...nothing, chloride: 1, charge: 1 / values.value('molar.chlorine') };
        case 'calcium':
        case 'crop-calcium':
            return { ...nothing, calcium: 1, charge: -2 };
        case 'calcite':
            return { ...nothing, calcium: 1, carbon: 1 };
        case 'water':
            return { ...nothing, water: 1 };
        case 'solids':
        case 'settled':
            return organic(values.value('solids.demand'), values.value('solids.nitrogen'), values);
        case 'refractory':
        case 'settled-refractory':
            return organic(values.value('solids.refractory-demand'), values.value('solids.refractory-nitrogen'), values);
        case 'aob':
        case 'nob':
            return organic(1, values.value('nitrifier.nitrogen'), values);
        case 'heterotrophs':
            return organic(1, values.value('heterotroph.nitrogen'), values);
        case 'crop-mass':
            return organic(values.value('crop.demand'), 0, values);
        case 'fruit-mass': {
            const nitrogen = values.value('crop.fruit-nitrogen');
            // As much strong cation a mol of nitrogen as in the plant, from which it comes.
            const charge = nitrogen * perNitrogen * values.value('crop.cations');
            return { ...organic(values.value('crop.demand'), nitrogen, values), charge };
        }
        case 'feed-demand':
        case 'dissolved':
        case 'fish-fat':
        case 'fish-dead-fat':
            return organic(1, 0, values);
        case 'fish-mass':
        case 'fish-dead':
            return organic(leanDemand(values), values.value('species.body-nitrogen'), values);
        case 'fish-number':
        case 'acclimation':
        case 'awake':
            return nothing;
    }
}
//# sourceMappingURL=components.js.map
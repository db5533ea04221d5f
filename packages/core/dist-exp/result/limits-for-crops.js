import { limitFrom } from './limit-check.js';
/** Crops grown for their fruit, in the sense of FAO 589 (feed per area differs from leafy crops). */
const fruiting = ['tomato', 'cucumber', 'eggplant', 'pepper', 'bean'];
/** Area planted with leafy and with fruiting crops, m2. */
export function areaByClass(plantings) {
    const area = (wanted) => plantings
        .filter(({ crop }) => fruiting.includes(crop) === wanted)
        .reduce((total, planting) => total + planting.area, 0);
    return { leafy: area(false), fruiting: area(true) };
}
const rules = [
    {
        quantity: 'chloride',
        unit: 'mg/L',
        direction: 'above',
        property: 'chloride-high',
        averaging: 'limit.ph-high.averaging',
    },
    { quantity: 'pH', unit: 'pH', direction: 'below', property: 'ph-low', averaging: 'limit.ph-low.averaging' },
    {
        quantity: 'pH',
        unit: 'pH',
        direction: 'above',
        property: 'ph-high',
        averaging: 'limit.ph-high.averaging',
    },
];
/** Limits for each planting in the water of its vessel, which matter while a crop stands. */
export function limitsForCrops(reader) {
    return reader.run.model.scenario.plantings.flatMap(({ name, crop, vessel }) => {
        const mass = reader.values(`crop-mass@${name}`);
        return rules.map(({ property, ...rule }) => ({
            limit: limitFrom(reader.parameters, {
                ...rule,
                harm: 'crop',
                id: `crop.${crop}.${property}`,
                whom: crop,
            }),
            place: vessel,
            values: reader.values(`${rule.quantity}@${vessel}`),
            matters: (index) => mass[index] > 0,
        }));
    });
}
//# sourceMappingURL=limits-for-crops.js.map
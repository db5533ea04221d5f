// Reads numbers as: limits for crops
import type { Planting } from '../scenario/scenario.js';
import { type Limit, type LimitCheck, limitFrom, type LimitReader } from './limit-check.js';

/** Crops grown for their fruit, in the sense of FAO 589 (feed per area differs from leafy crops). */
const fruiting = ['tomato', 'cucumber', 'eggplant', 'pepper', 'bean'];

/** Area planted with leafy and with fruiting crops, m2. */
export function areaByClass(plantings: readonly Planting[]): {
  readonly leafy: number;
  readonly fruiting: number;
} {
  const area = (wanted: boolean): number =>
    plantings
      .filter(({ crop }) => fruiting.includes(crop) === wanted)
      .reduce((total, planting) => total + planting.area, 0);
  return { leafy: area(false), fruiting: area(true) };
}

const rules: readonly (Pick<Limit, 'quantity' | 'unit' | 'direction'> & {
  readonly property: string;
  readonly averaging: string;
})[] = [
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
export function limitsForCrops(reader: LimitReader): readonly LimitCheck[] {
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
      matters: (index: number) => mass[index] > 0,
    }));
  });
}

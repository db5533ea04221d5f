import type { Limit, LimitCheck, LimitReader } from './limit-check.js';
import { limitFrom } from './limit-check.js';

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
      limit: limitFrom(reader.parameters, { ...rule, id: `crop.${crop}.${property}`, whom: crop }),
      place: vessel,
      values: reader.values(`${rule.quantity}@${vessel}`),
      matters: (index: number) => mass[index] > 0,
    }));
  });
}

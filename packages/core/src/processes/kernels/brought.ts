import { dosedComponents, type WaterComponent } from '../components.js';

/** What one g of a product brings of a component, in its unit. */
export type Brought = readonly [component: (typeof dosedComponents)[number] | 'calcite', amount: number];

/** What a product is said to bring, per g; `calcite` is the share of its calcium that comes as lime. */
export type ProductContent = Readonly<Record<Brought[0], number>>;

/** What a mol of lime takes with it. */
const perLime: Partial<Record<WaterComponent, number>> = { alkalinity: 2, carbon: 1, calcium: 1 };

/**
 * What one g of a product brings, where that is anything: a share of its calcium as lime, with its part of alkalinity and
 * carbon, which dissolves where it lies; all else is in the water at once.
 */
export function brought(content: ProductContent): readonly Brought[] {
  const calcite = content.calcite * content.calcium;
  const inWater = dosedComponents.map((component): Brought => [
    component,
    content[component] - (perLime[component] ?? 0) * calcite,
  ]);
  return [...inWater, ['calcite', calcite] as const].filter(([, amount]) => amount !== 0);
}

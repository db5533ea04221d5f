import { dosedComponents } from '../components.js';
/** What a mol of lime takes with it. */
const perLime = { alkalinity: 2, carbon: 1, calcium: 1 };
/**
 * What one g of a product brings, where that is anything: a share of its calcium as lime, with its part of alkalinity and
 * carbon, which dissolves where it lies; all else is in the water at once.
 */
export function brought(content) {
    const calcite = content.calcite * content.calcium;
    const inWater = dosedComponents.map((component) => [
        component,
        content[component] - (perLime[component] ?? 0) * calcite,
    ]);
    return [...inWater, ['calcite', calcite]].filter(([, amount]) => amount !== 0);
}
//# sourceMappingURL=brought.js.map
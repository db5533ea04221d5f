import { dosedComponents } from '../components.js';
/** What one g of a product brings of a component, in its unit. */
export type Brought = readonly [component: (typeof dosedComponents)[number] | 'calcite', amount: number];
/** What a product is said to bring, per g; `calcite` is the share of its calcium that comes as lime. */
export type ProductContent = Readonly<Record<Brought[0], number>>;
/**
 * What one g of a product brings, where that is anything: a share of its calcium as lime, with its part of alkalinity and
 * carbon, which dissolves where it lies; all else is in the water at once.
 */
export declare function brought(content: ProductContent): readonly Brought[];
//# sourceMappingURL=brought.d.ts.map
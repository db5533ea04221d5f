import { type Layout } from './layout.js';
import type { Tables } from './scope.js';
/**
 * What a mass of a product brings to the states of a vessel: [state, amount] of each.
 * @param mass g
 * @throws RangeError where it brings what has no place there
 */
export declare function dosedTo(layout: Layout, tables: Tables, vessel: string, product: string, mass: number): readonly (readonly [state: number, amount: number])[];
//# sourceMappingURL=dosed.d.ts.map
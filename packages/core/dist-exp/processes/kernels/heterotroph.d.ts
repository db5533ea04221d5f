import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
import type { Kernel } from './kernel.js';
/**
 * [mu, K of dissolved matter, K_O2, K_TAN, transfer of dissolved matter and of oxygen in g COD of growth that they
 * allow (m3 d-1 g COD g-1), cells that the water always brings (g COD)].
 */
export declare function heterotrophCoefficients(values: Values, at: Conditions): readonly number[];
/**
 * Growth of heterotrophs of a surface, g COD d-1. Variables: dissolved matter, oxygen, TAN, cells. What the cells could
 * do, mu(T) M(TAN) (H + H0), is limited by the oxygen and then by the dissolved matter that come through still water;
 * H0 are cells that the water always brings, so that growth begins wherever there is food.
 */
export declare const heterotrophGrowing: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
    kernel: Kernel;
};
//# sourceMappingURL=heterotroph.d.ts.map
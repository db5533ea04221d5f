import type { Kernel } from './kernel.js';
/** k0 a, of variables [a]. */
export declare const proportional: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (_v: Float64Array, _at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
    kernel: Kernel;
};
/** k0 (k1 - c), of variables [c]: exchange of a gas towards its saturation. */
export declare const exchange: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (_v: Float64Array, _at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
    kernel: Kernel;
};
//# sourceMappingURL=first-order.d.ts.map
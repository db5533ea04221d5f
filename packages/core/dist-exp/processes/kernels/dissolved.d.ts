import type { Kernel } from './kernel.js';
/** k0 M(o; k1) M(tan; k2) c, of variables [o, tan, c]. */
export declare const withOxygen: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
/** k0 k3 K/(K + o) M(tan; k2) M(nitrate; k4) c with K = k1, of variables [o, tan, nitrate, c]. */
export declare const withNitrate: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
/** Dissolved matter burnt with oxygen and with nitrate together: first the one, then the other, in the same waters. */
export declare const dissolvedKernel: Kernel;
//# sourceMappingURL=dissolved.d.ts.map
import type { Kernel } from './kernel.js';
/** k0 M(O2; k1) X I(H; k2), of variables [O2, X, H]: cells that breathe themselves away where no heterotrophs cover them. */
export declare const bareDecay: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
    kernel: Kernel;
};
/**
 * How the share of cells that are awake moves, 1/d, of variables [O2, awake]: k0 M(O2; k1) (1 - w) awakes them, and
 * k2 (1 - M)² w stuns them where air is lacking.
 */
export declare const waking: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
//# sourceMappingURL=resting.d.ts.map
/**
 * Dissolution of calcite, mol d-1: k0 m (k1 h + k2 CO2 + k3) w(calcium x s), of variables [calcium, s, pH, CO2, m] with s
 * the saturation per mol of calcium.
 */
export declare const dissolving: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
/** Scale, mol d-1: k0 f(calcium x s; k1), of variables [calcium, s]. */
export declare const scaling: {
    rate: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>) => number;
    partials: (v: Float64Array, at: ArrayLike<number>, k: ArrayLike<number>, d: Float64Array) => void;
};
//# sourceMappingURL=calcite.d.ts.map
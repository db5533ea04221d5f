/**
 * Share of standard normal draws below z, within 1e-15 of itself however far out: W. J. Cody, "Rational Chebyshev
 * approximations for the error function", Math. Comp. 23 (1969), with the coefficients of his ACM algorithm 715 (1993).
 */
export declare function normalCdf(z: number): number;
/**
 * The standard normal deviate below which a share u of draws lies, within 1e-15 of itself: M. J. Wichura, algorithm
 * AS 241, Appl. Statist. 37 (1988); -Infinity at 0, Infinity at 1.
 */
export declare function normalQuantile(u: number): number;
/** The 95 % point of the standard normal: a range of the tables reaches from its negative to it. */
export declare const deviate95: number;
//# sourceMappingURL=normal.d.ts.map
/**
 * Rate laws shared by processes: pure functions and their derivatives.
 * Below zero a Monod term goes on as the straight line s/K: a value that rounding has put below
 * zero is then drawn back, and the derivative is continuous.
 */
/** Monod term s/(K+s). Monod 1949. */
export declare function monod(s: number, k: number): number;
/** d(monod)/ds. */
export declare function monodSlope(s: number, k: number): number;
/** Non-competitive inhibition K/(K+s); 1 below zero. */
export declare function inhibition(s: number, k: number): number;
/** d(inhibition)/ds. */
export declare function inhibitionSlope(s: number, k: number): number;
/** Bell of an enzyme with two ionisations, 1/(1 + 10^(low-pH) + 10^(pH-high)). Michaelis & Davidsohn 1911. */
export declare function bell(pH: number, low: number, high: number): number;
/** d(bell)/dpH. */
export declare function bellSlope(pH: number, low: number, high: number): number;
/** d(bell)/d(low). */
export declare function bellByLow(pH: number, low: number, high: number): number;
/** Temperature factor theta^(T-20). Arrhenius in the form of sanitary engineering. */
export declare function arrhenius(theta: number, temperature: number, reference?: number): number;
//# sourceMappingURL=rate-terms.d.ts.map
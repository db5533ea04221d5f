import { Matrix } from 'ml-matrix';
import type { Measurable } from '../scenario/scenario.js';
import { type FitProblem } from './fit-problem.js';
import { type Free } from './free-parameter.js';
import { type Minimum } from './search.js';
/** Curvature of the losses over standard deviates, the priors' included. */
export declare function informationOf(jacobian: Matrix, curvature: ArrayLike<number>): Matrix;
/** Covariance of the deviates: the inverse of the information, whose eigenvalues are never below 1. */
export declare function covarianceOf(information: Matrix): Matrix;
/** A root of a covariance: R with R Rᵀ = C, to draw with. */
export declare function rootOf(covariance: Matrix): Matrix;
/** What a further test would tell. */
export interface NextTest {
    readonly reads: Measurable;
    readonly vessel: string;
    readonly date: string;
    /** Gain of information, bits: half the base-2 log of by how much the volume of the band of all numbers shrinks. */
    readonly bits: number;
    /** The number that it narrows most, and by which `share` of its standard deviation, 0..1. */
    readonly narrows: {
        readonly name: string;
        readonly share: number;
    };
}
/** A number after the fit. */
export interface FittedNumber extends Free {
    /** In `unit`. */
    readonly value: number;
    /** Where it stands in its prior, standard deviates. */
    readonly deviate: number;
    /** Standard error there, standard deviates. */
    readonly deviation: number;
    /** 5 % of what is believed of it lies below, in `unit`. */
    readonly low: number;
    /** 5 % lies above. */
    readonly high: number;
    /**
     * `stays`: the log tells next to nothing of it; `narrowed`: it tells of it, and agrees with the prior; `moved`: the
     * prior's middle lies more than one standard error away.
     */
    readonly verdict: 'stays' | 'narrowed' | 'moved';
}
/** How the readings of a quantity in a vessel lie about the model. */
export interface FittedCourse {
    readonly reads: Measurable;
    readonly vessel: string;
    /** Readings. */
    readonly count: number;
    /** Spread about the model over that of the kit (by the median); undefined where too few say both bounds. */
    readonly spread?: number;
    /** Median of reading less model, in spreads of the kit. */
    readonly offset?: number;
}
/** A reading that the fit takes for spoilt: `row` of the log, 1-based; what is `predicted`, in the internal unit. */
export interface SpoiltReading {
    readonly row: number;
    readonly column: string;
    readonly text: string;
    readonly predicted: number;
}
/** What a log tells. */
export interface FitDiagnostics {
    readonly numbers: readonly FittedNumber[];
    /** Of the deviates. */
    readonly covariance: readonly (readonly number[])[];
    /** Pairs that this log cannot tell apart, with their `correlation`, -1..1. */
    readonly entangled: readonly {
        readonly a: string;
        readonly b: string;
        readonly correlation: number;
    }[];
    readonly courses: readonly FittedCourse[];
    readonly spoilt: readonly SpoiltReading[];
    /** The most telling test of each quantity and vessel, best first. */
    readonly nextTests: readonly NextTest[];
}
/**
 * What a log tells at a minimum: bands, what moved, what is entangled, how readings lie about the model, which are taken
 * for spoilt, and which test to make next. Bands are those of the curvature there (Laplace), in the deviates.
 * @param problem made with days ahead for the tests
 * @param step of the central differences, in deviates
 */
export declare function diagnosticsOf(problem: FitProblem, minimum: Minimum, step: number): FitDiagnostics;
//# sourceMappingURL=diagnostics.d.ts.map
import type { FieldPath, Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { Action, Cohort, Doser, Planting, Pump, RainTank, SourceWater, TopUp, Vessel } from '../scenario.js';
/** Everything an action may name. */
export interface Cast {
    readonly vessels: Named<Vessel>;
    readonly waters: Named<SourceWater>;
    readonly pumps: Named<Pump>;
    readonly cohorts: Named<Cohort>;
    readonly plantings: Named<Planting>;
    /** Products of the tables. */
    readonly products: readonly string[];
    readonly topUp: TopUp | undefined;
    readonly rainTank: RainTank | undefined;
    readonly dosers: readonly Doser[];
}
/** Whether a moment lies in a run that ends before day `end`; a fault where it does not. */
export declare function checkMoment(report: Report, path: Path, day: number, end: number): boolean;
/** Whether exactly one of several ways to say how much (`what`) is taken; a fault where it is not. */
export declare function checkOneWay(report: Report, path: Path, what: string, ways: Readonly<Record<string, number | undefined>>): boolean;
/** Whether something about feeding changes; a fault that lists what could where nothing does. */
export declare function checkChanges(report: Report, path: Path, changes: Readonly<Record<string, unknown>>): boolean;
/** Whether there is a float valve, and for a cap a supply that it holds for; a fault where not. */
export declare function checkTopUp(report: Report, path: Path, caps: boolean, topUp: TopUp | undefined): boolean;
/** Whether carted water can be poured where it is to go; a fault where not. What is absent is not judged. */
export declare function checkCart(report: Report, { into, water }: {
    readonly into: 'rain-tank' | 'reservoir';
    readonly water: string | undefined;
}, { rainTank, waters }: Cast, at: FieldPath): boolean;
/** Checks that what an action names is there, and of the kind that it needs. */
export declare function checkTargets(report: Report, action: Action, cast: Cast, at: FieldPath): void;
//# sourceMappingURL=actions.d.ts.map
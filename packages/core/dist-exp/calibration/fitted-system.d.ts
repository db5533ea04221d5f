import type { ScenarioReading } from '../scenario/read-scenario.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Setting } from '../scenario/file/set-value.js';
import type { Free } from './free-parameter.js';
/** A system file that can be read with values put in place of its own. */
export interface FitSystem {
    /** Reads it for a run of so many days, or as many as it says itself. Throws InputError. */
    read(settings: readonly Setting[], days?: number): ScenarioReading;
}
/** Numbers in place of those of a file: settings, and what water holds at the start. */
export interface FittedValue {
    readonly name: string;
    readonly kind: Free['kind'];
    readonly unit: string;
    /** In `unit`. */
    readonly value: number;
}
/** Values at standard deviates. */
export declare function fittedValuesAt(free: readonly Free[], at: ArrayLike<number>): readonly FittedValue[];
/** Values as `--set` takes them. */
export declare function settingsOf(values: readonly FittedValue[]): readonly Setting[];
/** A scenario with fitted water at the start. */
export declare function withFittedStart(scenario: Scenario, values: readonly FittedValue[]): Scenario;
/**
 * The scenario of a system at values. Reads the file anew only where a value goes into the reading: a path, or a number
 * of the tables that the file's defaults are made of.
 */
export declare function openScenarios(system: FitSystem, base: ScenarioReading, days: number): (values: readonly FittedValue[]) => Scenario;
//# sourceMappingURL=fitted-system.d.ts.map
import type { Parameters } from '../library/parameters.js';
import type { Cohort } from '../scenario/scenario.js';
import { type Metabolism } from './scope.js';
/** What a cohort makes of its feed on its first day, in sound water at the temperature for which its upkeep is stated. */
export interface FishAtStart {
    /** g d-1. */
    readonly offered: number;
    /** Wet, upkeep taken off, g d-1. */
    readonly gain: number;
    /** Nitrogen given off dissolved: TAN, and urea and the like which become TAN, g N d-1. */
    readonly excreted: number;
}
/**
 * A cohort on its first day; one that is stocked later as if one fish were there.
 * @param metabolism what they make of energy, in place of what their species does
 */
export declare function fishAtStart(cohort: Cohort, parameters: Parameters, metabolism?: Metabolism): FishAtStart;
//# sourceMappingURL=fish-at-start.d.ts.map
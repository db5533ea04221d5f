import type { Named, Report } from '../file/report.js';
import type { Path } from '../file/tree.js';
import type { SavedState } from '../saved-state.js';
import { type Cohort, type Planting, type Vessel } from '../scenario.js';
/** What a saved state is held against. */
export interface SavedPlaces {
    readonly vessels: Named<Vessel>;
    readonly cohorts: Named<Cohort>;
    readonly plantings: Named<Planting>;
}
type SavedContent = Pick<SavedState, 'volumes' | 'states' | 'species' | 'crops'>;
/**
 * Checks that a saved state is of this system: its places are there, each state stands once and each vessel has all that
 * water holds, water is within its vessels, species and crops are as they were.
 */
export declare function checkSavedContent(report: Report, path: Path, saved: SavedContent, { vessels, cohorts, plantings }: SavedPlaces): void;
/** Checks that a run ends after the moment that it goes on from; `way` says what else may be done. */
export declare function checkGoesOn(report: Report, path: Path, time: number, days: number, way: string): void;
export {};
//# sourceMappingURL=saved.d.ts.map
import type { SavedState } from '../saved-state.js';
import { type SavedPlaces } from '../checks/saved.js';
import type { RunFrame } from './run.js';
import type { ScenarioReader } from './scenario-reader.js';
/** The run and the places of a system, as the readers of other sections have found them. */
export interface Places extends SavedPlaces {
    readonly frame: RunFrame;
}
/**
 * Reads the state that `start: { saved: FILE }` goes on from, whole: its form, each state once, species and crops as they
 * were, water within its vessels. Its places must be those of this system; places that it does not hold start as the file
 * says.
 * @param day the day that the run begins on, d; absent: the time at which the state was saved
 */
export declare function readSaved(reader: ScenarioReader, file: string, day: number | undefined, places: Places): SavedState | undefined;
//# sourceMappingURL=saved.d.ts.map
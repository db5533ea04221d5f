import type { SavedState } from '../saved-state.js';
import { type SavedPlaces } from './saved.js';
import type { Named } from '../file/report.js';
import type { Scenario, Vessel } from '../scenario.js';
import type { ScenarioReport } from './scenario-report.js';
/** Checks what every vessel holds at the start: one entry for each that no saved state tells of. */
export declare function checkStart(report: ScenarioReport, { start, reservoir, saved }: Scenario, vessels: Named<Vessel>): void;
/** Checks a state to go on from: its numbers, that it is of this system, and that the run ends after it. */
export declare function checkSaved(report: ScenarioReport, saved: SavedState, days: number, places: SavedPlaces): void;
//# sourceMappingURL=scenario-start.d.ts.map
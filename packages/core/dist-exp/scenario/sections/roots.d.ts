import type { Named } from '../file/report.js';
import type { Planting, Vessel } from '../scenario.js';
import type { ScenarioReader } from './scenario-reader.js';
/**
 * Wetted surfaces that are not written, with the roots that hang in the water of rafts and channels: they carry film as
 * plastic does (`crop.root-surface`, m2 for each m2 planted). They are those of the start: what is planted or left empty
 * later does not change them.
 */
export declare function withRoots(reader: ScenarioReader, vessels: Named<Vessel>, plantings: Named<Planting>): Named<Vessel>;
//# sourceMappingURL=roots.d.ts.map
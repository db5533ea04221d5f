import type { Named } from '../file/report.js';
import type { Planting, TimedAction } from '../scenario.js';
import type { RunFrame } from './run.js';
import type { ScenarioReader } from './scenario-reader.js';
/** Keys of a planting that say when it stands: so crops follow each other in a bed, and a bed lies fallow between. */
export declare const seasonTimes: {
    from: import("zod").ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
    until: import("zod").ZodOptional<import("../file/values.js").Reads<import("./times.js").When, string>>;
};
/** What is done to beds where seasons of their crops begin and end, in days since the start; faults where they cannot be. */
export declare function readSeasons(reader: ScenarioReader, frame: RunFrame, plantings: Named<Planting>): readonly TimedAction[];
//# sourceMappingURL=seasons.d.ts.map
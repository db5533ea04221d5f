import type { LogMap } from './log-map.js';
import type { LogTable } from './log-table.js';
import type { WaterLog } from './water-log.js';
/**
 * Reads a log by its map. Every value that is not as it should be is an oddity with its row and what was done;
 * nothing is dropped or mended without one.
 * @throws InputError where no column of dates is there, or day and month cannot be told apart
 */
export declare function readLog(table: LogTable, map: LogMap): WaterLog;
//# sourceMappingURL=read-log.d.ts.map
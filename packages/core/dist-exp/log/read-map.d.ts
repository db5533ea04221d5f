import type { LogMap } from './log-map.js';
import type { LogTable } from './log-table.js';
/**
 * Reads the small YAML file that says what the columns of a log hold, and holds it against the header of the log.
 * @param file its name, for messages
 * @throws InputError with every fault: unknown keys and words, units that do not fit, columns that the log lacks
 */
export declare function readLogMap(text: string, file: string, table: LogTable): LogMap;
//# sourceMappingURL=read-map.d.ts.map
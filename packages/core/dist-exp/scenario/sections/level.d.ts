import type { Path } from '../file/tree.js';
import { type Reads } from '../file/values.js';
import type { Measurable } from '../scenario.js';
import type { ScenarioReader } from './scenario-reader.js';
/** A level as it is written: a bare number for pH, else a quantity with its unit. */
export type Level = string | number;
/** A level of whatever is measured: a quantity with its unit, or a bare number for pH. */
export declare function level(description: string, examples: readonly Level[]): Reads<Level, Level>;
/** A level of what is measured, in its internal unit; undefined (and a fault) where it is none. */
export declare function readLevel(reader: ScenarioReader, path: Path, written: Level, read: Measurable): number | undefined;
//# sourceMappingURL=level.d.ts.map
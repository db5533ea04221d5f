import type { Reader } from '../file/reader.js';
import type { Path } from '../file/tree.js';
import { type Reads } from '../file/values.js';
import type { DailyValue } from '../scenario.js';
import { type DailyGiven } from './daily.js';
/** Water that follows the air: the temperature nears that of the air with a time constant. */
declare const follow: import("zod").ZodObject<{
    follows: Reads<"air", "air">;
    lag: Reads<number, string>;
    start: import("zod").ZodOptional<Reads<number, string>>;
}, import("zod/v4/core").$strict>;
/** Such water as written. */
export type FollowGiven = ReturnType<typeof follow.parse>;
/** A water temperature: a daily value, or `{follows: air, lag: 2 d}`. */
export declare function waterTemperature(description: string): Reads<FollowGiven | DailyGiven>;
/** The air that water follows, and the days for which it must. */
export interface Air {
    /** degC; undefined where none is known. */
    readonly outside: DailyValue | undefined;
    readonly startDate: string;
    readonly days: number;
}
/**
 * Means of each day, degC, of water that follows the air with a time constant `lag`, d:
 * dT/dt = (air - T) / lag, solved exactly over each day of constant air. The mean of a day is
 * air + (T - air) (lag / 1 d) (1 - exp(-1 d / lag)), T at its start.
 */
export declare function followAir(air: readonly number[], lag: number, start: number): readonly number[];
/** A water temperature, as given for each day or following the air. */
export declare function readWaterTemperature(reader: Reader, path: Path, given: DailyGiven | FollowGiven, air: Air): DailyValue | undefined;
export {};
//# sourceMappingURL=water-temperature.d.ts.map
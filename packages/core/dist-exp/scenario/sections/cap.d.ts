import { type Reads } from '../file/values.js';
/** Most that a supply gives in a day or in a week, m3. */
export type Cap = {
    readonly dailyCap: number;
} | {
    readonly weeklyCap: number;
};
/**
 * A cap such as `160 L/d` or `1 m3/week`. What it is written per is the time in which it holds: a week's
 * water may be drawn in one day. Any other time (`5 L/h`) is made into a day.
 */
export declare function cap(description: string): Reads<Cap, string>;
//# sourceMappingURL=cap.d.ts.map
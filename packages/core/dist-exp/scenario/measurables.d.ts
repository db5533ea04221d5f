import type { Measurable } from './scenario.js';
import type { Dimension } from '../base/units.js';
/** What may be measured, in the order of a test kit. */
export declare const measurables: readonly ["ammonia", "nitrite", "nitrate", "pH", "alkalinity", "oxygen", "temperature", "chloride", "volume"];
/** What each is written in; pH has no unit. */
export declare const dimensionOf: Readonly<Record<Measurable, Dimension | undefined>>;
/** The unit that each is told in; '' for pH. */
export declare const unitOfMeasurable: Readonly<Record<Measurable, string>>;
//# sourceMappingURL=measurables.d.ts.map
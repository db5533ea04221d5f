import type { Planting } from '../scenario/scenario.js';
import { type LimitCheck, type LimitReader } from './limit-check.js';
/** Area planted with leafy and with fruiting crops, m2. */
export declare function areaByClass(plantings: readonly Planting[]): {
    readonly leafy: number;
    readonly fruiting: number;
};
/** Limits for each planting in the water of its vessel, which matter while a crop stands. */
export declare function limitsForCrops(reader: LimitReader): readonly LimitCheck[];
//# sourceMappingURL=limits-for-crops.d.ts.map
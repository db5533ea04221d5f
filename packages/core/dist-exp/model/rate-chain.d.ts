import type { Model } from './model.js';
import { type RateTables } from './rate-tables.js';
import type { Regime } from './model.js';
import type { WaterLook } from './water-look.js';
/** The chain rule from partials by variables, as kernels leave them, to partials by states and time. */
export interface RateChain {
    /** Fills dr for every process; the rows of transport get 0. */
    byState(dr: Float64Array): void;
    /** Fills rt for every process that reads only the state of its water; the rows of transport get 0. */
    byTime(rt: Float64Array): void;
}
/** Lays the chain rule of a model out as sums of products of partials and factors. */
export declare function openRateChain(model: Model, regime: Regime, tables: RateTables, { v, volume, perVolume, speciation }: WaterLook): RateChain;
//# sourceMappingURL=rate-chain.d.ts.map
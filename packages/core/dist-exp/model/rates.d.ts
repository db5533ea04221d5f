import type { RateSystem } from '../solve/contract.js';
import type { Model } from './model.js';
import type { Regime } from './model.js';
import { type PhMemory } from './water-look.js';
/** The rates of a model under a regime that the driver sets. */
export interface Rates {
    readonly system: RateSystem;
    readonly regime: Regime;
    /** What they remember from one evaluation to the next, changed in place. */
    readonly memory: PhMemory;
}
/** How rates are worked out. */
export interface RateOptions {
    /** Call the rate of every process place by place instead of its kernel: slow, for comparison. */
    readonly plain?: boolean;
}
/**
 * Opens the rates of a model for one run. States are amounts; rates see concentrations y/V(t), and
 * pH, ammonia and carbon dioxide solved from them. All work arrays are made here, none later.
 */
export declare function openRates(model: Model, options?: RateOptions): Rates;
//# sourceMappingURL=rates.d.ts.map
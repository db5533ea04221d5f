import type { Scenario } from '../scenario/scenario.js';
import type { StartQuantity } from './free-parameter.js';
/** What a vessel or the whole system is to hold at the start: `start.nitrate@sump`. */
export interface StartAmount {
    readonly name: string;
    /** g m-3, eq m-3; g for settled solids. */
    readonly value: number;
}
/** What a scenario says of a quantity at the start: in one vessel, or the mean by volume (settled solids: in all). */
export declare function startAmount(scenario: Scenario, quantity: StartQuantity, vessel?: string): number;
/** A scenario with other water at the start: all vessels alike where none is named. Settled solids are shared by floors. */
export declare function withStart(scenario: Scenario, amounts: readonly StartAmount[]): Scenario;
//# sourceMappingURL=start-water.d.ts.map
import type { Ration } from '../scenario/scenario.js';
/** Feed offered: a fixed mass, g d-1, and a share of what stands in the tank, d-1. */
export interface Offer {
    readonly fed: number;
    readonly share: number;
}
/** What a ration offers to a cohort on a day; a table is read by the mean mass of that morning. */
export declare function offerOf(ration: Ration, mass: number, number: number): Offer;
//# sourceMappingURL=offer.d.ts.map
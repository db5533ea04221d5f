import type { Model } from '../model/model.js';
/** Body fat that is usual in so many fish of a mean mass (g) of a cohort, g COD. */
export declare function fatOf({ scenario, parameters }: Model, cohort: number, number: number, mass: number): number;
//# sourceMappingURL=stock.d.ts.map
import type { Values } from '../../library/values.js';
import type { Term } from '../process.js';
/**
 * What so much organic matter (g N, g COD) breaks up into: suspended particles, as many as its nitrogen and the part of its
 * demand that is not dissolved at once both allow, the share of them that hardly breaks down (absent: that of faeces) apart; the rest of the demand
 * and of the nitrogen is dissolved.
 */
export declare function brokenUp(values: Values, nitrogen: number, demand: number, dissolvedShare?: number, refractory?: number): readonly Term[];
//# sourceMappingURL=particles.d.ts.map
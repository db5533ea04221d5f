import type { Values } from '../../library/values.js';
import type { Conditions } from '../process.js';
/** What comes to a film through still water. */
export type Coming = 'tan' | 'oxygen' | 'dissolved';
/** Water that transfer to the film of a surface would clear of a substance, m3 d-1: velocity x surface. */
export declare function transferOf(values: Values, { surface, temperature }: Conditions, coming: Coming): number;
/** Heterotrophs that cover one half of a surface, g COD: half / (half + H) of it is left bare to nitrifiers. */
export declare function bareHalf(values: Values, { surface }: Conditions): number;
//# sourceMappingURL=film-coefficients.d.ts.map
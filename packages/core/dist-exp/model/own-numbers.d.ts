import { type Parameters } from '../library/parameters.js';
import type { OwnNumber } from './own.js';
/** The numbers of others, and a user's own beside them. */
export declare function withNumbers(others: Parameters, numbers?: readonly OwnNumber[]): Parameters;
/** The same, with the user's own drawn at random. */
export declare function drawNumbers(others: Parameters, numbers: readonly OwnNumber[] | undefined, random: () => number): Parameters;
//# sourceMappingURL=own-numbers.d.ts.map
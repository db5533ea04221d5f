import type { Fault } from '../base/faults.js';
import type { Values } from '../library/values.js';
import { type Process } from '../processes/process.js';
import { type ContentIn } from './stoichiometry.js';
/**
 * Tries the rate of a process at random points: coefficients and rate are finite, their number stays, the partials are
 * those of the rate, and it stops where what it uses up ends.
 */
export declare function rateFaults(process: Process, values: Values, content: ContentIn): readonly Fault[];
//# sourceMappingURL=check-rates.d.ts.map
import type { Parameters } from '../library/parameters.js';
import type { Scenario } from '../scenario/scenario.js';
import { type Free } from './free-parameter.js';
/**
 * Reads what may vary: ids of the tables (their ranges are the prior), what water holds at the start, paths of the file
 * with a range; `=LOW..HIGH UNIT` gives a range anew.
 * @throws InputError with every fault
 */
export declare function readFree(written: readonly string[], scenario: Scenario, parameters: Parameters): readonly Free[];
//# sourceMappingURL=read-free.d.ts.map
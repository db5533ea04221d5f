import type { Model } from '../../model/model.js';
import type { Run } from '../../run/run.js';
import type { RateSystem } from '../../solve/contract.js';
import { type Cycle } from './cycle.js';
/**
 * A month of a state that lasts, in the form of a run, so that series, limits and measures read it like any other:
 * a sample a day where it is constant, one an hour (and at each jump) where it repeats. Integrated, not assumed:
 * what did not come back would be seen.
 */
export declare function steadyCourse(model: Model, cycle: Cycle, system: RateSystem, from: Float64Array): Run;
//# sourceMappingURL=steady-course.d.ts.map
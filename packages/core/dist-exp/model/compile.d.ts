import type { Parameters } from '../library/parameters.js';
import type { Scenario } from '../scenario/scenario.js';
import type { Model } from './model.js';
import { type Extension } from './own.js';
/** How a model is compiled. */
export interface CompileOptions {
    /** Components, processes and numbers of a user's own, made by `extension`. */
    readonly extension?: Extension;
    /**
     * Parameter draws at which every row must close, besides the given values; default 20. 0 is for the
     * members of an ensemble, whose rows were checked at random draws when the first was compiled.
     */
    readonly closureDraws?: number;
}
/**
 * Makes a scenario into a model: states, streams, rows with their stoichiometry closed, and what each
 * rate depends on. The scenario is checked as `checkScenario` does; every process is checked to close at the given
 * parameters and at random draws (20). An `extension` is checked too.
 * @throws InputError with every fault of the scenario, then of what the user added (`processes.uptake.reads[1]`);
 *   RangeError when a row makes or destroys something conserved.
 */
export declare function compileModel(scenario: Scenario, parameters: Parameters, options?: CompileOptions): Model;
/**
 * As `compileModel`, of a scenario that was checked: read from a file, or made of one that was, such as the member of
 * an ensemble.
 * @throws InputError with every fault of what the user added, or with every measured feed conversion that cannot be;
 *   RangeError when a row makes or destroys something conserved.
 */
export declare function compileChecked(scenario: Scenario, given: Parameters, options?: CompileOptions): Model;
//# sourceMappingURL=compile.d.ts.map
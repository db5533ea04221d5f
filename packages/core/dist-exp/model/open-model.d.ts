import type { ScenarioReading } from '../scenario/read-scenario.js';
import { type CompileOptions } from './compile.js';
import type { Model } from './model.js';
/** A model of a system file, with what should be known of how it came about. */
export interface OpenModel {
    readonly model: Model;
    /** What was assumed in the reading, and what is unusual about the numbers given: one line each. */
    readonly notes: readonly string[];
    /** Ids of the numbers used so far, in the reading, the model and its runs, each once. */
    readonly used: () => readonly string[];
}
/**
 * Compiles what was read of a system file, with the numbers that it gives. A scenario that did not come from the reader
 * is checked as `checkScenario` does.
 * @throws InputError with every fault, RangeError where a row does not close (see `compileModel`)
 */
export declare function openModel(reading: Pick<ScenarioReading, 'scenario' | 'notes' | 'used'>, options?: CompileOptions): OpenModel;
/** As `openModel`, of a scenario made of one that was read. Throws as `openModel` does. */
export declare function openChecked({ scenario, notes, used }: Pick<ScenarioReading, 'scenario' | 'notes' | 'used'>, options?: CompileOptions): OpenModel;
//# sourceMappingURL=open-model.d.ts.map
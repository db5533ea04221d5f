import { type Fault } from '../../base/faults.js';
import type { Model } from '../../model/model.js';
import type { Run } from '../../run/run.js';
import { type Phrase } from './phrase.js';
import { type Scale } from './scale.js';
/** One number that a whole run gives. */
export interface Measure extends Scale {
    /** As written, one space between words. */
    readonly text: string;
    /**
     * The number, in `unit`. Throws NoAnswerError where the run broke off or has no value to be counted.
     */
    of(run: Run): number;
}
/** Faults of a phrase, each saying which phrase and, with `where`, where it was written. */
export declare function phraseFaults(faults: readonly Fault[], text: string, where: string | undefined): Fault[];
/**
 * Reads a measure from a phrase already cut. Throws InputError with every fault.
 * @param where what to name in faults, such as an option
 */
export declare function measureFrom(phrase: Phrase, model: Model, where?: string): Measure;
/**
 * Reads a measure, in words:
 *
 * - `highest|lowest|mean|first|last|change SERIES [averaged TIME] [from WHEN] [to WHEN]`
 * - `days SERIES above|below VALUE [averaged TIME] [from WHEN] [to WHEN]`: how long, in d
 * - `share QUANTITY FATE`: of all that came of a conserved quantity, the share that went there (names of
 *   `fatesOf`, hyphens for spaces), such as `share nitrogen kept-in-living-fish`
 *
 * WHEN is a time after the start or a date; VALUE is a number, one with a unit, or the id of a number of the tables.
 * @param model tells which series there are and when the run starts and ends
 * @param where what to name in faults, such as an option
 * Throws InputError with every fault.
 */
export declare function measureOf(text: string, model: Model, where?: string): Measure;
//# sourceMappingURL=measure.d.ts.map
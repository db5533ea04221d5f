import { createParameters } from '../library/parameters.js';
import { checkScenario } from '../scenario/check-scenario.js';
import { wasRead } from '../scenario/read-before.js';
import { compileChecked } from './compile.js';
/**
 * Compiles what was read of a system file, with the numbers that it gives. A scenario that did not come from the reader
 * is checked as `checkScenario` does.
 * @throws InputError with every fault, RangeError where a row does not close (see `compileModel`)
 */
export function openModel(reading, options = {}) {
    if (!wasRead(reading.scenario))
        checkScenario(reading.scenario);
    return openChecked(reading, options);
}
/** As `openModel`, of a scenario made of one that was read. Throws as `openModel` does. */
export function openChecked({ scenario, notes, used }, options = {}) {
    const parameters = createParameters(scenario.overrides);
    return {
        model: compileChecked(scenario, parameters, options),
        notes: [...notes, ...parameters.warnings],
        used: () => [...new Set([...used, ...parameters.used()])],
    };
}
//# sourceMappingURL=open-model.js.map
import { InputError } from '../base/faults.js';
import { nearest } from '../base/nearest.js';
import { openModel } from '../model/open-model.js';
import { simulate } from '../run/stepping.js';
import { readScenarioFully } from '../scenario/read-scenario.js';
/**
 * Reads a system, compiles it and runs it to its end.
 * @param system the text of a system file; or texts by path, the system first, then the files that it names
 * @throws InputError with every fault; RangeError where a row does not close
 */
export function run(system, options = {}) {
    const files = typeof system === 'string' ? { 'system.yaml': system } : system;
    const paths = Object.keys(files);
    if (paths.length === 0)
        throw new InputError([{ problem: 'no file', expected: 'the text of a system, or texts by path' }]);
    const load = (path) => {
        if (Object.hasOwn(files, path))
            return files[path];
        const near = nearest(path, paths);
        throw new Error(`no such file among those given${near === undefined ? '' : `; did you mean ${near}?`}`);
    };
    const [file] = paths;
    const { model, notes, used } = openModel(readScenarioFully(files[file], { file, load }));
    return { ...simulate(model, options), notes, used };
}
//# sourceMappingURL=run-text.js.map
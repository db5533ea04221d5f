import { nearestSubject } from '../../library/other-names.js';
import { Reader } from '../file/reader.js';
/** Reads sections of a system file, which take names and defaults from the numbers of the tables. */
export class ScenarioReader extends Reader {
    parameters;
    constructor(tree, parameters, load) {
        super(tree, load);
        this.parameters = parameters;
    }
    guess(name, names) {
        return nearestSubject(name, names);
    }
    /** The subjects of a group, those that the user added with them. */
    names(group) {
        return this.parameters.subjects(group);
    }
}
//# sourceMappingURL=scenario-reader.js.map
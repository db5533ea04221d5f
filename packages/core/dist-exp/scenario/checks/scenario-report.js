import { boundProblem, describeBound } from '../../base/bounds.js';
import { nearest } from '../../base/nearest.js';
import { Report } from '../file/report.js';
import { describePath } from '../file/tree.js';
/** Key of a section of a file as the field of a scenario: `rain-tank` is `rainTank`. */
function fieldOf(key) {
    return key.replace(/-([a-z])/g, (_, letter) => letter.toUpperCase());
}
function stepInto(value, step) {
    if (Array.isArray(value) && typeof step === 'string') {
        return value.find((entry) => (entry['name'] ?? entry['vessel']) === step);
    }
    return typeof value === 'object' && value !== null
        ? value[step]
        : undefined;
}
/** What came, short enough for a message; undefined for what is no single value. */
function describeValue(value) {
    if (typeof value === 'string')
        return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}...` : value);
    if (typeof value === 'number' || typeof value === 'boolean' || value === null)
        return String(value);
    return undefined;
}
/**
 * Collects what is wrong with a scenario built in code. Paths name fields of the scenario; entries of a list that have
 * names stand under them: `vessels.tank.volume`, `start.tank.water.tan`, `flows[2].to`.
 */
export class ScenarioReport extends Report {
    scenario;
    origin = 'scenario';
    constructor(scenario) {
        super();
        this.scenario = scenario;
    }
    fault(path, problem, rest = {}, aboutKey = false) {
        const got = aboutKey ? undefined : describeValue(path.reduce(stepInto, this.scenario));
        this.faults.push({ key: describePath(path), problem, ...(got === undefined ? {} : { got }), ...rest });
    }
    gotName(name) {
        return { got: JSON.stringify(name) };
    }
    lacks(path, what, key) {
        const field = fieldOf(key);
        if (stepInto(this.scenario, field) !== undefined)
            return;
        this.fault(path, `no ${what} in this scenario`, { expected: `a ${field}` });
    }
    /** Whether a number is within its bound; a fault that tells its value where it is not. */
    within(value, bound, path) {
        const problem = boundProblem(bound, value);
        if (problem === undefined)
            return true;
        const got = describeValue(value);
        this.fault(path, problem, { expected: describeBound(bound), ...(got === undefined ? {} : { got }) });
        return false;
    }
    /** Checks a name against those there are, as for a file; what is no word is missing or of the wrong kind. */
    known(name, names, path, what) {
        if (typeof name === 'string')
            return super.known(name, names, path, what);
        const problem = name === undefined ? 'missing' : 'wrong kind of value';
        this.fault(path, problem, { expected: `the name of a ${what}` });
        return false;
    }
    /** Whether a list is there, without gaps; a fault where it is not. */
    isList(value, path) {
        if (Array.isArray(value) && !value.includes(undefined))
            return true;
        this.fault(path, value === undefined ? 'missing' : 'wrong kind of value', {
            expected: 'a list without gaps',
        });
        return false;
    }
    /** Whether an object is there; a fault where it is not. */
    holds(value, path) {
        if (typeof value === 'object' && value !== null)
            return true;
        this.fault(path, value === undefined ? 'missing' : 'wrong kind of value', { expected: 'an object' });
        return false;
    }
    /**
     * Whether all numbers of an entry are within their ranges; a fault for each that is not.
     * @param optional fields that may be absent
     * @param endless fields that may be Infinity: no limit
     */
    numbers(entry, ranges, path, { optional = [], endless = [] } = {}) {
        let sound = true;
        const values = entry;
        for (const field in ranges) {
            const value = values[field];
            if (value === undefined && optional.includes(field))
                continue;
            if (value === Infinity && endless.includes(field))
                continue;
            if (boundProblem(ranges[field], value) === undefined)
                continue;
            sound = this.within(value, ranges[field], [...path, field]) && sound;
        }
        return sound;
    }
    /** Whether a word is one of those allowed; a fault with the nearest where it is not. */
    oneOf(value, words, path) {
        if (typeof value === 'string' && words.includes(value))
            return true;
        const expected = `one of ${words.join(', ')}`;
        if (typeof value !== 'string') {
            this.fault(path, value === undefined ? 'missing' : 'wrong kind of value', { expected });
            return false;
        }
        const guess = nearest(value, words);
        this.fault(path, 'unknown word', { expected, ...(guess === undefined ? {} : { nearest: guess }) });
        return false;
    }
}
//# sourceMappingURL=scenario-report.js.map
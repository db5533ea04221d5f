import { nearest } from '../../base/nearest.js';
/** A complaint as the one text that a validation issue carries. */
export function complain(complaint) {
    return JSON.stringify(complaint);
}
/** The complaint in an issue's text; a text of another kind becomes the problem itself. */
function hear(message) {
    return message.startsWith('{"problem"') ? JSON.parse(message) : { problem: message };
}
/** The usual complaint about a value that is not there or not of the kind expected. */
export function kindComplaint(input, expected) {
    if (input === undefined)
        return complain({ problem: 'missing', expected });
    if (typeof input === 'number' && !Number.isFinite(input)) {
        return complain({ problem: 'not a finite number', expected });
    }
    return complain({ problem: 'wrong kind of value', expected });
}
/** Most keys for which the nearest right one is sought. */
const mostGuesses = 500;
/** Whether a branch of a union took the value for its own kind, and then found something else wrong. */
function entered(issues) {
    return issues.every((issue) => issue.path.length > 0 || issue.code !== 'invalid_type');
}
const kindNames = {
    record: 'a map',
    object: 'a map',
    array: 'a list',
    string: 'a word',
    number: 'a number',
    boolean: 'true or false',
};
/** What an issue says; one that the schema has no words for in ours. */
function complaintOf(issue) {
    const said = hear(issue.message);
    if (said.problem !== issue.message)
        return said;
    if (issue.code === 'invalid_type') {
        const problem = /received undefined$/.test(issue.message) ? 'missing' : 'wrong kind of value';
        return { problem, expected: kindNames[issue.expected] ?? issue.expected };
    }
    if (issue.code === 'too_small' || issue.code === 'too_big') {
        const [low, bound] = issue.code === 'too_small' ? [true, issue.minimum] : [false, issue.maximum];
        if (issue.origin === 'array')
            return { problem: low ? 'too few' : 'too many', expected: `at ${low ? 'least' : 'most'} ${bound}` };
        const edge = issue.inclusive === true ? (low ? 'from' : 'up to') : low ? 'above' : 'below';
        return { problem: 'out of range', expected: `a number ${edge} ${bound}` };
    }
    return said;
}
function unknownKeys(issue, path) {
    const complaint = hear(issue.message);
    const allowed = (complaint.expected ?? '').replace(/^one of /, '').split(', ');
    return issue.keys.map((key, index) => {
        const guess = index < mostGuesses ? nearest(key, allowed) : undefined;
        const base = { problem: complaint.problem, path: [...path, key], aboutKey: true };
        return guess === undefined
            ? { ...base, expected: complaint.expected ?? '' }
            : { ...base, nearest: guess };
    });
}
/** What the issues of a failed validation say, each at its full path. */
export function placeIssues(issues, above) {
    return issues.flatMap((issue) => {
        const path = [
            ...above,
            ...issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step)),
        ];
        if (issue.code === 'unrecognized_keys')
            return unknownKeys(issue, path);
        if (issue.code === 'invalid_union') {
            const { form } = hear(issue.message);
            if (form !== undefined && issue.errors[form] !== undefined)
                return placeIssues(issue.errors[form], path);
            const branches = issue.errors.filter((branch) => branch.length > 0 && entered(branch));
            const best = branches.sort((a, b) => a.length - b.length)[0];
            if (best !== undefined)
                return placeIssues(best, path);
        }
        return [{ ...complaintOf(issue), path, aboutKey: false }];
    });
}
//# sourceMappingURL=complaint.js.map
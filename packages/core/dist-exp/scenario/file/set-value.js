import { nearest } from '../../base/nearest.js';
import { readTree } from './read-tree.js';
import { describePath } from './tree.js';
const origin = { file: '--set' };
/** Steps of a written path. Below `parameters` the rest is one name, because those names hold dots. */
function stepsOf(path) {
    const parameter = /^parameters\.(.+)$/.exec(path);
    return parameter?.[1] === undefined
        ? path.replace(/\[(\d+)\]/g, '.$1').split('.')
        : ['parameters', parameter[1]];
}
class SettingFault extends Error {
    fault;
    constructor(fault) {
        super(fault.problem);
        this.fault = fault;
    }
}
function put(tree, steps, done, value, sections) {
    const [step, ...rest] = steps;
    if (step === undefined)
        return value;
    const here = [...done, tree.kind === 'list' && /^\d+$/.test(step) ? Number(step) : step];
    const fail = (problem, extra = {}) => {
        throw new SettingFault({ ...origin, key: describePath(here), problem, ...extra });
    };
    if (tree.kind === 'list') {
        const item = /^\d+$/.test(step) ? tree.items[Number(step)] : undefined;
        if (item === undefined) {
            return fail('no such place in the list', {
                got: step,
                expected: `a number from 0 to ${tree.items.length - 1}`,
            });
        }
        const items = tree.items.map((old) => (old === item ? put(item, rest, here, value, sections) : old));
        return { ...tree, items };
    }
    if (tree.kind === 'scalar' && tree.value !== null)
        return fail('nothing can stand below a single value');
    const entries = new Map(tree.kind === 'map' ? tree.entries : []);
    const below = entries.get(step)?.node;
    const opens = done.length === 0 && sections.has(step);
    const takesAway = rest.length === 0 && value.kind === 'scalar' && value.value === null;
    if (below === undefined && (takesAway || (rest.length > 0 && !opens))) {
        const names = takesAway || done.length > 0 ? [...entries.keys()] : [...sections];
        const guess = nearest(step, names);
        const problem = takesAway ? 'no such entry to take away' : 'no such entry';
        return fail(problem, guess === undefined ? {} : { nearest: guess });
    }
    const under = below ?? { kind: 'map', origin, entries: new Map() };
    entries.set(step, { origin, node: put(under, rest, here, value, sections) });
    return { kind: 'map', origin: tree.origin, entries };
}
/**
 * Puts one value into the tree at a path such as `vessels.tank-1.volume` or `flows[0].rate`. The value
 * is read as YAML; an empty one takes away what is there. Entries on the way must exist, save the sections of the file
 * named in `sections`; what a file includes cannot be set.
 */
export function setValue(tree, setting, sections) {
    const [first] = stepsOf(setting.path);
    if (first === 'include') {
        const problem = 'what a file includes cannot be set';
        const expected = 'a file that includes what it is laid over';
        return { tree, faults: [{ ...origin, key: setting.path, problem, expected }] };
    }
    const { tree: value, faults } = readTree(setting.value, '--set');
    if (value === undefined || faults.length > 0) {
        return { tree, faults: faults.map((fault) => ({ ...fault, key: setting.path })) };
    }
    try {
        return { tree: put(tree, stepsOf(setting.path), [], value, sections), faults: [] };
    }
    catch (error) {
        if (!(error instanceof SettingFault))
            throw error;
        return { tree, faults: [error.fault] };
    }
}
//# sourceMappingURL=set-value.js.map
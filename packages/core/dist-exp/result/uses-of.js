import { createParameters } from '../library/parameters.js';
import { isOpenGroup } from '../library/properties.js';
import { tableRows } from '../library/table-rows.js';
import { partUses } from '../library/uses.generated.js';
import { names } from '../library/names.js';
import { scopeTo } from '../model/scope.js';
import { anyConditions } from '../processes/process.js';
import { processes } from '../processes/index.js';
/** An id as every species, crop and feed has it: `fish.*.mortality`. */
function patternOf(id) {
    const [group, subject, property] = id.split('.');
    const table = tableRows.get(id)?.table;
    const general = table === 'constants' || table === 'parameters';
    return property === undefined || general || !isOpenGroup(group) || subject === ''
        ? id
        : `${group}.*.${property}`;
}
/** What a process reads: it is asked for its stoichiometry and its coefficients, and listened to. */
function readBy(process) {
    const [species, crop, feed] = [names('fish')[0], names('crop')[0], names('feed')[0]];
    const [product] = names('dose');
    const [lime] = names('lime');
    const subject = { species, crop, feed: { name: feed, protein: 0.3 }, product, lime };
    const scope = scopeTo(createParameters(), subject);
    const read = new Set();
    const listening = {
        value: (id) => {
            const [first, property] = id.split('.');
            if (first === 'species')
                read.add(`fish.*.${property}`);
            else if (first === 'feed')
                read.add(`feed.*.${property}`);
            else if (first === 'product')
                read.add(`dose.*.${property}`);
            else if (id === 'lime.area')
                read.add('lime.*.area');
            else if (first === 'crop' && !tableRows.has(id))
                read.add(`crop.*.${property}`);
            else
                read.add(id);
            return scope.value(id);
        },
    };
    process.stoichiometry(listening);
    process.coefficients(listening, anyConditions);
    return read;
}
/**
 * What reads a number: processes, and other parts of the library (readers of the file, chemistry, limits, audit ...).
 * None: the model does not use it. Processes are asked; the others were found in the source, and a test finds them anew.
 * @returns the readers of an id
 */
export function numberUses() {
    const uses = new Map();
    const add = (pattern, use) => {
        const before = uses.get(pattern);
        if (before === undefined)
            uses.set(pattern, [use]);
        else
            before.push(use);
    };
    for (const process of processes) {
        const { id: name, title } = process;
        for (const pattern of readBy(process))
            add(pattern, { kind: 'process', name, title });
    }
    for (const [name, pattern] of partUses)
        add(pattern, { kind: 'part', name });
    return (id) => uses.get(patternOf(id)) ?? [];
}
//# sourceMappingURL=uses-of.js.map
import * as z from 'zod';
import { InputError } from '../../base/faults.js';
import { overrideRow } from '../../library/override.js';
import { createParameters, parametersOf } from '../../library/parameters.js';
import { formOf, isOpenGroup, properties } from '../../library/properties.js';
import { readTable } from '../../library/read-table.js';
import { subjectFaults } from '../../library/subject-faults.js';
import { tableOf } from '../../library/table-row.js';
import { tableRows } from '../../library/table-rows.js';
import { kindComplaint } from '../file/complaint.js';
import { loadText, resolvePath } from '../file/include-tree.js';
import { compact, Reader } from '../file/reader.js';
import { nodeAt, originAt } from '../file/tree.js';
import { word } from '../file/values.js';
import { readLikeness } from './likeness.js';
import { parameterSchema } from './start.js';
const tables = z
    .union([word('a file name'), z.array(word('a file name'))], {
    error: ({ input }) => kindComplaint(input, 'a file name such as "my-numbers.tsv", or a list of them'),
})
    .meta({
    description: 'tables of your own numbers (TSV), in place of those of the library or beside them; default: none',
});
/** The key `tables`. */
export const tablesSchema = tables.optional();
/** Most tables of one scenario. */
const mostTables = 32;
/** The tables that the file names, seen from the file that names them. */
function namedTables(reader) {
    const given = reader.parse(tablesSchema, ['tables']);
    if (given === undefined)
        return [];
    const list = nodeAt(reader.tree, ['tables'])?.kind === 'list';
    const files = typeof given === 'string' ? [given] : given;
    if (files.length > mostTables) {
        reader.fault(['tables'], 'too many entries', {
            got: String(files.length),
            expected: `at most ${mostTables}`,
        });
        return [];
    }
    return files.map((file, index) => {
        const path = list ? ['tables', index] : ['tables'];
        const origin = originAt(reader.tree, path);
        const report = (problem) => ({
            ...origin,
            key: 'tables',
            got: JSON.stringify(file),
            problem,
        });
        return { file: resolvePath(origin.file, file), from: origin.file, report };
    });
}
function noteOf(file, rows) {
    const added = rows.filter(({ id }) => !tableRows.has(id));
    const subjects = [...new Set(added.map(({ id }) => id.split('.').slice(0, 2).join('.')))];
    const replaced = rows.length - added.length;
    const parts = [
        `${replaced} ${replaced === 1 ? 'number' : 'numbers'} in place of ours`,
        ...(added.length === 0 ? [] : [`${added.length} new (${subjects.join(', ')})`]),
    ];
    return `${file}: ${parts.join(', ')}`;
}
/**
 * Reads the tables that a scenario names under `tables`, then those given beside it. Faults of the key go to the
 * reader, faults of the tables into the answer, each with file, line and column.
 */
function readTables(reader, options) {
    const beside = (options.tables ?? []).map((file) => ({
        file,
        from: '--tables',
        report: (problem) => ({ file: '--tables', got: JSON.stringify(file), problem }),
    }));
    const rows = new Map(tableRows);
    const found = new Map();
    const places = new Map();
    const faults = [];
    const notes = [];
    for (const { file, from, report } of [...namedTables(reader), ...beside]) {
        const answer = loadText(options.load, file, from);
        if ('problem' in answer) {
            faults.push(report(answer.problem));
            continue;
        }
        const reading = readTable(answer.text, file, rows);
        faults.push(...reading.faults);
        for (const [id, line] of reading.lines)
            places.set(id, { file, line });
        for (const override of reading.rows) {
            found.delete(override.id);
            found.set(override.id, override);
            const { row } = overrideRow(override, rows);
            if (row !== undefined)
                rows.set(override.id, row);
        }
        notes.push(noteOf(file, reading.rows));
    }
    return { overrides: [...found.values()], rows, places, faults, notes };
}
/** Most numbers of the tables that one file gives anew. */
const mostOverrides = 5000;
/** Reads the section `parameters`, on top of the rows that hold so far; puts each into `rows`. */
function readNumbers(reader, rows) {
    const keys = reader.keys(['parameters']);
    if (keys.length > mostOverrides)
        reader.fault(['parameters'], 'too many entries', { expected: `at most ${mostOverrides}` }, true);
    return keys.slice(0, mostOverrides).flatMap((id) => {
        const path = ['parameters', id];
        if (reader.has([...path, 'like']))
            return [...readLikeness(reader, path, id, rows)];
        const given = reader.parse(parameterSchema, path);
        if (given === undefined)
            return [];
        const numbers = typeof given === 'number' ? { value: given } : given;
        const override = compact({ id, ...numbers, where: reader.where(path) });
        const { faults, row } = overrideRow(override, rows);
        for (const { problem, got, expected, nearest } of faults) {
            const unknown = !rows.has(id);
            reader.fault(path, problem, compact({ got: unknown ? undefined : got, expected, nearest }), unknown);
        }
        if (row !== undefined)
            rows.set(id, row);
        return faults.length > 0 ? [] : [override];
    });
}
/**
 * Rows in place of those that a faulty table did not give, so that the rest of the file can be read and all its
 * faults be told: they never reach a run.
 */
function standIns(ids, rows) {
    const subjects = new Set([...ids].map((id) => id.split('.').slice(0, 2).join('.')));
    return [...subjects].flatMap((subject) => {
        const [group] = subject.split('.');
        if (!isOpenGroup(group))
            return [];
        return properties[group].needed.flatMap((property) => {
            const id = `${subject}.${property}`;
            if (rows.has(id))
                return [];
            const { unit, high } = formOf(group, property);
            const number = { value: high, low: high, high, unit, distribution: 'fixed' };
            const rest = { conditions: 'stand-in', source: 'scenario', page: '-', mark: 'U' };
            return [{ table: tableOf[group], id, ...number, ...rest }];
        });
    });
}
/**
 * Reads the tables of the user and the section `parameters`. Comes first, since defaults of other sections are
 * numbers of the tables. Single numbers win over tables, later tables over earlier.
 */
export function readOverrides(tree, options) {
    const reader = new Reader(tree, options.load);
    const tables = readTables(reader, options);
    const rows = new Map(tables.rows);
    const numbers = readNumbers(reader, rows);
    const overrides = [...tables.overrides, ...numbers];
    const faults = [...reader.faults, ...tables.faults];
    const named = new Map(tables.places);
    for (const { id, ...fault } of subjectFaults(rows, tables.places)) {
        const place = named.get(id) ?? originAt(tree, ['parameters', id]);
        faults.push({ ...place, key: id.split('.').slice(0, 2).join('.'), ...fault });
    }
    const sound = faults.length === 0;
    const standing = sound ? [] : standIns(tables.places.keys(), rows);
    const parameters = sound
        ? createParameters(overrides)
        : parametersOf(new Map([...rows.values(), ...standing].map((row) => [row.id, row])));
    return { overrides, parameters, faults, notes: tables.notes };
}
/**
 * Reads tables of the user without a scenario.
 * @param tables paths as `load` takes them, a later one winning over an earlier
 * @returns what `createParameters` takes, and what the tables changed, one line each
 * @throws InputError with every fault, each with file, line and column
 */
export function readOwnTables(tables, load) {
    const nothing = { kind: 'map', origin: { file: '--tables' }, entries: new Map() };
    const { overrides, faults, notes } = readOverrides(nothing, { load, tables });
    if (faults.length > 0)
        throw new InputError(faults);
    return { overrides, notes };
}
//# sourceMappingURL=parameters.js.map
import { nearest } from '../base/nearest.js';
import { formOf, isOpenGroup, properties } from './properties.js';
import { tableOf } from './table-row.js';
/** Quantities that may have any sign: offsets of a scale, coefficients of fitted curves, alkalinity of acids. */
const signed = (form, table) => form.unit === 'degC' || table === 'constants' || (table === 'dosing' && form.unit === 'eq/g');
/** A share, such as a digestibility: unit 1 and never above 1 in the tables. */
const isShare = (form) => form.unit === '1' && form.low >= 0 && form.high <= 1;
/** Numbers that were in the tables once, and what stands in their place. */
const replaced = {
    'aob.k-alkalinity': 'aob.k-carbon',
    'biofilm.seed': 'biofilm.seed-aob',
    'aob.ph-low': 'nitrifier.flank-fresh',
    'nob.ph-low': 'nitrifier.flank-fresh',
    'fish.fasting-theta': 'fish.maintenance-theta',
    'solids.exposed': 'solids.oxygen-diffusion',
    'solids.mineralisation-suspended': 'solids.hydrolysis-suspended',
    'solids.mineralisation-settled': 'solids.hydrolysis-settled',
};
/** Properties that subjects had once, and what stands in their place. */
const replacedProperties = {
    fish: {
        'feed-conversion': 'energy-retention',
        'reference-ration': 'appetite',
        'fasting-loss': 'maintenance',
    },
    crop: { 'final-mass': 'light-use', 'nitrogen-minimum': 'nitrogen-least' },
};
/** Why they are numbers no more. */
const replacedBecause = {
    fish: 'it comes out of the energy of the fish',
    crop: 'crops grow by light, along their curve of nitrogen',
};
/** Why an id is no number of the tables and may not be added to them; undefined when it may. */
export function idFault(id, rows) {
    const [group, subject = '', property = '', ...more] = id.split('.');
    const unknown = () => {
        const near = (Object.hasOwn(replaced, id) ? replaced[id] : undefined) ?? nearest(id, rows.keys());
        return { problem: 'no such number in the tables', ...(near === undefined ? {} : { nearest: near }) };
    };
    if (!isOpenGroup(group) || subject === '' || property === '' || more.length > 0)
        return unknown();
    const { needed, further, together = [] } = properties[group];
    const all = [...needed, ...further, ...together];
    const instead = replacedProperties[group]?.[property];
    if (instead !== undefined) {
        const ask = property === 'feed-conversion' ? `; a measured one is given as feed-conversion of a group of fish` : '';
        return {
            problem: `no number any more: ${replacedBecause[group] ?? ''}${ask}`,
            nearest: rows.has(`${group}.${instead}`) ? `${group}.${instead}` : `${group}.${subject}.${instead}`,
        };
    }
    if (!all.includes(property)) {
        const ours = [...rows.keys()].some((known) => known.startsWith(`${group}.${subject}.`));
        if (ours)
            return unknown();
        const near = nearest(property, all);
        const hint = near === undefined ? { expected: `one of ${all.join(', ')}` } : { nearest: near };
        return { problem: `no such property of ${group}`, ...hint };
    }
    if (/^[a-z][a-z0-9-]{0,63}$/.test(subject))
        return undefined;
    return {
        problem: 'not a name',
        got: subject,
        expected: 'a small letter, then small letters, digits and -',
    };
}
/** The row that stands for an id: that of the tables, or for a new subject the form of its property. */
function formFor(id, rows) {
    const base = rows.get(id);
    if (base !== undefined)
        return base;
    const [group, , property] = id.split('.');
    if (!isOpenGroup(group))
        throw new RangeError(`no number "${id}" in the tables`);
    return { ...formOf(group, property), table: tableOf[group] };
}
/** Puts a number given by the user in place of one of the rows, or beside them. */
export function overrideRow(override, rows) {
    const { id, value, row: given } = override;
    const key = override.where ?? id;
    const base = rows.get(id);
    const wrong = base !== undefined ? undefined : idFault(id, rows);
    if (wrong !== undefined || (base === undefined && given === undefined)) {
        const near = nearest(id, rows.keys());
        const hint = near === undefined ? {} : { nearest: near };
        const fault = wrong ?? { problem: 'no such number; a new one needs a row in a table', ...hint };
        return { faults: [{ key, got: id, ...fault }], warnings: [] };
    }
    const form = formFor(id, rows);
    const low = override.low ?? value;
    const high = override.high ?? value;
    const faults = [...senseFaults(form, id, key, [low, value, high])];
    if (faults.length === 0 && (low > value || value > high)) {
        faults.push({
            key,
            got: `${low} .. ${value} .. ${high}`,
            problem: `range of ${id} does not hold its value`,
            expected: 'low <= value <= high',
        });
    }
    if (given !== undefined && faults.length === 0)
        faults.push(...spreadFaults(given.distribution, key, low, high));
    if (faults.length > 0)
        return { faults, warnings: [] };
    const outside = base !== undefined && (value < base.low || value > base.high);
    const warnings = outside
        ? [`${id} is ${value} ${base.unit}, outside its published range ${base.low} .. ${base.high}`]
        : [];
    if (given !== undefined) {
        const { table, unit } = form;
        const row = { ...given, table, id, unit, value, low, high, given: override.where ?? 'a table' };
        return { row, faults, warnings };
    }
    if (base === undefined)
        throw new RangeError(`no number "${id}" in the tables`);
    const ranged = low < high;
    const distribution = ranged ? (base.distribution === 'fixed' ? 'uniform' : base.distribution) : 'fixed';
    const stated = { conditions: 'given by the scenario', source: 'scenario', page: '-', mark: 'U' };
    const from = override.where ?? 'the scenario';
    return {
        row: { ...base, value, low, high, distribution, ...stated, given: from },
        faults,
        warnings,
    };
}
function* spreadFaults(distribution, key, low, high) {
    const got = `${low} .. ${high}`;
    if (distribution !== 'fixed' && low >= high) {
        yield { key, got, problem: `${distribution} needs a range`, expected: 'low < high, or fixed' };
    }
    else if (distribution === 'lognormal' && low <= 0) {
        yield { key, got, problem: 'lognormal must stay above zero', expected: 'low > 0' };
    }
}
function* senseFaults(form, id, key, values) {
    const got = `${values.find((value) => !Number.isFinite(value)) ?? values[1]}`;
    const free = signed(form, form.table);
    if (!values.every(Number.isFinite)) {
        yield { key, got, problem: `${id} is not a finite number`, expected: `a number in ${form.unit}` };
    }
    else if (!free && values.some((value) => value < 0)) {
        yield { key, got: `${Math.min(...values)}`, problem: `${id} is below zero`, expected: 'zero or more' };
    }
    else if (!free && form.low > 0 && values.some((value) => value === 0)) {
        yield { key, got: '0', problem: `${id} is zero`, expected: 'more than zero' };
    }
    else if (isShare(form) && values.some((value) => value > 1)) {
        yield { key, got: `${Math.max(...values)}`, problem: `${id} is a share above 1`, expected: '0 to 1' };
    }
}
//# sourceMappingURL=override.js.map
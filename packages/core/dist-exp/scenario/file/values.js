import * as z from 'zod';
import { boundProblem, countFrom, describeBound, numberFrom, shareBound, shareRange, } from '../../base/bounds.js';
import { isDate } from '../../base/calendar.js';
import { nearest } from '../../base/nearest.js';
import { describeDimension, exampleQuantities, formatQuantity, parseQuantity, } from '../../base/units.js';
import { complain, kindComplaint } from './complaint.js';
/** The usual complaint about what should be a quantity: a bare number lacks its unit. */
export function quantityComplaint(input, expected) {
    return typeof input === 'number' && Number.isFinite(input)
        ? complain({ problem: 'a number without a unit', expected })
        : kindComplaint(input, expected);
}
/**
 * Descriptions of keys close with what the reference of the file and editors show apart: `; range: ...`, then
 * `; default: ...`. A range that the caller did not write is put in its place.
 */
function withRange(description, range) {
    if (description.includes('; range: '))
        return description;
    const [what = '', ...rest] = description.split(/(?=; default: )/);
    return `${what}; range: ${range}${rest.join('')}`;
}
/** A description without its range and default, as messages say it. */
export function described(description) {
    return description.replace(/; (?:range|default): .*$/, '');
}
/** A written quantity such as `"450 L"`, read into the internal unit of its dimension. Only temperatures go below 0. */
export function quantity(dimension, description) {
    const expected = describeDimension(dimension);
    return z
        .string({ error: ({ input }) => quantityComplaint(input, expected) })
        .meta({
        description: dimension === 'temperature' ? description : withRange(description, '0 or more'),
        examples: [...exampleQuantities(dimension)],
    })
        .transform((text, context) => {
        const answer = parseQuantity(text, dimension);
        if ('value' in answer)
            return answer.value;
        context.addIssue({ code: 'custom', message: complain(answer) });
        return z.NEVER;
    });
}
/** A quantity that must be more than zero. */
export function positive(dimension, description) {
    return quantity(dimension, withRange(description, 'more than 0')).refine((value) => value > 0, {
        error: () => complain({ problem: 'must be more than zero', expected: describeDimension(dimension) }),
    });
}
/** A quantity that may not be more than what can be meant. */
function quantityUpTo({ dimension, why = '' }, high, description) {
    const most = formatQuantity(high, dimension);
    return quantity(dimension, withRange(description, `0 to ${most}`)).refine((value) => value <= high, {
        error: () => complain({ problem: 'out of range', expected: `at most ${most}: ${why}` }),
    });
}
/** A share: `0.6` or `"60 %"`. `below` leaves out 1 itself. */
export function share(description, upTo = 'to-one') {
    const bound = shareBound(upTo);
    const expected = `${describeBound(bound)}, such as "60 %" or 0.6`;
    return z
        .union([z.number(), z.string()], { error: ({ input }) => kindComplaint(input, expected) })
        .meta({
        description: withRange(description, upTo === 'any' ? '0 or more' : shareRange(bound)),
        examples: ['60 %', 0.6],
    })
        .transform((written, context) => {
        const answer = typeof written === 'number' ? { value: written } : parseQuantity(written, 'share');
        const problem = 'value' in answer ? boundProblem(bound, answer.value) : answer.problem;
        if (problem === undefined && 'value' in answer)
            return answer.value;
        const hint = 'nearest' in answer ? { nearest: answer.nearest } : {};
        context.addIssue({
            code: 'custom',
            message: complain({ problem: problem ?? 'out of range', expected, ...hint }),
        });
        return z.NEVER;
    });
}
/** A plain number between two bounds, both allowed. */
export function number(description, low, high) {
    const expected = describeBound(numberFrom(low, high));
    const error = () => complain({ problem: 'out of range', expected });
    return z
        .number({ error: ({ input }) => kindComplaint(input, expected) })
        .min(low, { error })
        .max(high, { error })
        .meta({ description });
}
/** A whole number of things. */
export function count(description, low, high) {
    const expected = describeBound(countFrom(low, high));
    const error = () => complain({ problem: 'out of range', expected });
    return z
        .int({ error: ({ input }) => kindComplaint(input, expected) })
        .min(low, { error })
        .max(high, { error })
        .meta({ description });
}
export function bounded(bound, description) {
    switch (bound.kind) {
        case 'quantity':
            return bound.high === undefined
                ? (bound.above ? positive : quantity)(bound.dimension, description)
                : quantityUpTo(bound, bound.high, description);
        case 'share':
            return share(description, bound.upTo);
        case 'number':
            return number(description, bound.low, bound.high);
        case 'count':
            return count(description, bound.low, bound.high);
    }
}
/** Words: a name used here, a title, a file. */
export function word(description) {
    const expected = described(description);
    return z.string({ error: ({ input }) => kindComplaint(input, expected) }).meta({ description });
}
/** `true` or `false`. */
export function truth(description) {
    return z.boolean({ error: ({ input }) => kindComplaint(input, 'true or false') }).meta({ description });
}
/** One of a few words. */
export function choice(description, options) {
    const expected = `one of ${options.join(', ')}`;
    return z
        .enum(options, {
        error: ({ input }) => {
            if (typeof input !== 'string')
                return kindComplaint(input, expected);
            const guess = nearest(input, options);
            return complain({
                problem: 'unknown word',
                expected,
                ...(guess === undefined ? {} : { nearest: guess }),
            });
        },
    })
        .meta({ description });
}
/** A map of known keys; any other key is a fault that lists them. */
export function section(shape, description) {
    const keys = Object.keys(shape);
    return z
        .strictObject(shape, {
        error: ({ code, input }) => code === 'unrecognized_keys'
            ? complain({ problem: 'unknown key', expected: `one of ${keys.join(', ')}` })
            : kindComplaint(input, `a map of ${keys.slice(0, 6).join(', ')}${keys.length > 6 ? ' ...' : ''}`),
    })
        .meta({ description });
}
/** A calendar date `yyyy-mm-dd`. */
export function date(description) {
    const expected = 'a date such as 2026-03-01';
    return z
        .string({ error: ({ input }) => kindComplaint(input, expected) })
        .meta({ description, examples: ['2026-03-01'] })
        .refine(isDate, {
        error: () => complain({ problem: 'no such date', expected }),
    });
}
/**
 * A value that may be written in one of two forms: a map with a certain key or one of several, or anything else.
 * Faults are those of the form that the key tells.
 */
export function formByKey(key, keyed, other) {
    return z.union([other, keyed], {
        error: ({ input }) => {
            const keys = typeof key === 'string' ? [key] : key;
            const present = typeof input === 'object' && input !== null && keys.some((each) => each in input);
            return complain({ problem: 'of neither form', form: present ? 1 : 0 });
        },
    });
}
//# sourceMappingURL=values.js.map
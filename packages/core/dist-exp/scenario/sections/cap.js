import * as z from 'zod';
import { parseQuantity } from '../../base/units.js';
import { complain } from '../file/complaint.js';
import { quantityComplaint } from '../file/values.js';
/** Days in a week. */
const week = 7;
/**
 * A cap such as `160 L/d` or `1 m3/week`. What it is written per is the time in which it holds: a week's
 * water may be drawn in one day. Any other time (`5 L/h`) is made into a day.
 */
export function cap(description) {
    const expected = 'water a day or a week such as "160 L/d" or "1 m3/week"';
    return z
        .string({
        error: ({ input }) => quantityComplaint(input, expected),
    })
        .meta({
        description: description.replace(/(?=; default: |$)/, '; range: 0 or more'),
        examples: ['160 L/d', '1 m3/week'],
    })
        .transform((text, context) => {
        const answer = parseQuantity(text, 'volume-flow');
        if ('value' in answer) {
            return /\/\s*week$/.test(text.trim())
                ? { weeklyCap: answer.value * week }
                : { dailyCap: answer.value };
        }
        context.addIssue({ code: 'custom', message: complain({ ...answer, expected }) });
        return z.NEVER;
    });
}
//# sourceMappingURL=cap.js.map
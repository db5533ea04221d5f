import { monthOf } from '../base/calendar.js';
/**
 * Daily values worked out from others, day by day: as plain as the least plain of them, so that two monthly values make
 * a monthly one.
 */
export function combined(given, work, { startDate, days }) {
    const at = (month, day) => work(...given.map((value) => valueInMonth(value, month, day)));
    if (given.every(({ kind }) => kind === 'constant'))
        return { kind: 'constant', value: at(0, 0) };
    if (given.every(({ kind }) => kind !== 'daily'))
        return { kind: 'monthly', values: Array.from({ length: 12 }, (_, month) => at(month, 0)) };
    const count = Math.max(1, Math.ceil(days));
    return {
        kind: 'daily',
        values: Array.from({ length: count }, (_, day) => at(monthOf(startDate, day), day)),
    };
}
/** Value on a day of the run; a daily list goes on with its last value. */
export function valueOn(value, startDate, day) {
    return valueInMonth(value, value.kind === 'monthly' ? monthOf(startDate, day) : 0, day);
}
/** The same with the month (0-11) of the day known. */
export function valueInMonth(value, month, day) {
    switch (value.kind) {
        case 'constant':
            return value.value;
        case 'monthly':
            return value.values[month];
        case 'daily':
            return value.values[Math.min(day, value.values.length - 1)];
    }
}
//# sourceMappingURL=value-on.js.map
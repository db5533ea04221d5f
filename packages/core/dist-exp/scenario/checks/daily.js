import { formatQuantity } from '../../base/units.js';
/** Months in a year. */
const months = 12;
/** What is wrong with how many values a list of a kind has, if anything. */
export function listProblem(kind, count) {
    if (kind === 'monthly' && count !== months)
        return { problem: 'not twelve values', expected: 'January to December' };
    return count === 0
        ? { problem: 'an empty list', expected: 'one value for each day of the run' }
        : undefined;
}
/** Whether daily values are within their range and reach to the end of the run; a fault where they do not. */
export function checkDaily(report, kind, values, { dimension, days, low = -Infinity, high = Infinity }, places) {
    const outside = values.findIndex((value) => !(value >= low && value <= high));
    if (outside >= 0) {
        const least = formatQuantity(low, dimension);
        report.fault(places.value(outside), `out of range${places.note?.(outside) ?? ''}`, {
            expected: high === Infinity ? `${least} or more` : `${least} to ${formatQuantity(high, dimension)}`,
        });
        return false;
    }
    if (kind !== 'daily' || values.length >= days)
        return true;
    report.fault(places.list, 'fewer days than the run', {
        got: String(values.length),
        expected: `at least ${Math.ceil(days)}`,
    });
    return false;
}
//# sourceMappingURL=daily.js.map
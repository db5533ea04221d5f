import { calendarDays } from '../../base/calendar.js';
import { INSTANT } from '../../base/instant.js';
import { sum } from '../../base/sum.js';
import { parseQuantity } from '../../base/units.js';
import { fillsWindow, runningMean } from '../../result/judge.js';
import { seriesOf } from '../../result/series.js';
import { NoAnswerError } from './phrase.js';
/** Reads a time such as `30 d`. */
function timeOf(text, joint) {
    const answer = parseQuantity(text, 'time');
    if ('value' in answer)
        return answer.value;
    return { got: text === '' ? `nothing after ${joint}` : text, ...answer };
}
/** Reads a time after the start or a date. */
function dayOf(text, joint, clock) {
    if (!/^\d{4}-\d/.test(text))
        return timeOf(text, joint);
    const day = calendarDays(text);
    if (day === undefined)
        return { got: text, problem: 'no such date', expected: 'a date such as 2026-03-01' };
    return day - (calendarDays(clock.startDate) ?? 0);
}
/**
 * Reads the joining words `averaged TIME`, `from WHEN` and `to WHEN` against the clock of a run.
 * @returns the window, and all that is wrong with it
 */
export function windowOf(parts, clock) {
    const faults = [];
    const read = (joint) => {
        const part = parts.find((each) => each.joint === joint);
        if (part === undefined)
            return undefined;
        const found = joint === 'averaged' ? timeOf(part.text, joint) : dayOf(part.text, joint, clock);
        if (typeof found === 'number')
            return found;
        faults.push(found);
        return undefined;
    };
    const averaging = read('averaged') ?? 0;
    const start = clock.saved?.time ?? 0;
    const from = read('from') ?? start;
    const to = read('to');
    const end = to ?? clock.days;
    if (from < start || from > clock.days || end > clock.days || end < start) {
        faults.push({
            got: `${from} d to ${end} d`,
            problem: 'outside the run',
            expected: `from ${start} to ${clock.days} d`,
        });
    }
    else if (end <= from) {
        faults.push({ got: `${from} d to ${end} d`, problem: 'the end does not come after the beginning' });
    }
    else if (averaging > end - from) {
        faults.push({
            got: `${averaging} d`,
            problem: 'averaged over longer than what is looked at',
            expected: `at most ${end - from} d`,
        });
    }
    return { window: { from, averaging, ...(to === undefined ? {} : { to }) }, faults };
}
/** The straight line between two points of a span. */
function between({ times, values }, after, time) {
    const share = (time - times[after - 1]) / (times[after] - times[after - 1]);
    return values[after - 1] + share * (values[after] - values[after - 1]);
}
/** The part of a course from one time to another, with values on the lines at its ends. */
function cut(course, from, to) {
    const { times, values } = course;
    const cutTimes = [];
    const cutValues = [];
    times.forEach((time, i) => {
        const before = i > 0 ? times[i - 1] : time;
        for (const edge of [from, to]) {
            if (before < edge - INSTANT && time > edge + INSTANT) {
                cutTimes.push(edge);
                cutValues.push(between(course, i, edge));
            }
        }
        if (time >= from - INSTANT && time <= to + INSTANT) {
            cutTimes.push(time);
            cutValues.push(values[i]);
        }
    });
    const sorted = cutTimes.map((time, i) => ({ time, value: cutValues[i] })).sort((a, b) => a.time - b.time);
    return { times: sorted.map(({ time }) => time), values: Float64Array.from(sorted, ({ value }) => value) };
}
/**
 * What a measure looks at: the course within the window, then its running means over the averaging time,
 * every mean lying wholly within the window. Throws NoAnswerError where the course ends too early.
 */
function spanOf(course, window) {
    const last = course.times[course.times.length - 1];
    const to = window.to ?? last;
    if (to > last + INSTANT || to - window.from < window.averaging - INSTANT)
        throw new NoAnswerError(`the run ends on day ${last}`);
    const { times, values } = cut(course, window.from, to);
    if (window.averaging === 0)
        return { times, values };
    const means = runningMean(times, values, window.averaging);
    const full = times.findIndex((time) => fillsWindow(times[0], time, window.averaging));
    return { times: times.slice(full), values: means.slice(full) };
}
/** The one kind of series that has no value at times: the mean mass of no fish. */
const gappy = /^fish-mean-mass@/;
/**
 * The span of a series of a run that a measure looks at. Throws NoAnswerError where a value is missing
 * that ought to be there, or the run ends too early.
 */
export function spanOfRun(run, series, window) {
    const times = run.samples.map(({ time }) => time);
    const span = spanOf({ times, values: seriesOf(run, series).values }, window);
    const hole = span.values.findIndex((value) => !Number.isFinite(value));
    if (hole >= 0 && !gappy.test(series))
        throw new NoAnswerError(`${series} has no value on day ${span.times[hole]}`);
    return span;
}
/** Time-weighted mean of the straight lines, over the lines whose ends both have a value. */
function mean({ times, values }) {
    const lines = times
        .slice(1)
        .map((time, i) => ({ width: time - times[i], height: (values[i] + values[i + 1]) / 2 }))
        .filter(({ height }) => !Number.isNaN(height));
    return sum(lines.map(({ width, height }) => width * height)) / sum(lines.map(({ width }) => width));
}
/** The most extreme of the values there are. */
function extreme({ values }, sign) {
    return values.reduce((best, value) => (Number.isNaN(best) || sign * value > sign * best ? value : best), Number.NaN);
}
const first = ({ values }) => values[0];
const last = ({ values }) => values[values.length - 1];
/** One number for a span of a series; NaN where no value is there to be counted. */
export const statistics = {
    highest: (span) => extreme(span, 1),
    lowest: (span) => extreme(span, -1),
    mean,
    first,
    last,
    change: (span) => last(span) - first(span),
};
//# sourceMappingURL=window.js.map
/** Integral from times[0] to each time of the straight lines through the values. */
function integral(times, values) {
    const whole = new Float64Array(times.length);
    for (let i = 1; i < times.length; i++) {
        whole[i] = whole[i - 1] + ((times[i] - times[i - 1]) * (values[i] + values[i - 1])) / 2;
    }
    return whole;
}
/** Whether a window reaches from one time to another, but for rounding: the first full one is not missed by the last bit. */
export function fillsWindow(from, to, window) {
    return to - from >= window * (1 - 1e-9);
}
/**
 * Mean over the window that ends at each time, of the straight lines through (time, value): exact for
 * them. NaN where the window reaches back past the first time. A window of 0 gives the values back.
 * @param times ascending
 * @param window same unit as the times, 0 or more
 */
export function runningMean(times, values, window) {
    if (window === 0)
        return Float64Array.from(values);
    const whole = integral(times, values);
    const means = new Float64Array(times.length).fill(Number.NaN);
    let j = 0;
    for (let i = 0; i < times.length; i++) {
        const time = times[i];
        const from = Math.max(time - window, times[0]);
        if (!fillsWindow(times[0], time, window))
            continue;
        while (j + 1 < times.length && times[j + 1] <= from)
            j++;
        const past = from - times[j];
        const slope = j + 1 < times.length ? (values[j + 1] - values[j]) / (times[j + 1] - times[j]) : 0;
        const before = whole[j] + past * (values[j] + (slope * past) / 2);
        means[i] = (whole[i] - before) / (time - from);
    }
    return means;
}
/** Part of an output step, as shares of its length, in which the line from a to b is above 0; undefined if none. */
function positivePart(a, b) {
    if (a <= 0 && b <= 0)
        return undefined;
    if (a > 0 && b > 0)
        return { from: 0, to: 1 };
    const root = a / (a - b);
    return a > 0 ? { from: 0, to: root } : { from: root, to: 1 };
}
/**
 * Compares running means with a limit. Between output times the mean is taken to run straight, so the
 * time of passing is interpolated.
 * @param times output times, d
 * @param averaging window, d; 0 compares the values themselves
 * @param matters whether anyone the limit is for was there at each time
 */
export function judge(times, values, limit, averaging, matters = () => true) {
    const sign = limit.direction === 'above' ? 1 : -1;
    const means = runningMean(times, values, averaging);
    const excess = (i) => sign * (means[i] - limit.value);
    let worst = -1;
    let first;
    let total = 0;
    /** Excess at the time before; NaN where it is not known or does not matter. */
    let before = Number.NaN;
    for (let i = 0; i < times.length; i++) {
        const was = before;
        const now = matters(i) ? excess(i) : Number.NaN;
        before = now;
        if (Number.isNaN(now))
            continue;
        if (worst < 0 || now > excess(worst))
            worst = i;
        if (now > 0)
            first ??= times[i];
        const part = Number.isNaN(was) ? undefined : positivePart(was, now);
        if (part === undefined)
            continue;
        const step = times[i] - times[i - 1];
        total += step * (part.to - part.from);
        const began = times[i - 1] + step * part.from;
        if (first === undefined || began < first)
            first = began;
    }
    if (worst < 0)
        return { judged: false, passed: false, total: 0 };
    return {
        judged: true,
        passed: first !== undefined,
        ...(first === undefined ? {} : { first }),
        total,
        worst: means[worst],
        worstAt: times[worst],
    };
}
//# sourceMappingURL=judge.js.map
/** Values of a scan. */
const COUNT = 9;
/** From this ratio of the ends on, values are spread by equal ratios. */
const WIDE = 10;
/**
 * Values that show the whole of a range, its ends among them: by equal steps, or by equal ratios where the range is
 * wide; whole numbers, each once, where only they make sense.
 */
function scanValues(from, to, whole = false) {
    const geometric = from > 0 && to / from >= WIDE;
    const values = Array.from({ length: COUNT }, (_, i) => {
        if (i === 0)
            return from;
        if (i === COUNT - 1)
            return to;
        const share = i / (COUNT - 1);
        const value = geometric ? from * (to / from) ** share : from + (to - from) * share;
        return whole ? Math.round(value) : value;
    });
    return [...new Set(values)];
}
/**
 * The margin that decides: that of the condition nearest to failing, each in its own measure over the bracket, so
 * that margins of different units can be held against each other. NaN where there is no answer.
 */
function deciding(trial, other) {
    return trial.margins.reduce((worst, margin, i) => {
        const scale = Math.abs(margin) + Math.abs(other.margins[i]);
        const share = scale === 0 ? 0 : margin / scale;
        return Number.isNaN(share) || share < worst ? share : worst;
    }, Infinity);
}
/**
 * The next value to try between one that fails and one that holds: where the straight line between their margins
 * crosses zero, no nearer to an end than half the final width; or the middle, where the line is not to be trusted.
 * @param width at which the search ends
 */
function closer(fails, holds, width) {
    const below = deciding(fails, holds);
    const above = deciding(holds, fails);
    const middle = (fails.value + holds.value) / 2;
    if (!(below < 0 && above > 0))
        return middle;
    const line = (fails.value * above - holds.value * below) / (above - below);
    const least = Math.min(fails.value, holds.value) + width / 2;
    const most = Math.max(fails.value, holds.value) - width / 2;
    return least < most ? Math.min(most, Math.max(least, line)) : middle;
}
/** Ranges of neighbouring trials that hold. */
function rangesOf(trials) {
    const ranges = [];
    trials.forEach(({ value, holds }, i) => {
        if (!holds)
            return;
        const last = ranges[ranges.length - 1];
        if (i > 0 && trials[i - 1].holds)
            ranges[ranges.length - 1] = { ...last, to: value };
        else
            ranges.push({ from: value, to: value });
    });
    return ranges;
}
/** Conditions that fail at a trial; all of them where there is no answer at all. */
function failing({ margins, holds }) {
    if (holds)
        return [];
    return margins.flatMap((margin, i) => (margin > 0 ? [] : [i]));
}
/** Trials outwards from a value by growing steps, until one holds and one fails or the ends are reached. */
function walk(search, near, run) {
    const { from, to, want } = search;
    const first = run(near);
    // From one that holds towards the wanted end, from one that fails away from it.
    const down = first.holds === (want === 'smallest');
    for (let step = 1.25;; step *= step) {
        const next = down ? near - (near - from) * (1 - 1 / step) : near + (to - near) * (1 - 1 / step);
        const end = down ? from : to;
        const value = step > 40 ? end : next;
        if (run(value).holds !== first.holds || value === end)
            return;
    }
}
/**
 * Finds the smallest (or largest) value at which every condition holds: a scan of the whole range that shows
 * where conditions hold, then a bracketed search between a value that fails and one that holds, to `within`.
 * Between two neighbouring values of the scan nothing is known but what the search tries.
 * @throws RangeError where from is not below to, or within is not between 0 and 1
 */
export function findSize(search) {
    const { from, to, want, within, whole = false } = search;
    if (!(from < to))
        throw new RangeError(`from ${from} is not below to ${to}`);
    if (!(within > 0 && within < 1))
        throw new RangeError(`within is ${within}; expected a share between 0 and 1`);
    const digits = Math.max(4, Math.ceil(-Math.log10(within)) + 2);
    const tidy = (value) => {
        if (value <= from)
            return from;
        if (value >= to)
            return to;
        return whole ? Math.round(value) : Number(value.toPrecision(digits));
    };
    const tried = new Map();
    const run = (value) => {
        const exact = tidy(value);
        const known = tried.get(exact) ?? search.judge(exact);
        tried.set(exact, known);
        return known;
    };
    const ascending = () => [...tried.values()].sort((a, b) => a.value - b.value);
    if (search.near === undefined)
        for (const value of scanValues(from, to, whole))
            run(value);
    else
        walk(search, search.near, run);
    /** From the wanted end on. */
    const inOrder = want === 'smallest' ? ascending() : ascending().reverse();
    const parts = rangesOf(inOrder).length;
    const first = inOrder.findIndex(({ holds }) => holds);
    const answer = (kind, value, fails) => {
        const trials = ascending();
        const last = inOrder.find(({ holds }, i) => i > first && !holds);
        return {
            kind,
            ...(value === undefined ? {} : { value }),
            ...(fails === undefined ? {} : { fails: fails.value }),
            ...(kind === 'found' && last !== undefined ? { failsAgain: last.value } : {}),
            binding: fails === undefined ? [] : failing(fails),
            stretches: rangesOf(trials),
            trials,
        };
    };
    if (first < 0) {
        const best = inOrder.reduce((a, b) => (least(b) > least(a) ? b : a));
        return { ...answer('holds-nowhere'), binding: failing(best) };
    }
    if (inOrder.every(({ holds }) => holds))
        return answer('holds-everywhere', inOrder[0].value);
    if (first === 0) {
        const further = inOrder.find(({ holds }) => !holds);
        return answer(parts === 1 ? 'at-the-end' : 'not-monotone', inOrder[0].value, further);
    }
    let fails = inOrder[first - 1];
    let holds = inOrder[first];
    const gap = () => Math.abs(holds.value - fails.value);
    let slow = false;
    while (gap() > (whole ? 1 : within * Math.abs(holds.value))) {
        const before = gap();
        const middle = (fails.value + holds.value) / 2;
        const next = run(slow ? middle : closer(fails, holds, within * Math.abs(holds.value)));
        // Rounded onto an end of the bracket: it cannot be narrowed further.
        if (next.value === fails.value || next.value === holds.value) {
            if (slow)
                break;
        }
        else if (next.holds)
            holds = next;
        else
            fails = next;
        // A step that does not halve the bracket is followed by one that does.
        slow = gap() > before / 2;
    }
    return answer(parts === 1 ? 'found' : 'not-monotone', holds.value, fails);
}
/** The worst margin of a trial; -Infinity where it has no answer. */
function least({ margins }) {
    return margins.some(Number.isNaN) ? -Infinity : Math.min(...margins);
}
//# sourceMappingURL=size.js.map
import { INSTANT } from '../base/instant.js';
/** A buffer of fresh arrays. */
export const freshBuffer = { array: (size) => new Float64Array(size) };
/**
 * A buffer that hands out the same arrays again after `clear`, for runs that are read out one after another: the
 * members of an ensemble then leave next to nothing to be swept up.
 */
export function reusedBuffer() {
    const arrays = [];
    let next = 0;
    return {
        array(size) {
            const place = next++;
            const kept = arrays[place];
            if (kept?.length === size)
                return kept;
            return (arrays[place] = new Float64Array(size));
        },
        clear() {
            next = 0;
        },
    };
}
/** Output times: the multiples of a step from a start to the end, start and end included. */
export function outputTimes(days, every, from = 0) {
    const first = Math.ceil(from / every - INSTANT);
    const count = Math.floor(days / every + INSTANT) - first;
    const times = Array.from({ length: count + 1 }, (_, index) => (first + index) * every);
    if (times[0] - from > INSTANT)
        times.unshift(from);
    else
        times[0] = from;
    const last = times.length - 1;
    if (days - times[last] > INSTANT)
        times.push(days);
    else
        times[last] = days;
    return times;
}
//# sourceMappingURL=sample-buffer.js.map
import { judge } from './judge.js';
import { harms, limitReader } from './limit-check.js';
import { allSeries } from './series.js';
import { limitsForCrops } from './limits-for-crops.js';
import { limitsForFish } from './limits-for-fish.js';
import { limitsForRelease } from './limits-for-release.js';
import { limitsOfDomain } from './limits-of-domain.js';
import { limitsForSystem } from './limits-for-system.js';
/**
 * How far within a limit at the worst, as a share of the limit (of one unit where the limit is 0); below 0 beyond it,
 * NaN where it was not judged.
 */
export function marginOf({ worst = Number.NaN, value, direction }) {
    const sign = direction === 'above' ? -1 : 1;
    return (sign * (worst - value)) / (value === 0 ? 1 : Math.abs(value));
}
/** Order of limits that were passed: by the harm of it, then by how long. For sorting. */
export function worstFirst(a, b) {
    return harms.indexOf(a.harm) - harms.indexOf(b.harm) || b.total - a.total;
}
function checksOf(run, series) {
    const reader = limitReader(run, series);
    return [
        ...limitsForFish(reader),
        ...limitsForCrops(reader),
        ...limitsForSystem(reader),
        ...limitsForRelease(reader),
        ...limitsOfDomain(reader),
    ];
}
/** Every limit that runs of a model are held against, in the order of `limitsOf`. */
export function limitNames(model) {
    const course = { model, samples: [] };
    return checksOf(course, allSeries(course)).map(({ limit, place }) => ({ ...limit, place }));
}
/**
 * Holds a run against every limit of the tables for its species, crops and water. Values between output
 * times are not seen: an averaging time shorter than the output step is marked as not resolved, and a run
 * shorter than an averaging time is not judged by it. A design aid: fish welfare, food safety and
 * discharge stay with local codes and licensed practice.
 * @param series all series of the run, where they are at hand
 */
export function limitsOf(run, series = allSeries(run)) {
    const times = run.samples.map(({ time }) => time);
    const step = run.model.scenario.every;
    return checksOf(run, series).map(({ limit, place, values, matters }) => {
        const resolved = limit.averaging === 0 || limit.averaging >= step;
        return {
            ...limit,
            place,
            resolved,
            ...judge(times, values, limit, resolved ? limit.averaging : 0, matters),
        };
    });
}
//# sourceMappingURL=limits.js.map
import { quantileSorted } from 'd3-array';
import { InputError } from '../../base/faults.js';
import { basisOf } from '../uncertainty/members.js';
import { openRuns } from '../uncertainty/open-runs.js';
import { bandsOf } from '../uncertainty/quantiles.js';
import { openSampling } from '../uncertainty/sampling.js';
import { findSize } from './size.js';
import { judgeRun } from './trial.js';
/**
 * Opens the search for draws: the size of a member by its number. Each draw keeps its numbers at every value.
 * Throws InputError for a sampling or conditions that cannot be.
 */
export function openSizeMembers(draws) {
    const { open, keep, sampling, about, chosen, ...search } = draws;
    const { rows, conditions } = basisOf(open(about), { measures: [], conditions: keep });
    const draw = openSampling(sampling, rows.map(({ id }) => id));
    return (member) => {
        const u = draw(member);
        const judge = (value) => {
            try {
                return judgeRun(openRuns(open(value), rows)(u), value, conditions);
            }
            catch (error) {
                if (!(error instanceof InputError))
                    throw error;
                const margins = conditions.map(() => Number.NaN);
                return { value, holds: false, margins, broke: error.message.replaceAll('\n', '; ') };
            }
        };
        const { kind, value, binding, trials } = findSize({ ...search, judge });
        const known = trials.find((trial) => trial.value === chosen);
        const survives = chosen === undefined ? undefined : (known ?? judge(chosen)).holds;
        return {
            kind,
            ...(value === undefined ? {} : { value }),
            binding,
            ...(survives === undefined ? {} : { survives }),
            broke: trials.flatMap((trial) => trial.broke === undefined ? [] : [{ value: trial.value, reason: trial.broke }]),
        };
    };
}
/** Straight lines between neighbours (d3-array); a neighbour beyond the range takes the whole step. */
function quantile(sorted, p) {
    const place = p * (sorted.length - 1);
    const below = Math.floor(place);
    const pair = sorted.slice(below, below + 2);
    if (place === below)
        return pair[0];
    if (pair.every(Number.isFinite))
        return quantileSorted(pair, place - below) ?? Number.NaN;
    return Number.isFinite(pair[0]) ? pair[1] : pair[0];
}
/**
 * Median and bands of the sizes of draws, and how many a chosen size survives.
 * @param outcomes one for each draw; at least one
 * @param want which end of the range is the wanted one
 * @param conditions how many there are
 */
export function sizeSpread(outcomes, want, conditions) {
    const none = want === 'smallest' ? Infinity : -Infinity;
    const sorted = outcomes.map(({ value = none }) => value).sort((a, b) => a - b);
    const count = (holds) => outcomes.filter(holds).length;
    const anyChosen = outcomes.some(({ survives }) => survives !== undefined);
    return {
        members: outcomes.length,
        ...bandsOf((p) => quantile(sorted, p)),
        beyond: count(({ kind }) => kind === 'holds-nowhere'),
        atEnd: count(({ kind }) => kind === 'holds-everywhere' || kind === 'at-the-end'),
        notMonotone: count(({ kind }) => kind === 'not-monotone'),
        broke: count(({ broke }) => broke.length > 0),
        ...(anyChosen ? { survive: count(({ survives }) => survives === true) } : {}),
        binds: Array.from({ length: conditions }, (_, i) => count(({ binding }) => binding.includes(i))),
    };
}
//# sourceMappingURL=size-spread.js.map
import { InputError } from '../../base/faults.js';
import { openAccumulator } from './accumulator.js';
import { basisOf, memberOf, } from './members.js';
import { openRuns } from './open-runs.js';
import { bandsOf, summaryOf } from './quantiles.js';
import { openSampling } from './sampling.js';
function bandsOfSeries(outline, accumulator) {
    const width = outline.times.length;
    return outline.series.map(({ name, unit }, index) => {
        const column = (p) => Float64Array.from(outline.times, (_, i) => accumulator.series.quantile(index * width + i, p));
        const widths = outline.times.map((_, i) => accumulator.series.width(index * width + i));
        const resolution = widths.reduce((most, each) => Math.max(most, each), 0);
        return {
            name,
            unit,
            median: column(0.5),
            band50: [column(0.25), column(0.75)],
            band90: [column(0.05), column(0.95)],
            resolution,
        };
    });
}
/** What an accumulator says of an ensemble, whole or not. */
export function ensembleResult(outline, sampling, accumulator) {
    const { judged, passed, answers, holds, failed, unanswered } = accumulator.state();
    const summaries = [...outline.measures, ...outline.conditions].map(({ text, unit }, i) => ({
        text,
        unit,
        ...summaryOf(answers[i]),
        unanswered: unanswered[i],
    }));
    return {
        sampling,
        ran: accumulator.size(),
        failed,
        drawn: outline.rows,
        times: outline.times,
        series: bandsOfSeries(outline, accumulator),
        limits: outline.limits.map((limit, i) => ({
            ...limit,
            judged: judged[i],
            passed: passed[i],
            probability: passed[i] / judged[i],
            first: bandsOf((p) => accumulator.limits.quantile(2 * i, p)),
            total: bandsOf((p) => accumulator.limits.quantile(2 * i + 1, p)),
        })),
        measures: summaries.slice(0, outline.measures.length),
        conditions: summaries.slice(outline.measures.length).map((summary, i) => {
            const held = holds[i].reduce((sum, each) => sum + each, 0);
            return { ...summary, holds: held, share: held / summary.answered };
        }),
    };
}
/**
 * Runs members of an ensemble by their number, 0 to N - 1, each on its own. Throws InputError for a sampling that cannot
 * be.
 * @param open the system, read
 * @param basis what is drawn, and the measures and conditions of each member, as `basisOf` gives it
 * @param sampling how members are drawn
 * @param options relative `tolerance` of the integration (default as for `simulate`), and `allocate`, which gives the array
 *   for so many numbers of the series of a member (default: a new one each)
 */
export function openMembers(open, { rows, measures, conditions }, sampling, { allocate, ...options } = {}) {
    const runAt = openRuns(open, rows, { ...options, reuse: true });
    const draw = openSampling(sampling, rows.map(({ id }) => id));
    return (member) => {
        try {
            return memberOf(runAt(draw(member)), measures, conditions, allocate);
        }
        catch (error) {
            if (error instanceof InputError)
                return { kind: 'failed', reason: error.message };
            throw error;
        }
    };
}
/**
 * An ensemble run in one go: members drawn from the ranges of every number that the system uses, bands of
 * every series, the odds of passing each limit, and every measure and condition. A member whose run breaks off is
 * counted and named, and in no band. `tolerance` is the relative one of the integration.
 * Throws InputError for a sampling, measures or conditions that cannot be.
 */
export function ensembleOf(open, sampling, questions = { measures: [], conditions: [] }, options = {}) {
    const basis = basisOf(open, questions, options);
    const run = openMembers(open, basis, sampling, options);
    const accumulator = openAccumulator(basis, sampling.members);
    for (let member = 0; member < sampling.members; member++)
        accumulator.add(member, run(member));
    return ensembleResult(basis, sampling, accumulator);
}
//# sourceMappingURL=ensemble.js.map
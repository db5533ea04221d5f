import { openModel } from '../../model/open-model.js';
import { limitNames, limitsOf } from '../../result/limits.js';
import { contentHash } from '../../base/content-hash.js';
import { scenarioHash, version } from '../../result/record.js';
import { allSeries } from '../../result/series.js';
import { wholeRow } from '../../library/conditions.js';
import { simulate } from '../../run/stepping.js';
import { outputTimes } from '../../run/sample-buffer.js';
import { conditionOf } from '../measures/condition.js';
import { measureOf } from '../measures/measure.js';
import { NoAnswerError } from '../measures/phrase.js';
const textAndUnit = ({ text, unit }) => ({
    text,
    unit,
});
/** The plain part of a basis, to be saved with what was accumulated. */
export function outlineOf(basis) {
    const { title, rows, series, limits, times, scenario, hash } = basis;
    const measures = basis.measures.map(textAndUnit);
    const conditions = basis.conditions.map(textAndUnit);
    return { title, measures, conditions, rows, series, limits, times, scenario, hash };
}
/** Evaluates every measure and condition, so that the numbers they read are known. */
function evaluateAll(run, { measures, conditions }) {
    const evaluations = [
        ...measures.map((measure) => () => measure.of(run)),
        ...conditions.map((condition) => () => condition.margin(run)),
    ];
    for (const evaluate of evaluations) {
        try {
            evaluate();
        }
        catch (error) {
            if (!(error instanceof NoAnswerError))
                throw error;
        }
    }
}
/**
 * Runs a system once with the numbers as they stand, to see which of them it uses and what can be measured of it.
 * A number that only other draws would use (a process that never works here) is not drawn.
 *
 * Throws InputError with the faults of the measures and conditions.
 * @param options relative `tolerance` of the integration, and where they were written, for messages
 */
export function basisOf(open, questions, options = {}) {
    const { scenario, resolved } = open.reading;
    const { model, notes, used } = openModel(open.reading);
    const { where = {}, ...simulation } = options;
    const measures = questions.measures.map((text) => measureOf(text, model, where.measures));
    const conditions = questions.conditions.map((text) => conditionOf(text, model, where.conditions));
    const run = simulate(model, simulation);
    const series = allSeries(run);
    limitsOf(run, series);
    evaluateAll(run, { measures, conditions });
    const rows = [...used()]
        .sort()
        .map((id) => wholeRow(model.parameters.row(id)))
        .filter(({ distribution }) => distribution !== 'fixed');
    return {
        title: scenario.title,
        run,
        notes,
        measures,
        conditions,
        rows,
        series: series.map(({ name, unit }) => ({ name, unit })),
        limits: limitNames(model),
        times: outputTimes(scenario.days, scenario.every, scenario.saved?.time),
        scenario: scenarioHash(scenario),
        hash: contentHash({ version, scenario, plain: resolved.plain, rows, tolerance: run.tolerance }),
    };
}
/** Numbers taken of a limit. */
export const LIMIT_NUMBERS = 3;
/** The answer of a run, or its reason for having none. */
function answerOf(evaluate) {
    try {
        return { value: evaluate() };
    }
    catch (error) {
        if (error instanceof NoAnswerError)
            return { value: Number.NaN, reason: error.message };
        throw error;
    }
}
/** How a run that broke off is named. */
function reasonOf(run) {
    const { kind, time, worst } = run.outcome;
    return `${kind} on day ${time}${worst === undefined ? '' : ` at ${worst}`}`;
}
/**
 * Takes from a run what an ensemble needs of it.
 * @param allocate gives the array for so many numbers of the series; default: a new one
 */
export function memberOf(run, measures, conditions, allocate = (size) => new Float64Array(size)) {
    if (run.outcome.kind !== 'done')
        return { kind: 'failed', reason: reasonOf(run) };
    const all = allSeries(run);
    const width = run.samples.length;
    const series = allocate(all.length * width);
    all.forEach(({ values }, i) => {
        series.set(values, i * width);
    });
    const limitResults = limitsOf(run, all);
    const limits = limitResults.flatMap(({ judged, first = Number.NaN, total }) => [
        judged ? 1 : 0,
        first,
        total,
    ]);
    return {
        kind: 'done',
        series,
        limits: Float64Array.from(limits),
        measures: measures.map((measure) => answerOf(() => measure.of(run))),
        conditions: conditions.map((condition) => {
            let holds = false;
            const answer = answerOf(() => {
                const judgement = condition.judge(run, limitResults);
                holds = judgement.holds;
                return judgement.margin;
            });
            return { ...answer, holds };
        }),
    };
}
//# sourceMappingURL=members.js.map
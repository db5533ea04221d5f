import { InputError } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import { limitNames, limitsOf, marginOf } from '../../result/limits.js';
import { measureFrom, phraseFaults } from './measure.js';
import { NoAnswerError, phraseOf, phraseText } from './phrase.js';
import { levelOf } from './scale.js';
/** `keeps limits`, `keeps LIMIT` or `keeps LIMIT@PLACE`: the run passes none of those limits that can be judged. */
function keepsCondition({ head, parts }, model) {
    const [, word = '', ...extra] = head;
    const left = [...extra, ...parts.map(({ joint, text }) => `${joint} ${text}`)];
    const faults = left.map((got) => ({ got, problem: 'does not belong here' }));
    const known = limitNames(model);
    const named = [...new Set(known.flatMap(({ id, place }) => [id, `${id}@${place}`]))];
    const meant = ({ id, place }) => word === 'limits' || id === word || `${id}@${place}` === word;
    if (word !== 'limits' && !named.includes(word)) {
        const near = nearest(word, [...named, 'limits']);
        faults.push({
            got: word === '' ? 'nothing' : word,
            problem: 'no such limit for what lives here',
            expected: `limits, or one of ${[...new Set(known.map(({ id }) => id))].join(', ')}`,
            ...(near && { nearest: near }),
        });
    }
    if (faults.length > 0)
        return faults;
    const judge = (run, limits) => {
        const { kind, time } = run.outcome;
        if (kind !== 'done')
            throw new NoAnswerError(`the run broke off on day ${time}: ${kind}`);
        const judged = (limits ?? limitsOf(run)).filter((limit) => limit.judged && meant(limit));
        if (judged.length === 0)
            throw new NoAnswerError(`${word}: not judged: run shorter than its mean, or nobody there`);
        const margins = judged.map(marginOf);
        const hole = margins.findIndex(Number.isNaN);
        if (hole >= 0)
            throw new NoAnswerError(`${judged[hole].id}: no value at ${judged[hole].place}`);
        const margin = Math.min(...margins);
        return { margin, holds: margin >= 0 };
    };
    return { unit: '1', judge };
}
const conditionFrom = (text, reading) => ({
    ...reading,
    text,
    margin: (run) => reading.judge(run).margin,
    holds: (run) => reading.judge(run).holds,
});
/**
 * Reads a condition, in words:
 *
 * - `MEASURE above|below VALUE`: see `measureOf`; VALUE is a number in the unit of the measure, one with a unit,
 *   or the id of a number of the tables, taken as the run has it
 * - `keeps LIMIT[@PLACE]`, such as `keeps fish.nile-tilapia.limit-nitrite`: a limit of `limitsOf`, with its own
 *   averaging time; `keeps limits`: all of them. The margin is a share of the limit.
 *
 * `>` and `<` may stand for above and below. Throws InputError with every fault.
 * @param where what to name in faults, such as an option
 */
export function conditionOf(text, model, where) {
    const phrase = phraseOf(text);
    const plain = phraseText(phrase);
    if (phrase.head[0] === 'keeps') {
        const reading = keepsCondition(phrase, model);
        if (!('judge' in reading))
            throw new InputError(phraseFaults(reading, plain, where));
        return conditionFrom(plain, reading);
    }
    const last = phrase.parts[phrase.parts.length - 1];
    if (last === undefined || (last.joint !== 'above' && last.joint !== 'below')) {
        const fault = {
            got: last === undefined ? 'nothing' : `${last.joint} ${last.text}`,
            problem: 'a condition ends with what the measure must be above or below',
            expected: 'such as "highest tan@tank below 1 mg N/L"',
        };
        throw new InputError(phraseFaults([fault], plain, where));
    }
    const measure = measureFrom({ ...phrase, parts: phrase.parts.slice(0, -1) }, model, where);
    const level = levelOf(last.text, measure, model.parameters);
    if (typeof level !== 'function')
        throw new InputError(phraseFaults([level], plain, where));
    const sign = last.joint === 'above' ? 1 : -1;
    return conditionFrom(plain, {
        unit: measure.unit,
        judge: (run) => {
            const margin = sign * (measure.of(run) - level(run.model.parameters));
            return { margin, holds: margin > 0 };
        },
    });
}
//# sourceMappingURL=condition.js.map
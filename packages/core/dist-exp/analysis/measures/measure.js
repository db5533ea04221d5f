import { InputError } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import { conserved } from '../../processes/components.js';
import { budgetOf } from '../../result/budget.js';
import { fateNames, fatesOf } from '../../result/fates.js';
import { judge } from '../../result/judge.js';
import { joints, NoAnswerError, phraseOf, phraseText } from './phrase.js';
import { levelOf, scaleOfWord } from './scale.js';
import { statistics, spanOfRun, windowOf } from './window.js';
/** Names of the statistics of a series. */
const statisticNames = Object.keys(statistics);
/** `highest nitrate@sump averaged 7 d from 30 d`: a statistic of a series. */
function statisticMeasure(statistic, [series], parts, model) {
    const scale = scaleOfWord(series, model);
    const { window, faults } = windowOf(parts, model.scenario);
    const all = [...('problem' in scale ? [scale] : []), ...faults];
    if (statistic === 'mean' && window.averaging > 0)
        all.push({ got: 'averaged', problem: 'a mean is averaged already', expected: 'from and to' });
    if ('problem' in scale || all.length > 0)
        return all;
    return {
        ...scale,
        ...(statistic === 'change' && { difference: true }),
        of: (run) => statistics[statistic](spanOfRun(run, series, window)),
    };
}
const hyphened = (name) => name.replaceAll(' ', '-');
const fates = fateNames.map(hyphened);
function unknown(problem, got, known) {
    const near = nearest(got ?? '', known);
    return { got: got ?? 'nothing', problem, expected: known.join(', '), ...(near && { nearest: near }) };
}
/** `share nitrogen sludge`: of all that came of a conserved quantity, the share that went to one fate; 0 where none did. */
function shareMeasure([quantityWord, fateWord]) {
    const quantity = conserved.find((name) => name === quantityWord);
    const fate = fates.find((name) => name === fateWord);
    const faults = [];
    if (quantity === undefined)
        faults.push(unknown('no such conserved quantity', quantityWord, conserved));
    if (fate === undefined)
        faults.push(unknown('no such fate', fateWord, fates));
    if (quantity === undefined || fate === undefined)
        return faults;
    return {
        unit: '1',
        dimension: 'share',
        of: (run) => {
            const { to } = fatesOf(budgetOf(run, quantity, 'system'));
            return to.find(({ name }) => hyphened(name) === fate)?.share ?? 0;
        },
    };
}
/** `days tan@tank above 1 mg N/L`: how long a series is beyond a level, d; lines between output times are straight. */
function daysMeasure([series], parts, model) {
    const sides = parts.filter(({ joint }) => joint === 'above' || joint === 'below');
    const [side] = sides;
    const scale = scaleOfWord(series, model);
    const { window, faults } = windowOf(parts, model.scenario);
    const all = [...('problem' in scale ? [scale] : []), ...faults];
    if (sides.length !== 1)
        all.push({
            got: `days ${series}`,
            problem: sides.length === 0 ? 'beyond what?' : 'two levels',
            expected: 'above VALUE or below VALUE',
        });
    if (side === undefined || 'problem' in scale)
        return all;
    const level = levelOf(side.text, scale, model.parameters);
    if (typeof level !== 'function')
        all.push(level);
    if (typeof level !== 'function' || all.length > 0)
        return all;
    const direction = side.joint === 'above' ? 'above' : 'below';
    return {
        unit: 'd',
        dimension: 'time',
        of: (run) => {
            const { times, values } = spanOfRun(run, series, window);
            return judge(times, values, { value: level(run.model.parameters), direction }, 0).total;
        },
    };
}
const kinds = [...statisticNames, 'days', 'share'];
/** Faults of parts that a measure does not take or takes once. */
function partFaults({ parts }, taken) {
    return parts.flatMap(({ joint, text }, i) => {
        if (!taken.includes(joint))
            return [{ got: `${joint} ${text}`, problem: 'does not belong here' }];
        const again = parts.findIndex((part) => part.joint === joint) < i;
        return again ? [{ got: `${joint} ${text}`, problem: `${joint} is said twice` }] : [];
    });
}
/** A word too many before the first joining word is mostly a joining word misspelled. */
function headFaults({ head }, length) {
    const extra = head[length];
    if (extra === undefined)
        return [];
    const near = nearest(extra, joints);
    return [
        {
            got: head.slice(length).join(' '),
            problem: 'not understood',
            expected: joints.join(', '),
            ...(near && { nearest: near }),
        },
    ];
}
function readMeasure(phrase, model) {
    const [kind, ...rest] = phrase.head;
    switch (kind) {
        case 'days': {
            const faults = [...headFaults(phrase, 2), ...partFaults(phrase, joints)];
            return faults.length > 0 ? faults : daysMeasure(rest, phrase.parts, model);
        }
        case 'share': {
            const faults = [...headFaults(phrase, 3), ...partFaults(phrase, [])];
            return faults.length > 0 ? faults : shareMeasure(rest);
        }
        default: {
            const statistic = statisticNames.find((name) => name === kind);
            if (statistic === undefined) {
                const near = nearest(kind ?? '', kinds);
                const got = kind ?? 'nothing';
                return [
                    { got, problem: 'no such statistic', expected: kinds.join(', '), ...(near && { nearest: near }) },
                ];
            }
            const faults = [...headFaults(phrase, 2), ...partFaults(phrase, ['averaged', 'from', 'to'])];
            return faults.length > 0 ? faults : statisticMeasure(statistic, rest, phrase.parts, model);
        }
    }
}
/** Faults of a phrase, each saying which phrase and, with `where`, where it was written. */
export function phraseFaults(faults, text, where) {
    return faults.map((fault) => ({ ...(where === undefined ? {} : { file: where }), key: text, ...fault }));
}
/**
 * Reads a measure from a phrase already cut. Throws InputError with every fault.
 * @param where what to name in faults, such as an option
 */
export function measureFrom(phrase, model, where) {
    const text = phraseText(phrase);
    const reading = readMeasure(phrase, model);
    if ('of' in reading) {
        return {
            ...reading,
            text,
            of: (run) => {
                const { kind, time } = run.outcome;
                if (kind !== 'done')
                    throw new NoAnswerError(`the run broke off on day ${time}: ${kind}`);
                const value = reading.of(run);
                if (Number.isFinite(value))
                    return value;
                throw new NoAnswerError(`${text}: no value there to be counted`);
            },
        };
    }
    throw new InputError(phraseFaults(reading, text, where));
}
/**
 * Reads a measure, in words:
 *
 * - `highest|lowest|mean|first|last|change SERIES [averaged TIME] [from WHEN] [to WHEN]`
 * - `days SERIES above|below VALUE [averaged TIME] [from WHEN] [to WHEN]`: how long, in d
 * - `share QUANTITY FATE`: of all that came of a conserved quantity, the share that went there (names of
 *   `fatesOf`, hyphens for spaces), such as `share nitrogen kept-in-living-fish`
 *
 * WHEN is a time after the start or a date; VALUE is a number, one with a unit, or the id of a number of the tables.
 * @param model tells which series there are and when the run starts and ends
 * @param where what to name in faults, such as an option
 * Throws InputError with every fault.
 */
export function measureOf(text, model, where) {
    return measureFrom(phraseOf(text), model, where);
}
//# sourceMappingURL=measure.js.map
import { NoAnswerError } from '../measures/phrase.js';
import { judgeRun } from './trial.js';
/** Evaluates every measure and condition of a sweep on a run. */
export function sweepPoint(run, measures, conditions) {
    let broke;
    const numbers = measures.map((measure) => {
        try {
            return measure.of(run);
        }
        catch (error) {
            if (!(error instanceof NoAnswerError))
                throw error;
            broke ??= error.message;
            return Number.NaN;
        }
    });
    const trial = judgeRun(run, Number.NaN, conditions);
    broke ??= trial.broke;
    const { margins, holds } = trial;
    return { measures: numbers, margins, holds, ...(broke === undefined ? {} : { broke }) };
}
/**
 * So many values (`count`) at equal steps `from` one end `to` the other, both among them; whole numbers, each once, where only they make
 * sense. Rounded to 6 digits, so that what is shown is what was run.
 * @throws RangeError for fewer than two values
 */
export function sweepValues({ from, to, whole }, count) {
    if (!(Number.isInteger(count) && count >= 2))
        throw new RangeError(`${count} values; expected 2 or more`);
    const values = Array.from({ length: count }, (_, i) => {
        if (i === count - 1)
            return to;
        const value = from + ((to - from) * i) / (count - 1);
        return whole ? Math.round(value) : Number(value.toPrecision(6));
    });
    return [...new Set(values)];
}
/** Every choice of one value from each of the `lists`, the last list running fastest. */
export function sweepGrid(lists) {
    return lists.reduce((grid, list) => grid.flatMap((point) => list.map((value) => [...point, value])), [[]]);
}
//# sourceMappingURL=sweep.js.map
import { NoAnswerError } from '../measures/phrase.js';
/**
 * Judges the run at one `value` of what is varied by every condition. A run that has no answer to one of them is a trial
 * that does not hold.
 */
export function judgeRun(run, value, conditions) {
    const margins = [];
    let holds = true;
    let broke;
    for (const condition of conditions) {
        try {
            const judgement = condition.judge(run);
            margins.push(judgement.margin);
            holds = judgement.holds && holds;
        }
        catch (error) {
            if (!(error instanceof NoAnswerError))
                throw error;
            margins.push(Number.NaN);
            holds = false;
            broke ??= error.message;
        }
    }
    return { value, holds, margins, ...(broke === undefined ? {} : { broke }) };
}
//# sourceMappingURL=trial.js.map
import { InputError } from '../../errors.js';
import type { Model } from '../../model/model.js';
import type { Run } from '../../run/run.js';
import { keepsCondition } from './keeps-condition.js';
import { levelOf } from './level.js';
import { measureFrom, phraseFaults } from './measure.js';
import { phraseOf, phraseText } from './phrase.js';
import type { ConditionReading } from './reading.js';

/** Something that a whole run must do. */
export interface Condition extends ConditionReading {
  /** As asked, one space between words. */
  readonly text: string;
  /** The margin of `judge`. Throws as it does. */
  margin(run: Run): number;
  /** The verdict of `judge`. Throws as it does. */
  holds(run: Run): boolean;
}

const conditionFrom = (text: string, reading: ConditionReading): Condition => ({
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
export function conditionOf(text: string, model: Model, where?: string): Condition {
  const phrase = phraseOf(text);
  const plain = phraseText(phrase);
  if (phrase.head[0] === 'keeps') {
    const reading = keepsCondition(phrase, model);
    if (!('judge' in reading)) throw new InputError(phraseFaults(reading, plain, where));
    return conditionFrom(plain, reading);
  }
  const last = phrase.parts[phrase.parts.length - 1];
  if (last === undefined || (last.joint !== 'above' && last.joint !== 'below')) {
    const fault = {
      got: last === undefined ? 'nothing' : `${last.joint} ${last.words}`,
      problem: 'a condition ends with what the measure must be above or below',
      expected: 'such as "highest tan@tank below 1 mg N/L"',
    };
    throw new InputError(phraseFaults([fault], plain, where));
  }
  const measure = measureFrom({ ...phrase, parts: phrase.parts.slice(0, -1) }, model, where);
  const level = levelOf(last.words, measure, model.parameters);
  if (typeof level !== 'function') throw new InputError(phraseFaults([level], plain, where));
  const sign = last.joint === 'above' ? 1 : -1;
  return conditionFrom(plain, {
    unit: measure.unit,
    judge: (run) => {
      const margin = sign * (measure.of(run) - level(run.model.parameters));
      return { margin, holds: margin > 0 };
    },
  });
}

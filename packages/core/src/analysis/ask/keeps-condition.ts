import type { Fault } from '../../errors.js';
import type { Model } from '../../model/model.js';
import type { Run } from '../../run/run.js';
import { limitNames, limitsOf, type LimitResult } from '../../result/limits.js';
import { nearest } from '../../suggest.js';
import { NoAnswerError } from './no-answer-error.js';
import type { Phrase } from './phrase.js';
import type { ConditionReading, Judgement } from './reading.js';

/** How far within a limit at the worst, as a share of the limit (of one unit where the limit is 0). */
function marginOf({ worst = Number.NaN, value, direction }: LimitResult): number {
  const sign = direction === 'above' ? -1 : 1;
  return (sign * (worst - value)) / (value === 0 ? 1 : Math.abs(value));
}

/** `keeps limits`, `keeps LIMIT` or `keeps LIMIT@PLACE`: the run passes none of those limits that can be judged. */
export function keepsCondition({ head, parts }: Phrase, model: Model): ConditionReading | readonly Fault[] {
  const [, word = '', ...extra] = head;
  const left = [...extra, ...parts.map(({ joint, words }) => `${joint} ${words}`)];
  const faults: Fault[] = left.map((got) => ({ got, problem: 'does not belong here' }));
  const known = limitNames(model);
  const named = [...new Set(known.flatMap(({ id, place }) => [id, `${id}@${place}`]))];
  const meant = ({ id, place }: LimitResult): boolean =>
    word === 'limits' || id === word || `${id}@${place}` === word;
  if (word !== 'limits' && !named.includes(word)) {
    const near = nearest(word, [...named, 'limits']);
    faults.push({
      got: word === '' ? 'nothing' : word,
      problem: 'no such limit for what lives here',
      expected: `limits, or one of ${[...new Set(known.map(({ id }) => id))].join(', ')}`,
      ...(near && { nearest: near }),
    });
  }
  if (faults.length > 0) return faults;
  const judge = (run: Run, limits?: readonly LimitResult[]): Judgement => {
    const { kind, time } = run.outcome;
    if (kind !== 'done') throw new NoAnswerError(`the run broke off on day ${time}: ${kind}`);
    const judged = (limits ?? limitsOf(run)).filter((limit) => limit.judged && meant(limit));
    if (judged.length === 0)
      throw new NoAnswerError(`${word}: not judged: run shorter than its mean, or nobody there`);
    const margins = judged.map(marginOf);
    const hole = margins.findIndex(Number.isNaN);
    if (hole >= 0) throw new NoAnswerError(`${judged[hole].id}: no value at ${judged[hole].place}`);
    const margin = Math.min(...margins);
    return { margin, holds: margin >= 0 };
  };
  return { unit: '1', judge };
}

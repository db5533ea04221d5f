import { describeFault, type Fault, InputError, readScenario } from '@leat/core';
import type { Answers, QuestionId } from './answers.js';
import { isWithin, type Limits } from './limits.js';
import { isAsked, type Question, questions } from './questions.js';
import { en } from './words/en.js';
import type { QuestionWords } from './words/index.js';
import { writeSystem } from './write-system.js';

/** Something that cannot be, with the questions that it is about: to be told at the last of them that is asked. */
export interface AnswerFault {
  readonly questions: readonly QuestionId[];
  /** One clause, in the words given where it is of one answer, as the system file says it where it is of several. */
  readonly problem: string;
}

const bound = (value: number): string => (Number.isFinite(value) ? String(value) : '');

function limitsText({ low, high, above, whole }: Limits, unit: string, { faults }: QuestionWords): string {
  const text = (above ? faults.above : faults.number)(bound(low), bound(high), unit);
  return whole ? `${text}; ${faults.whole}` : text;
}

/** What is wrong with one answer by itself, whatever the others are; undefined where nothing is. */
export function answerProblem(
  question: Question,
  answer: unknown,
  words: QuestionWords = en,
): string | undefined {
  const { faults } = words;
  switch (question.kind) {
    case 'number':
      if (typeof answer === 'number' && isWithin(question.limits, answer)) return undefined;
      return limitsText(question.limits, question.unit, words);
    case 'choice':
      if (typeof answer === 'string' && question.options.includes(answer)) return undefined;
      return faults.option(question.options.join(', '));
    case 'several':
      if (!Array.isArray(answer) || !answer.every((each) => question.options.includes(String(each))))
        return faults.option(question.options.join(', '));
      return new Set(answer).size === answer.length ? undefined : faults.twice;
    case 'months':
      if (!Array.isArray(answer) || answer.length !== 12) return faults.months;
      return answer.every((each) => typeof each === 'number' && isWithin(question.limits, each))
        ? undefined
        : limitsText(question.limits, question.unit, words);
  }
}

const stocked: readonly QuestionId[] = ['tanks', 'tank-volume', 'fish', 'fish-mass'];

/** Which questions a key of the file was written from, the longer beginning first. */
const origins: readonly (readonly [RegExp, readonly QuestionId[]])[] = [
  [/^fish\.[^.]+\.ration/, ['fish', 'fish-mass', 'feeding', 'ration']],
  [/^fish\.[^.]+\.mass/, ['fish-mass']],
  [/^fish\./, stocked],
  [/^vessels\.(?:tank|settler|sump)/, ['tanks', 'tank-volume']],
  [/^vessels\.filter/, ['medium-volume']],
  [/^vessels\.rafts/, ['raft-area']],
  [/^vessels\.media-bed/, ['media-bed-area']],
  [/^vessels\.channels/, ['channel-area']],
  [/^rain-tank/, ['rain-tank']],
  [/^top-up/, ['tanks', 'tank-volume']],
  [/^plantings/, ['raft-area', 'media-bed-area', 'channel-area', 'crops']],
];

/** Questions that a fault of the whole file is about; all of them where none is known. */
function questionsOf({ key = '' }: Fault, asked: readonly QuestionId[]): readonly QuestionId[] {
  const found = origins.find(([pattern]) => pattern.test(key))?.[1].filter((id) => asked.includes(id)) ?? [];
  return found.length > 0 ? found : asked;
}

/**
 * Everything that cannot be in some answers: each by itself, then, where all are sound, together, as the checks of a system
 * file find it in the file written from them. Empty where the file is sound.
 */
export function answerFaults(answers: Answers, words: QuestionWords = en): readonly AnswerFault[] {
  const asked = questions.filter((question) => isAsked(question, answers));
  const single = asked.flatMap((question) => {
    const problem = answerProblem(question, answers[question.id], words);
    return problem === undefined ? [] : [{ questions: [question.id], problem }];
  });
  if (single.length > 0) return single;
  try {
    readScenario(writeSystem(answers), { file: '' });
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const ids = asked.map(({ id }) => id);
    return error.faults.map((fault) => {
      const { got, problem, expected } = fault;
      return {
        questions: questionsOf(fault, ids),
        problem: describeFault({
          problem,
          ...(got !== undefined && { got }),
          ...(expected !== undefined && { expected }),
        }),
      };
    });
  }
}

/**
 * What cannot be once a question is answered, where the questions in `answered` were answered before it: of this one alone,
 * or of it together with those. What waits for a later answer is not told yet.
 */
export function faultsAt(
  id: QuestionId,
  answered: readonly QuestionId[],
  answers: Answers,
  words: QuestionWords = en,
): readonly string[] {
  const known = [...answered, id];
  return answerFaults(answers, words)
    .filter(({ questions: of }) => of.includes(id) && of.every((each) => known.includes(each)))
    .map(({ problem }) => problem);
}

import fc from 'fast-check';
import { type Answers, type Question, questions } from '@leat/view/questions';

/** A number of a question within its usual values, on its step; a little beyond them where it may be. */
function numberOf(usual: readonly [number, number], step: number, low: number): fc.Arbitrary<number> {
  const [from, to] = usual;
  const steps = Math.round((to - from) / step);
  const at = (count: number): number => Number((Math.max(from, low) + count * step).toPrecision(12));
  return fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: 0, max: Math.min(steps, 20) }).map(at) },
    { weight: 1, arbitrary: fc.integer({ min: 0, max: steps }).map((count) => Math.min(at(count), to)) },
  );
}

function answerOf(question: Question): fc.Arbitrary<Answers[keyof Answers]> {
  switch (question.kind) {
    case 'number':
      return numberOf(question.usual, question.step, question.limits.low);
    case 'choice':
      return fc.constantFrom(...question.options);
    case 'several':
      return fc.uniqueArray(fc.constantFrom(...question.options), { minLength: 0, maxLength: 4 });
    case 'months':
      return fc.array(numberOf(question.usual, question.step, question.limits.low), {
        minLength: 12,
        maxLength: 12,
      });
  }
}

/** Answers at random, each within the usual values of its question; together they need not be possible. */
export const randomAnswers = fc.record(
  Object.fromEntries(questions.map((question) => [question.id, answerOf(question)])),
) as unknown as fc.Arbitrary<Answers>;

import { describe, expect, it } from 'vitest';
import {
  type Answers,
  answerFaults,
  answerProblem,
  defaultAnswers,
  faultsAt,
  groups,
  isAsked,
  optionName,
  type Question,
  type QuestionId,
  questions,
  questionWords,
} from '@leat/view/questions';

const defaults = defaultAnswers();
const find = (id: QuestionId): Question => {
  const found = questions.find((question) => question.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const ids = questions.map(({ id }) => id);

describe('the questions', () => {
  it('are of ten groups in order, each with a default that may be answered', () => {
    expect([...new Set(questions.map(({ group }) => group))]).toEqual(groups);
    expect(groups).toHaveLength(10);
    for (const question of questions) expect(answerProblem(question, question.default)).toBeUndefined();
    expect(answerFaults(defaults)).toEqual([]);
  });

  it('hang on questions before them only', () => {
    for (const [at, { when = [] }] of questions.entries())
      for (const condition of when)
        for (const id of 'question' in condition ? [condition.question] : condition.anyAboveZero)
          expect(ids.indexOf(id)).toBeLessThan(at);
  });

  it('have usual values within what may be answered', () => {
    for (const question of questions) {
      if (question.kind !== 'number' && question.kind !== 'months') continue;
      const { usual, limits, step } = question;
      expect(usual[0]).toBeGreaterThanOrEqual(limits.low);
      expect(usual[1]).toBeLessThanOrEqual(limits.high);
      expect(step).toBeGreaterThan(0);
    }
  });

  it('take the bounds of the system file, in their own unit', () => {
    expect(find('et0')).toMatchObject({ unit: 'mm/d', limits: { low: 0, high: 30, above: false } });
    expect(find('water-temperatures')).toMatchObject({ limits: { low: 0, high: 45 } });
    expect(find('protein')).toMatchObject({ unit: '%', limits: { low: 0, high: 100 } });
    expect(find('fish')).toMatchObject({ limits: { low: 0, high: 10_000_000, whole: true } });
    expect(find('tank-volume')).toMatchObject({ limits: { low: 0, high: Infinity, above: true } });
  });

  it('have words in each language for every question, group and option', () => {
    for (const words of Object.values(questionWords)) {
      expect(Object.keys(words.questions)).toEqual(ids);
      expect(Object.keys(words.groups)).toEqual([...groups]);
    }
    const listed = questions.flatMap((question) => ('options' in question ? question.options : []));
    const own = Object.values(questionWords.es.options).flatMap((each) => Object.keys(each));
    const named = new Set([...own, ...Object.keys(questionWords.es.names)]);
    expect(listed.filter((option) => !named.has(option))).toEqual([]);
    expect(optionName(questionWords.es, 'crops', 'basil')).toBe('albahaca');
    expect(optionName(questionWords.en, 'species', 'nile-tilapia')).toBe('nile tilapia');
    expect(optionName(questionWords.en, 'start', 'new')).toBe('new');
  });

  it('are asked where they apply', () => {
    const asked = (answers: Partial<Answers>): readonly string[] =>
      questions.filter((question) => isAsked(question, { ...defaults, ...answers })).map(({ id }) => id);
    expect(asked({})).not.toContain('ration');
    expect(asked({ feeding: 'ration' })).toContain('ration');
    expect(asked({ feeding: 'ration', fish: 0 })).not.toContain('ration');
    expect(asked({ filter: 'beds' })).not.toContain('place');
    expect(asked({ 'raft-area': 0 })).not.toContain('crops');
    expect(asked({ climate: 'own' })).not.toContain('rain');
    expect(asked({ climate: 'own', roof: 20 })).toEqual(expect.arrayContaining(['rain', 'et0']));
  });
});

describe('an answer that cannot be', () => {
  it.each([
    ['tanks', 2.5, 'expected 1 to 12; expected a whole number'],
    ['tank-volume', 0, 'expected more than 0 L'],
    ['protein', 120, 'expected 0 to 100 %'],
    ['feeding', 'x', 'expected one of appetite, ration'],
    ['crops', ['basil', 'basil'], 'named twice'],
    ['et0', [1, 2], 'expected twelve numbers, January first'],
    ['fish', '30', 'expected 0 to 10000000; expected a whole number'],
  ] as const)('%s: %j is told', (id, answer, problem) => {
    expect(answerProblem(find(id), answer)).toBe(problem);
  });

  const crowded = { ...defaults, 'tank-volume': 200, fish: 600, 'fish-mass': 500 };

  it('together with others is told at the last of them, in the words of the checks of the file', () => {
    const before = ids.slice(0, ids.indexOf('fish-mass'));
    const [told, ...more] = faultsAt('fish-mass', before, crowded);
    expect(more).toEqual([]);
    expect(told).toMatch(
      /^more fish than the water can hold; got 600 fish of 500 g.*expected at most 100000 g of fish/,
    );
    expect(faultsAt('fish', ids.slice(0, ids.indexOf('fish')), crowded)).toEqual([]);
    expect(faultsAt('start', ids.slice(0, -1), crowded)).toEqual([]);
  });

  it('is told of feed too', () => {
    const ration = { ...defaults, feeding: 'ration' as const, ration: 90_000 };
    expect(faultsAt('ration', ids.slice(0, ids.indexOf('ration')), ration)[0]).toMatch(
      /^more feed than fish could eat/,
    );
  });
});

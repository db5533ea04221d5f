import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  budgetOf,
  compileModel,
  createParameters,
  readScenario,
  relativeResidual,
  simulate,
  verdictOf,
} from '@leat/core';
import {
  type Answers,
  answerFaults,
  defaultAnswers,
  questions,
  questionWords,
  writeSystem,
} from '@leat/view/questions';
import { full } from '../../../support/length.js';
import { randomAnswers } from '../../../support/random-answers.js';

const defaults = defaultAnswers();

function runOf(answers: Answers, days?: number): ReturnType<typeof simulate> {
  const read = { file: 'asked.yaml', ...(days !== undefined && { days }) };
  const scenario = readScenario(writeSystem(answers), read);
  return simulate(compileModel(scenario, createParameters(scenario.overrides)));
}

describe('the file written from the default answers', () => {
  it('is a sound system: fish are safe and the filter keeps up', () => {
    const verdict = verdictOf(runOf(defaults));
    expect(verdict.fish?.state).toBe('safe');
    expect(verdict.filter?.state).toBe('keeps-up');
    expect(verdict.water.state).toBe('enough');
  });

  it('says of every number of a vessel, pump or ration whether it was answered or assumed, and by what', () => {
    const text = writeSystem(defaults);
    // Areas stand beside the volume that they go with; rows of a ration beneath the line that says what they are.
    const numbers = text
      .split('\n')
      .filter((line) => /^(?!#).*: .*\d (?:L|m3|%|g|g\/d|1\/h|m3\/h|L\/min|d)\b/.test(line))
      .filter((line) => !/^ {6}- \{ mass|^every|nitrate|when: |wait: |- \{ at: /.test(line));
    expect(numbers.length).toBeGreaterThan(15);
    for (const line of numbers) expect(line).toMatch(/# (?:answered|assumed: .+ \(.+\)$)/);
    expect(text).toMatch(/# INVENTED year/);
  });

  it('begins with the line of the schema only where one is given', () => {
    expect(writeSystem(defaults, { schema: './leat.schema.json' }).split('\n')[0]).toBe(
      '# yaml-language-server: $schema=./leat.schema.json',
    );
    expect(writeSystem(defaults)).not.toContain('$schema');
  });

  it('is the same system in Spanish, with other remarks', () => {
    const spanish = writeSystem(defaults, { words: questionWords.es });
    const bare = (text: string): object => {
      const { title, note, ...rest } = readScenario(text, { file: 'x' });
      expect([title, note].join()).not.toBe('');
      return rest;
    };
    expect(bare(spanish)).toEqual(bare(writeSystem(defaults)));
    expect(spanish).toContain('# supuesto: ');
  });
});

describe('answers at random', () => {
  // The short form runs five days of sixty systems; at full length it is five hundred, whole.
  it('give a file that is read and runs, or are told why not by the questions', () => {
    let ran = 0;
    fc.assert(
      fc.property(randomAnswers, (answers) => {
        const faults = answerFaults(answers);
        if (faults.length > 0) {
          for (const { questions: of, problem } of faults) {
            expect(of.length).toBeGreaterThan(0);
            expect(of.length).toBeLessThan(questions.length / 2);
            expect(problem).toMatch(/fish|feed/);
          }
          return;
        }
        const run = runOf(answers, full ? undefined : 5);
        ran += 1;
        expect(run.samples.at(-1)?.time).toBe(full ? 120 : 5);
        expect(Math.abs(relativeResidual(budgetOf(run, 'nitrogen', 'system')))).toBeLessThan(1e-6);
      }),
      { numRuns: full ? 500 : 60 },
    );
    expect(ran).toBeGreaterThan(full ? 300 : 35);
  });
});

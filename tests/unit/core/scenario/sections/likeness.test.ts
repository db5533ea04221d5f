import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../../packages/core/src/library/parameters.js';
import { rowOf } from '../../../../../packages/core/src/library/rows-in-use.js';
import { readScenarioFully } from '../../../../../packages/core/src/scenario/read-scenario.js';
import { doneRun } from '../../../../support/run-of.js';
import { smallSystem } from '../../../../support/small-text.js';
import { messagesOf } from '../../../../product/faults/small-system.js';

const withOwn = (...lines: readonly string[]): string =>
  `${smallSystem.replace('crop: lettuce-butterhead', 'crop: tatsoi')}parameters:\n${lines.map((line) => `  ${line}\n`).join('')}`;

describe('a crop of the user that is like another', () => {
  const text = withOwn(
    'crop.tatsoi: { like: pak-choi, days: 24, light-use: { value: 0.5, low: 0.4, high: 0.6 } }',
  );
  const { scenario } = readScenarioFully(text, { file: 'small.yaml' });
  const parameters = createParameters(scenario.overrides);

  it('has its numbers but for those that are given', () => {
    expect(scenario.plantings[0].harvest).toBe(24);
    expect(rowOf(parameters, 'crop.tatsoi.light-use')).toMatchObject({
      value: 0.5,
      low: 0.4,
      high: 0.6,
      mark: 'U',
    });
    expect(rowOf(parameters, 'crop.tatsoi.nitrogen-a')).toMatchObject({
      value: parameters.value('crop.pak-choi.nitrogen-a'),
      low: rowOf(parameters, 'crop.pak-choi.nitrogen-a').low,
      mark: 'W',
      conditions: 'as of pak-choi',
    });
  });

  it('grows', () => {
    expect(doneRun({ ...scenario, days: 3 }).outcome.kind).toBe('done');
  });

  it.each([
    ['crop.tatsoi: { like: bok-choy }', 'did you mean pak-choi?'],
    ['crop.tatsoi: { like: pak-choi, dayz: 3 }', 'did you mean crop.tatsoi.days?'],
    ['crop.tatsoi: { like: pak-choi, days: -3 }', 'below zero'],
    ['crop.mint: { like: basil }', 'in the tables already'],
    ['aob: { like: nob }', 'nothing that can be like another'],
  ])('%s is refused: %s', (line, words) => {
    expect(messagesOf(withOwn(line)).join()).toContain(words);
  });
});

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  compileModel,
  conditionOf,
  createParameters,
  findSize,
  judgeRun,
  readScenario,
  simulate,
  type Model,
} from '@leat/core';
import { describe, expect, it } from 'vitest';

const file = fileURLToPath(new URL('../../../packages/cli/scenarios/double-stock.yaml', import.meta.url));
const load = (path: string): string => readFileSync(path, 'utf8');

/** The demo glasshouse whose stock is doubled in a day, with so many litres of media in its filter. */
function modelAt(litres: number): Model {
  const set = [{ path: 'vessels.biofilter.media.volume', value: `${litres} L` }];
  const scenario = readScenario(load(file), { file, load, set });
  return compileModel(scenario, createParameters(scenario.overrides));
}

describe('the filter of the demo through a doubling of its stock', () => {
  it('passes its conditions at the answer and fails 5 % below it', () => {
    const first = modelAt(20);
    const keep = [
      'tan@tank-1 averaged 1 d below 0.6 mg N/L',
      'nitrite@tank-1 averaged 1 d below 1 mg N/L',
    ].map((text) => conditionOf(`highest ${text}`, first));
    const judge = (value: number) => judgeRun(simulate(modelAt(value)), value, keep);
    const answer = findSize({ from: 20, to: 500, want: 'smallest', within: 0.01, judge });
    const { kind, value = Number.NaN, binding } = answer;
    expect([kind, binding]).toEqual(['found', [0]]);
    expect(judge(value).holds).toBe(true);
    expect(judge(0.95 * value).holds).toBe(false);
  });
});

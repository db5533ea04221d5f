import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compileModel, createParameters, endStateOf, InputError, readScenario, simulate } from '@leat/core';
import { describe, expect, it } from 'vitest';

const file = fileURLToPath(new URL('../../../packages/cli/scenarios/glasshouse.yaml', import.meta.url));
const still = [
  { path: 'actions', value: '[]' },
  { path: 'dosing', value: '[]' },
  { path: 'drain-solids', value: '[]' },
  { path: 'climate.water-temperature', value: '25 degC' },
  { path: 'climate.et0', value: '5 mm/d' },
  { path: 'rain-tank.rain', value: '1 mm/d' },
];
const run = (days: number, saved?: string) => {
  const set = saved === undefined ? still : [...still, { path: 'start.saved', value: 'state.json' }];
  const load = (path: string): string =>
    path.endsWith('state.json') ? (saved ?? '') : readFileSync(path, 'utf8');
  const scenario = readScenario(readFileSync(file, 'utf8'), { file, load, set, days });
  return simulate(compileModel(scenario, createParameters()));
};

describe('a run that starts from a saved state', () => {
  const half = run(20);
  const saved = JSON.stringify(endStateOf(half));

  it('goes on as the unbroken run does', () => {
    const whole = run(40).samples[40];
    const rest = run(20, saved).samples[20];
    rest.y.forEach((value, state) => {
      expect(Math.abs(value - whole.y[state])).toBeLessThan(1e-4 * Math.abs(whole.y[state]) + 1e-6);
    });
    expect(rest.rain).toBeCloseTo(whole.rain, 10);
  });

  it.each([
    ['what is not JSON', 'volumes: 3', 'start.saved: not JSON'],
    [
      'another version',
      saved.replace('"version":1', '"version":9'),
      'version 9 of leat-state, written by a later leat; got "state.json"; expected schema leat-state, version 1',
    ],
    [
      'a vessel that this system has not',
      saved.replaceAll('biofilter', 'biofiltre'),
      'did you mean biofilter?',
    ],
  ])('refuses %s', (_what, text, words) => {
    expect(() => run(20, text)).toThrow(InputError);
    expect(() => run(20, text)).toThrow(words);
  });
});

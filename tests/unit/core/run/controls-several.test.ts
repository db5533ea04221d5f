import { describe, expect, it } from 'vitest';
import { readScenario, type Scenario } from '@leat/core';
import { doneRun } from '../../../support/run-of.js';
import { shippedText } from '../../../support/shipped-scenario.js';

const withRules = (rules: string, days = 12): Scenario =>
  readScenario(`${shippedText('glasshouse').replace(/^days: .*$/m, `days: ${days}`)}\nrules:\n${rules}`, {
    file: 'farm.yaml',
  });
const harvest = 'do: { harvest-fish: { cohort: growers, number: 7 } }, most: 1';
const firings = (rules: string) => doneRun(withRules(rules)).events.filter(({ kind }) => kind === 'rule');

describe('rules that read more than a test kit does', () => {
  it('read the mean mass of fish, the rain tank and the conductivity', () => {
    const [fish] = firings(`  - { when: { read: fish-mass, of: growers, above: 545 g }, ${harvest} }`);
    expect(fish.text).toMatch(/^fish-mass reads 5\d\d(\.\d)? g, above 545 g: harvest-fish$/);
    const [rain] = firings(`  - { when: { read: rain-tank, below: 1 m3 }, ${harvest} }`);
    expect(rain.place).toBe('rain-tank');
    expect(rain.text).toMatch(/^rain-tank reads 0\.\d+ m3, below 1 m3: harvest-fish$/);
    const [ec] = firings(`  - { when: { read: conductivity, in: sump, above: 300 uS/cm }, ${harvest} }`);
    expect(ec.text).toMatch(/^conductivity reads 0\.\d+ mS\/cm, above 0\.3 mS\/cm: harvest-fish$/);
  });

  it('act on all of several conditions only when every one holds, and on any when one does', () => {
    const two = '[{ read: rain-tank, below: 1 m3 }, { read: fish-mass, of: growers, above: 10 kg }]';
    expect(firings(`  - { when: { all: ${two} }, ${harvest} }`)).toEqual([]);
    const [any] = firings(`  - { when: { any: ${two} }, ${harvest} }`);
    expect(any.text).toMatch(/^rain-tank reads 0\.\d+ m3, below 1 m3: harvest-fish$/);
    const both = '[{ read: rain-tank, below: 1 m3 }, { read: fish-mass, of: growers, above: 100 g }]';
    const [all] = firings(`  - { when: { all: ${both} }, ${harvest} }`);
    expect(all.text).toMatch(
      /^rain-tank reads .*, below 1 m3; fish-mass of growers reads .*, above 100 g: harvest-fish$/,
    );
  });

  it.each([
    ['{ read: fish-mass, in: sump, above: 1 g }', /when\.in: not with fish-mass/],
    ['{ read: rain-tank, in: sump, above: 1 L }', /when\.in: not with rain-tank/],
    [
      '{ read: fish-mass, of: grower, above: 1 g }',
      /unknown group of fish; got "grower"; did you mean growers\?/,
    ],
    ['{ all: [{ read: pH, in: sump, above: 7 }] }', /when\.all: too few; expected at least 2/],
  ])('refuse %s', (when, problem) => {
    expect(() => withRules(`  - { when: ${when}, ${harvest} }`)).toThrow(problem);
  });
});

import { describe, expect, it } from 'vitest';
import { waterChemistry } from '../../../packages/core/src/model/water-chemistry.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { why } from '../../../packages/core/src/result/why.js';
import { doneRun } from '../../support/run-of.js';
import { shippedScenario, without } from '../../support/shipped-scenario.js';
import { timedCourse } from '../../support/timed-course.js';

const cleared = 14;
const planted = 84;
const acidity = (run: Run, day: number): number =>
  waterChemistry(run.model.parameters, run.samples[day], 0).pH;

const bare = doneRun(shippedScenario('bare-beds'));
const dosed = doneRun(shippedScenario('bare-beds-dosed'));
const kept = doneRun(without(shippedScenario('bare-beds-dosed'), 'leave-empty', 'plant'));

const partsOf = (first: Run, from: number, second: Run, to: number) => {
  const { difference, parts } = why(
    'alkalinity@tank-1',
    { run: first, day: from },
    { run: second, day: to },
    { around: 'system' },
  );
  const part = (name: string): number => parts.find((each) => each.name === name)?.value ?? Number.NaN;
  return { difference, part };
};

describe('half the beds unplanted for ten weeks without dosing', () => {
  const full = doneRun(without(shippedScenario('bare-beds'), 'leave-empty', 'plant'));

  it('falls to about a third of its alkalinity in four weeks, because nitrification eats more than mains bring', () => {
    const alkalinity = timedCourse(bare, 'alkalinity');
    expect(alkalinity.at(28)).toBeLessThan(0.37 * alkalinity.at(0));
    expect(acidity(bare, 28)).toBeLessThan(7.52);
    expect(partsOf(bare, 0, bare, 28).part('growth of ammonia oxidisers')).toBeLessThan(-2);
  });

  it('climbs from then on without a dose to more than it began with, because settled solids breathe nitrate and give base back', () => {
    const alkalinity = timedCourse(bare, 'alkalinity');
    expect(alkalinity.at(planted)).toBeGreaterThan(1.2 * alkalinity.at(0));
    expect(acidity(bare, planted)).toBeGreaterThan(7.9);
    const { difference, part } = partsOf(bare, 28, bare, planted);
    expect(difference).toBeGreaterThan(1.5);
    expect(part('denitrification in settled solids')).toBeGreaterThan(4 * difference);
  });

  it('keeps pH over 7.45 and TAN at half a milligram at most, because base never runs out', () => {
    expect(Math.min(...bare.samples.slice(7).map((_, day) => acidity(bare, day + 7)))).toBeGreaterThan(7.45);
    expect(timedCourse(bare, 'tan').peak(0).value).toBeLessThan(0.51);
  });

  it('holds 4 to 9 mg N/L more nitrate than all beds planted, then no more four weeks after planting, because solids breathe what crops leave', () => {
    const more = (day: number): number =>
      timedCourse(bare, 'nitrate').at(day) - timedCourse(full, 'nitrate').at(day);
    for (const day of [60, planted]) {
      expect(more(day)).toBeGreaterThan(4);
      expect(more(day)).toBeLessThan(9);
    }
    expect(Math.abs(more(112))).toBeLessThan(1);
  });
});

describe('the same beds with the dose of the glasshouse', () => {
  it('keep pH over 7.6 and TAN under half a milligram, because the doses bridge the weeks until solids give base back', () => {
    expect(Math.min(...dosed.samples.slice(7).map((_, day) => acidity(dosed, day + 7)))).toBeGreaterThan(7.6);
    expect(timedCourse(dosed, 'tan').peak(cleared).value).toBeLessThan(0.5);
  });

  it('hold a seventh less alkalinity than planted beds in the ninth week, because bare beds drink less of what mains bring', () => {
    const [few, many] = [dosed, kept].map((run) => timedCourse(run, 'alkalinity').at(60));
    expect(few / many).toBeGreaterThan(0.8);
    expect(few / many).toBeLessThan(0.9);
    const { difference, part } = partsOf(dosed, 60, kept, 60);
    // Less water is left of the same base where more is drunk.
    expect(part('transpiration') + part('top-up with mains')).toBeGreaterThan(0.5 * difference);
  });

  it('hold as much when they are planted again, because what crops leave in nitrate comes back as base of denitrification', () => {
    const [few, many] = [dosed, kept].map((run) => timedCourse(run, 'alkalinity').at(planted));
    expect(few / many).toBeGreaterThan(0.97);
    expect(few / many).toBeLessThan(1.07);
    expect(partsOf(kept, planted, dosed, planted).part('denitrification in settled solids')).toBeGreaterThan(
      0.4,
    );
  });

  it('hold as much nitrate as without doses, and half a meq/L more base', () => {
    const [given, none] = [dosed, bare].map((run) => timedCourse(run, 'nitrate').at(planted));
    expect(given / none).toBeCloseTo(1, 1);
    const more = timedCourse(dosed, 'alkalinity').at(planted) - timedCourse(bare, 'alkalinity').at(planted);
    expect(more).toBeGreaterThan(0.5);
  });
});

describe('every crop cut on the same day', () => {
  it('swings more than twice as far in weekly nitrate gain as staggered batches, once the first nitrate is gone, because seedlings take little', () => {
    const swing = (name: string): number => {
      const nitrate = timedCourse(doneRun(shippedScenario(name)), 'nitrate');
      const gains = Array.from(
        { length: 10 },
        (_, week) => nitrate.at(112 + 7 * week) - nitrate.at(105 + 7 * week),
      );
      return Math.max(...gains) - Math.min(...gains);
    };
    expect(swing('all-at-once')).toBeGreaterThan(2 * swing('glasshouse'));
  });
});

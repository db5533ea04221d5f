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

  it('eats all its alkalinity in five weeks, because nitrification eats more than mains bring', () => {
    const alkalinity = timedCourse(bare, 'alkalinity');
    expect(alkalinity.at(35)).toBeLessThan(0.02 * alkalinity.at(0));
    expect(partsOf(bare, 0, bare, 28).part('growth of ammonia oxidisers')).toBeLessThan(-2);
  });

  it('falls under pH 6 in the sixth to seventh week and to 4.4 in the eleventh, because no base is left and solids breathe more oxygen than nitrate', () => {
    expect(acidity(bare, 35)).toBeGreaterThan(6);
    expect(acidity(bare, 45)).toBeLessThan(6);
    const course = bare.samples.slice(0, planted + 1).map((_, day) => acidity(bare, day));
    expect(Math.min(...course)).toBeGreaterThan(4);
    expect(Math.min(...course)).toBeLessThan(4.7);
    const { part } = partsOf(bare, 28, bare, planted);
    const given = part('denitrification in settled solids');
    expect(given).toBeGreaterThan(5);
    expect(part('growth of ammonia oxidisers') + part('ammonia oxidation by a full film')).toBeLessThan(
      -1.5 * given,
    );
  });

  it('climbs in TAN from 0.3 to 3.0 mg N/L in the ninth week, because nitrifiers slow down in sour water until their films are used to it', () => {
    const peak = timedCourse(bare, 'tan').peak(cleared);
    expect(peak.value).toBeGreaterThan(2);
    expect(peak.value).toBeLessThan(3.5);
    expect(peak.time).toBeGreaterThan(49);
    expect(peak.time).toBeLessThan(70);
    expect(timedCourse(bare, 'tan').at(planted)).toBeLessThan(0.5 * peak.value);
  });

  it('is near pH 7.5 again four weeks after planting, because crops take ammonium and nitrate, and drink mains', () => {
    expect(acidity(bare, 112)).toBeGreaterThan(7.3);
    expect(acidity(bare, 112)).toBeLessThan(7.7);
  });

  it('holds 6 to 11 mg N/L more nitrate than all beds planted, because crops are wanting that take it', () => {
    const more = (day: number): number =>
      timedCourse(bare, 'nitrate').at(day) - timedCourse(full, 'nitrate').at(day);
    for (const day of [60, planted, 112]) {
      expect(more(day)).toBeGreaterThan(5);
      expect(more(day)).toBeLessThan(12);
    }
  });

  it('is sourer than planted beds, which fall to 6.6 in the fifth week and come back by themselves', () => {
    const course = full.samples.map((_, day) => acidity(full, day));
    expect(Math.min(...course.slice(14))).toBeGreaterThan(6.5);
    expect(Math.min(...course.slice(14))).toBeLessThan(6.7);
    expect(course[planted]).toBeGreaterThan(7.5);
  });
});

describe('the same beds with the dose of the glasshouse', () => {
  it('keep pH over 7.0 and TAN under half a milligram, because the doses bridge the weeks in which mains bring too little base', () => {
    expect(Math.min(...dosed.samples.slice(7).map((_, day) => acidity(dosed, day + 7)))).toBeGreaterThan(7.0);
    expect(timedCourse(dosed, 'tan').peak(cleared).value).toBeLessThan(0.5);
  });

  it('hold half the alkalinity of planted beds in the ninth week, because bare beds drink less of what mains bring', () => {
    const [few, many] = [dosed, kept].map((run) => timedCourse(run, 'alkalinity').at(60));
    expect(few / many).toBeGreaterThan(0.45);
    expect(few / many).toBeLessThan(0.6);
    const { difference, part } = partsOf(dosed, 60, kept, 60);
    // Less water is left of the same base where more is drunk.
    expect(part('transpiration') + part('top-up with mains')).toBeGreaterThan(0.5 * difference);
  });

  it('still hold less when they are planted again and four weeks after, because what mains did not bring comes in only as crops drink', () => {
    const share = (day: number): number => {
      const [few, many] = [dosed, kept].map((run) => timedCourse(run, 'alkalinity').at(day));
      return few / many;
    };
    expect(share(planted)).toBeGreaterThan(0.55);
    expect(share(planted)).toBeLessThan(0.7);
    expect(share(112)).toBeGreaterThan(share(planted));
    expect(share(112)).toBeLessThan(0.95);
  });

  it('hold as much nitrate as without doses, and more than a meq/L more base', () => {
    const [given, none] = [dosed, bare].map((run) => timedCourse(run, 'nitrate').at(planted));
    expect(given / none).toBeCloseTo(1, 1);
    const more = timedCourse(dosed, 'alkalinity').at(planted) - timedCourse(bare, 'alkalinity').at(planted);
    expect(more).toBeGreaterThan(1);
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

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

  it('falls under pH 6 in the sixth to seventh week and to 4.0 in the twelfth, because no base is left and solids breathe more oxygen than nitrate', () => {
    expect(acidity(bare, 35)).toBeGreaterThan(6);
    expect(acidity(bare, 45)).toBeLessThan(6);
    expect(acidity(bare, 63)).toBeLessThan(5);
    expect(acidity(bare, 63)).toBeGreaterThan(4.7);
    expect(acidity(bare, planted)).toBeLessThan(4.3);
    const { part } = partsOf(bare, 28, bare, planted);
    const given = part('denitrification in settled solids');
    expect(given).toBeGreaterThan(3.5);
    expect(part('growth of ammonia oxidisers') + part('ammonia oxidation by a full film')).toBeLessThan(
      -1.5 * given,
    );
  });

  it('climbs in TAN from 0.3 to nearly 9 mg N/L, because nitrifiers all but stop in sour water and pH falls faster than their films get used to it', () => {
    const tan = timedCourse(bare, 'tan');
    const peak = tan.peak(cleared);
    expect(tan.at(28)).toBeLessThan(0.4);
    expect(peak.value).toBeGreaterThan(8);
    expect(peak.value).toBeLessThan(10);
    expect(peak.time).toBeGreaterThan(planted);
  });

  it('is at pH 4 still four weeks after planting, because plants drink too little of the mains to mend it without a dose', () => {
    expect(acidity(bare, 112)).toBeGreaterThan(3.9);
    expect(acidity(bare, 112)).toBeLessThan(4.2);
    expect(timedCourse(bare, 'tan').at(112)).toBeGreaterThan(7.5);
  });

  it('holds 5 to 9 mg N/L more nitrate than all beds planted, because crops are wanting that take it', () => {
    const more = (day: number): number =>
      timedCourse(bare, 'nitrate').at(day) - timedCourse(full, 'nitrate').at(day);
    for (const day of [60, planted, 112]) {
      expect(more(day)).toBeGreaterThan(4.5);
      expect(more(day)).toBeLessThan(9);
    }
  });

  it('is sour two weeks before planted beds, which no dose keeps either: they come to a third of its TAN, because plants drink mains and take ammonium', () => {
    const under = (run: Run): number => run.samples.findIndex((_, day) => acidity(run, day) < 6);
    expect(under(full) - under(bare)).toBeGreaterThanOrEqual(13);
    expect(under(full) - under(bare)).toBeLessThanOrEqual(19);
    const [few, many] = [full, bare].map((run) => timedCourse(run, 'tan').peak(cleared).value);
    expect(few / many).toBeGreaterThan(0.25);
    expect(few / many).toBeLessThan(0.4);
  });
});

describe('the same beds with the dose of the glasshouse, which goes on', () => {
  const lowest = (run: Run): number =>
    Math.min(...run.samples.slice(cleared).map((_, day) => acidity(run, day + cleared)));

  it('keep pH over 6.5 and TAN near 0.5 mg/L, where planted beds stay over 7.4, and come back to 7.6, because the doses bridge the weeks in which mains bring too little base', () => {
    expect(lowest(dosed)).toBeGreaterThan(6.5);
    expect(lowest(dosed)).toBeLessThan(6.6);
    expect(lowest(kept)).toBeGreaterThan(7.4);
    const peak = timedCourse(dosed, 'tan').peak(cleared).value;
    expect(peak).toBeGreaterThan(0.45);
    expect(peak).toBeLessThan(0.6);
    expect(Math.abs(acidity(dosed, 112) - 7.6)).toBeLessThan(0.1);
  });

  it('hold an eighth of the alkalinity of planted beds in the ninth week, because bare beds drink less of what mains bring', () => {
    const [few, many] = [dosed, kept].map((run) => timedCourse(run, 'alkalinity').at(60));
    expect(few / many).toBeGreaterThan(0.1);
    expect(few / many).toBeLessThan(0.16);
    const { difference, part } = partsOf(dosed, 60, kept, 60);
    // Less water is left of the same base where more is drunk.
    expect(part('transpiration') + part('top-up with mains')).toBeGreaterThan(0.5 * difference);
  });

  it('still hold less when they are planted again and four weeks after, because what mains did not bring comes in only as crops drink', () => {
    const share = (day: number): number => {
      const [few, many] = [dosed, kept].map((run) => timedCourse(run, 'alkalinity').at(day));
      return few / many;
    };
    expect(share(planted)).toBeGreaterThan(0.12);
    expect(share(planted)).toBeLessThan(0.16);
    expect(share(112)).toBeGreaterThan(3 * share(planted));
    expect(share(112)).toBeLessThan(0.5);
  });

  it('hold a tenth more nitrate than without doses, because there ammonia is left', () => {
    const at = (run: Run, component: 'nitrate' | 'tan'): number => timedCourse(run, component).at(planted);
    expect(at(dosed, 'nitrate') / at(bare, 'nitrate')).toBeGreaterThan(1.08);
    expect(at(dosed, 'nitrate') / at(bare, 'nitrate')).toBeLessThan(1.15);
    const [nitrate, tan] = (['nitrate', 'tan'] as const).map((each) => at(dosed, each) - at(bare, each));
    expect(-tan / nitrate).toBeGreaterThan(1);
  });
});

describe('every crop cut on the same day', () => {
  it('swings more than half as far again in weekly nitrate gain as staggered batches, because seedlings take little', () => {
    const swing = (name: string): number => {
      const nitrate = timedCourse(doneRun(shippedScenario(name)), 'nitrate');
      const gains = Array.from(
        { length: 10 },
        (_, week) => nitrate.at(112 + 7 * week) - nitrate.at(105 + 7 * week),
      );
      return Math.max(...gains) - Math.min(...gains);
    };
    expect(swing('all-at-once')).toBeGreaterThan(1.5 * swing('glasshouse'));
  });
});

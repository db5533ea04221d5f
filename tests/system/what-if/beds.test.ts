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

describe('half the beds unplanted for ten weeks without dosing', () => {
  it('loses alkalinity, then pH, because nobody replaces what nitrification eats', () => {
    const alkalinity = timedCourse(bare, 'alkalinity');
    expect(alkalinity.at(cleared)).toBeLessThan(0.25 * alkalinity.at(0));
    expect(alkalinity.at(planted)).toBeLessThan(0.1 * alkalinity.at(cleared));
    expect(acidity(bare, cleared)).toBeGreaterThan(7);
    expect(acidity(bare, cleared + 7)).toBeLessThan(6.3);
    expect(acidity(bare, planted)).toBeLessThan(4.5);
  });

  it('climbs tenfold in TAN within three weeks, before nitrate tells, because acid and want of inorganic carbon slow nitrifiers', () => {
    const day = cleared + 21;
    const [tan, nitrate, carbon] = (['tan', 'nitrate', 'carbon'] as const).map((component) =>
      [bare, dosed].map((run) => timedCourse(run, component, 'biofilter').at(day)),
    );
    expect(tan[0]).toBeGreaterThan(10 * tan[1]);
    expect(Math.abs(nitrate[0] / nitrate[1] - 1)).toBeLessThan(0.15);
    // Half the rate at 0.1 mol of inorganic carbon per m3.
    expect(carbon[0]).toBeLessThan(0.1);
    expect(carbon[1]).toBeGreaterThan(0.3);
  });

  it('goes on making nitrate under pH 4.5, because films get used to acid water', () => {
    expect(acidity(bare, 112)).toBeLessThan(4.5);
    expect(timedCourse(bare, 'nitrate').at(112)).toBeGreaterThan(
      timedCourse(bare, 'nitrate').at(planted) + 5,
    );
  });

  it('climbs in TAN no more than half as far again as all beds planted and undosed, because crops give hardly any base back', () => {
    const undosed = doneRun(without(shippedScenario('bare-beds'), 'leave-empty', 'plant'));
    const [tan, full] = [bare, undosed].map((run) => timedCourse(run, 'tan').at(planted));
    expect(tan).toBeGreaterThan(full);
    expect(tan).toBeLessThan(1.5 * full);
    expect(full).toBeGreaterThan(10);
  });
});

describe('the same beds with dosing', () => {
  it('keeps pH near 7 and TAN under 1, because the doses replace the base', () => {
    const lowest = Math.min(...dosed.samples.map((_, day) => acidity(dosed, day)));
    expect(lowest).toBeGreaterThan(6.9);
    expect(timedCourse(dosed, 'tan').peak(cleared).value).toBeLessThan(1);
  });

  it('holds less than half the alkalinity of planted beds, mostly because what crops drink is made good with mains', () => {
    const [few, many] = [dosed, kept].map((run) => timedCourse(run, 'alkalinity').at(planted));
    expect(few).toBeLessThan(0.5 * many);
    const { difference, parts } = why(
      'alkalinity@tank-1',
      { run: kept, day: planted },
      { run: dosed, day: planted },
      { around: 'system' },
    );
    const share = (name: string): number =>
      (parts.find((part) => part.name === name)?.value ?? Number.NaN) / difference;
    expect(share('top-up with mains')).toBeGreaterThan(0.5);
    // Base given back with nitrate less base taken with ammonium: next to nothing is left of crops themselves.
    expect(Math.abs(share('nitrate uptake by crops') + share('ammonium uptake by crops'))).toBeLessThan(0.1);
  });

  it('rises in nitrate instead, by 5 to 40 mg N/L, because half the crop is not there to take it', () => {
    const more = timedCourse(dosed, 'nitrate').at(planted) - timedCourse(kept, 'nitrate').at(planted);
    expect(more).toBeGreaterThan(5);
    expect(more).toBeLessThan(40);
    expect(timedCourse(dosed, 'nitrate').at(planted)).toBeGreaterThan(
      timedCourse(bare, 'nitrate').at(planted) + 10,
    );
  });
});

describe('every crop cut on the same day', () => {
  it('swings more than twice as far in weekly nitrate gain as staggered batches, because seedlings take little', () => {
    const swing = (name: string): number => {
      const nitrate = timedCourse(doneRun(shippedScenario(name)), 'nitrate');
      const gains = Array.from({ length: 15 }, (_, i) => nitrate.at(77 + 7 * i) - nitrate.at(70 + 7 * i));
      return Math.max(...gains) - Math.min(...gains);
    };
    expect(swing('all-at-once')).toBeGreaterThan(2 * swing('glasshouse'));
  });
});

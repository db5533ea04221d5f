import { describe, expect, it } from 'vitest';
import { waterChemistry } from '../../../packages/core/src/model/water-chemistry.js';
import type { Run } from '../../../packages/core/src/run/run.js';
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
  it('loses alkalinity and pH, because nobody replaces what nitrification eats', () => {
    const alkalinity = timedCourse(bare, 'alkalinity');
    expect(alkalinity.at(planted)).toBeLessThan(0.4 * alkalinity.at(cleared));
    expect(acidity(bare, planted)).toBeLessThan(acidity(bare, cleared) - 0.3);
  });

  it('climbs tenfold in TAN within three weeks, before nitrate tells, because nitrifiers want base', () => {
    const day = cleared + 21;
    const [tan, nitrate] = (['tan', 'nitrate'] as const).map((component) =>
      [bare, dosed].map((run) => timedCourse(run, component).at(day)),
    );
    expect(tan[0]).toBeGreaterThan(10 * tan[1]);
    expect(Math.abs(nitrate[0] / nitrate[1] - 1)).toBeLessThan(0.15);
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
  it('keeps pH and TAN, because the doses replace the base', () => {
    expect(acidity(dosed, planted)).toBeGreaterThan(acidity(bare, planted) + 0.5);
    expect(acidity(dosed, planted)).toBeGreaterThan(7);
    expect(timedCourse(dosed, 'tan').peak(cleared).value).toBeLessThan(1);
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
